import type { Answer } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import { familyFacts } from '../../game/families.ts';
import { LOOK_KINDS, type LookKind } from '../../game/look-kinds.ts';
import type { ScoreChapter } from '../score/score-result.ts';

/** Why a call is repped against a look. */
export const REP_REASONS = ['likeliest', 'worst', 'make_or_break', 'forecast'] as const;
/** One word of {@link REP_REASONS}. */
export type RepReason = (typeof REP_REASONS)[number];

/** A look a call must be seen against, with every reason for it. */
export interface RequiredLook {
  readonly look: LookKind;
  readonly reasons: readonly RepReason[];
}

/** What is needed to say which looks a call must be seen against. */
export interface RequiredLooksInput {
  readonly call: string;
  readonly family: Family;
  /** Share of each kind of look where the call is called. */
  readonly shares: ReadonlyMap<LookKind, number>;
  readonly scores: ScoreChapter;
  /** Weight of each situation in the call's mix. */
  readonly situations: ReadonlyMap<string, number>;
}

/** The likeliest, the worst and the make-or-break looks of a call; a look that is several of these is listed once. */
export function requiredLooks(input: RequiredLooksInput): readonly RequiredLook[] {
  const found = new Map<LookKind, RepReason[]>();
  const add = (look: LookKind | undefined, reason: RepReason) => {
    if (look !== undefined) found.set(look, [...(found.get(look) ?? []), reason]);
  };
  add(likeliest(input.shares), 'likeliest');
  add(worstAnswer(input), 'worst');
  for (const look of familyFacts(input.family).makeOrBreak) add(look, 'make_or_break');
  return [...found].map(([look, reasons]) => ({ look, reasons }));
}

function likeliest(shares: ReadonlyMap<LookKind, number>): LookKind | undefined {
  let best: LookKind | undefined;
  for (const { id } of LOOK_KINDS) {
    const part = shares.get(id) ?? 0;
    if (part > 0 && (best === undefined || part > (shares.get(best) ?? 0))) best = id;
  }
  return best;
}

/** The answer against which the call scores worst over its situations; undefined where it scores no different. */
function worstAnswer({ call, scores, situations }: RequiredLooksInput): Answer | undefined {
  const totals = new Map<Answer, number>();
  for (const score of scores.calls.filter((entry) => entry.call === call)) {
    const weight = situations.get(score.situation) ?? 0;
    for (const { answer, points } of score.byAnswer) totals.set(answer, (totals.get(answer) ?? 0) + weight * points);
  }
  const ranked = [...totals].sort((a, b) => a[1] - b[1]);
  const [worst, best] = [ranked[0], ranked.at(-1)];
  return worst === undefined || worst[1] === best?.[1] ? undefined : worst[0];
}
