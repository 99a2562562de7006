import { ANSWERS, type Answer } from '../../game/answers.ts';
import type { CallLibrary } from '../../game/call-library.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { freeWordKey } from '../../game/free-word.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { callRushers } from '../fit/against-rush.ts';
import { answerCodes } from '../snap/answer.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { isHeld, outcomeAt } from '../snap/outcome.ts';
import { PASS, runOrPassCodes } from '../snap/run-or-pass.ts';
import { RUSH_GROUPS, type RushGroup, rushGroupOf } from '../snap/rush-group.ts';

/** What they did tonight against one number of rushers. */
export interface RushAnswers {
  readonly group: RushGroup;
  readonly snaps: number;
  /** Runs among the snaps charted run or pass. */
  readonly runs: Share;
  /** Passes by answer, most frequent first, of the passes that were separated. */
  readonly passes: readonly { readonly answer: Answer; readonly count: number }[];
  /** Loss, stop or takeaway, of the snaps with a known outcome. */
  readonly held: Share;
}

/**
 * Counts their answers tonight by how many we sent: `rushers_faced` where it was charted, otherwise the men our call
 * sends. Snaps with neither are left out. Where rushers were counted on passes alone, nothing is said of runs.
 */
export function answersByRush(live: Film, library: CallLibrary | null, cuts: SituationCuts): readonly RushAnswers[] {
  const sent = rushersSent(live, library);
  const kinds = runOrPassCodes(live);
  const codes = {
    kinds,
    answers: answerCodes(live, cuts),
    runsCounted: sent.some((group, i) => group !== null && isRun(kinds, i)),
  };
  return RUSH_GROUPS.flatMap((group) => {
    const rows = sent.flatMap((found, i) => (found === group ? [i] : []));
    return rows.length === 0 ? [] : [{ group, snaps: rows.length, ...countsOf(live, rows, codes) }];
  });
}

/** The group we sent on every snap; null where it is not known. */
function rushersSent(live: Film, library: CallLibrary | null): readonly (RushGroup | null)[] {
  const byCall = new Map((library?.calls ?? []).map((call) => [freeWordKey(call.name), callRushers(call)]));
  return Array.from({ length: live.size }, (_, i) => {
    const call = textAt(live, 'call', i);
    const rushers =
      numberAt(live, 'rushers_faced', i) ?? (call === undefined ? undefined : byCall.get(freeWordKey(call)));
    return rushers === undefined ? null : (rushGroupOf(rushers) ?? null);
  });
}

interface SnapCodes {
  readonly kinds: Uint8Array;
  readonly answers: Uint8Array;
  /** Whether the rush is known on any run. */
  readonly runsCounted: boolean;
}

function isRun(kinds: Uint8Array, index: number): boolean {
  return kinds[index] !== NOT_KNOWN && kinds[index] !== PASS;
}

function countsOf(
  live: Film,
  rows: readonly number[],
  { kinds, answers, runsCounted }: SnapCodes,
): Omit<RushAnswers, 'group' | 'snaps'> {
  const known = rows.filter((i) => kinds[i] !== NOT_KNOWN);
  const passes = known.filter((i) => kinds[i] === PASS);
  const outcomes = rows.flatMap((i) => outcomeAt(live, i) ?? []);
  const held = outcomes.filter(isHeld);
  return {
    runs: runsCounted ? share(known.length - passes.length, known.length) : share(0, 0),
    passes: ANSWERS.map((answer, code) => ({ answer, count: passes.filter((i) => answers[i] === code).length }))
      .filter(({ count }) => count > 0)
      .sort((a, b) => b.count - a.count),
    held: share(held.length, outcomes.length),
  };
}
