import type { Call, CallLibrary } from '../ingest/call-library.ts';
import type { Family } from '../ingest/vocabulary.ts';
import type { WeekSettings } from '../ingest/week-settings.ts';
import type { SoundnessFault } from './protection-result.ts';
import type { ScoreDraws } from './score-draws.ts';
import type { ScoreChapter } from './score-result.ts';

/** A call the menu may carry, with its worth in each situation. */
export interface Candidate {
  readonly call: Call;
  /** Points saved a snap against the base, by situation. */
  readonly value: readonly number[];
  /** Points saved a snap against each answer alone, by situation. */
  readonly byAnswer: readonly (readonly number[])[];
  /** Chance of an explosive play on a snap, by situation. */
  readonly explosive: readonly number[];
}

/** A situation the menu plans for. */
export interface MenuSituation {
  readonly id: string;
  readonly label: string;
  readonly expectedSnaps: number;
}

/** Everything the menu's program is made from. */
export interface MenuProblem {
  readonly situations: readonly MenuSituation[];
  readonly candidates: readonly Candidate[];
  readonly settings: WeekSettings['menu'];
  readonly leftOut: readonly { readonly call: string; readonly why: string }[];
}

/** The four theories of which at least one call each is carried, and the families that teach them. Common practice. */
export const THEORIES: readonly { readonly theory: string; readonly families: readonly Family[] }[] = [
  { theory: 'three-deep zone', families: ['three_under'] },
  { theory: 'two-deep zone', families: ['four_under'] },
  { theory: 'man-free', families: ['man_free', 'peel', 'peel_spy'] },
  { theory: 'hot or zero', families: ['hot', 'zero', 'add_on'] },
];

/** What a menu is chosen from. */
export interface MenuInput {
  readonly library: CallLibrary;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter;
  readonly soundness: readonly SoundnessFault[];
}

/** A menu's input with the posterior draws that say how sure its calls are. */
export interface MenuPlanInput extends MenuInput {
  readonly draws: ScoreDraws;
}

/** The sound, allowed and scored calls with their worth; the others with the reason they are out. */
export function menuProblem({ library, settings, scores, soundness }: MenuInput): MenuProblem {
  const situations = scores.situations.filter(({ id, expectedSnaps }) => id !== 'all' && expectedSnaps > 0);
  const leftOut: { call: string; why: string }[] = [];
  const candidates = library.calls.flatMap((call) => {
    const why = reasonOut(call, settings.menu.ban, soundness);
    if (why === null) return [candidateOf(call, situations, scores)];
    leftOut.push({ call: call.name, why });
    return [];
  });
  return { situations, candidates, settings: settings.menu, leftOut };
}

function reasonOut(call: Call, ban: readonly string[], soundness: readonly SoundnessFault[]): string | null {
  if (ban.some((name) => name.toLowerCase() === call.name.toLowerCase())) return 'banned in week.yaml';
  const fault = soundness.find((found) => found.call === call.name && !found.declared);
  return fault ? `not sound: ${fault.words}` : null;
}

function candidateOf(call: Call, situations: readonly MenuSituation[], scores: ScoreChapter): Candidate {
  const found = situations.map(({ id }) =>
    scores.calls.find((score) => score.call === call.name && score.situation === id),
  );
  return {
    call,
    value: found.map((score) => (score?.points.mean ?? 0) / 10),
    byAnswer: found.map((score) => (score?.byAnswer ?? []).map(({ points }) => points / 10)),
    explosive: found.map((score) => (score?.explosives.mean ?? 0) / 100),
  };
}
