import type { Call, CallLibrary } from '../../game/call-library.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ExactSolver } from '../../stats/exact-solver.ts';
import type { FitChapter } from '../fit/fit-result.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import type { SoundnessFault } from '../soundness/fault.ts';
import type { PathHabit } from './habits.ts';

/** What our own film says of how we call it. */
export interface OwnHabits {
  /** Share of our snaps on which we sent five or more; null where that was not charted. */
  readonly pressureRate: number | null;
  /** What our film shows of our paths. */
  readonly paths: readonly PathHabit[];
  /** Calls that are on our film, by name. */
  readonly callsOnFilm: ReadonlySet<string>;
}

/** What a week's menu is made from. */
export interface MenuInput {
  readonly library: CallLibrary;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter;
  readonly fit: FitChapter;
  readonly soundness: readonly SoundnessFault[];
  /** Null without film of our own: every path then counts as new. */
  readonly own: OwnHabits | null;
  readonly exact: ExactSolver;
}

/** The limits of the menu as week.yaml sets them. */
export type MenuSettings = WeekSettings['menu'];

/** The pressures of a library by path and name, so that the order of the file breaks no tie. */
export function pressuresInOrder({ calls }: CallLibrary): readonly Call[] {
  const order = (a: string, b: string) => (a < b ? -1 : Number(a > b));
  return calls.filter(({ family }) => family !== 'base').sort((a, b) => order(a.path, b.path) || order(a.name, b.name));
}
