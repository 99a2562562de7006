import type { CallLibrary } from '../../game/call-library.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ExactSolver } from '../../stats/exact-solver.ts';
import type { SoundnessFault } from '../protection/protection-result.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import type { PathHabit } from './habits.ts';

/** What a week's menu is made from. */
export interface MenuInput {
  readonly library: CallLibrary;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter;
  readonly soundness: readonly SoundnessFault[];
  /** Takes the place of the pairing cap of week.yaml. */
  readonly pairingCap?: number | undefined;
  /** Proves the choice where the search of the menu stops; loaded by the caller, for it is large. */
  readonly exact?: ExactSolver | undefined;
  /** What our film shows of our paths; without it every path counts as new. */
  readonly habits?: readonly PathHabit[] | undefined;
}

/** The input with its own pairing cap written into the settings. */
export function withPairingCap(input: MenuInput): MenuInput {
  if (input.pairingCap === undefined) return input;
  return withMenu(input, { pairing_cap: input.pairingCap });
}

/** The input with some settings of the menu changed. */
export function withMenu(input: MenuInput, change: Partial<WeekSettings['menu']>): MenuInput {
  const { settings } = input;
  return { ...input, pairingCap: undefined, settings: { ...settings, menu: { ...settings.menu, ...change } } };
}
