import type { Adjustment, PathWarning } from '../../pressure/halftime/adjust.ts';
import type { MovedHabit } from '../../pressure/halftime/moved.ts';
import { SITUATIONS } from '../../pressure/snap/situation.ts';
import { habitName } from '../words/habit-name.ts';
import { listed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

/**
 * A habit tonight in one line.
 *
 * @example "Screen, 3rd and long: 6 of 8, expected 24%"
 */
export function habitWords({ target, situation, name, tonight, expected }: MovedHabit): string {
  const where = SITUATIONS.find(({ id }) => id === situation)?.label;
  const place = where ? `, ${where}` : '';
  return `${habitName(target, name)}${place}: ${tonight.count} of ${tonight.trials}, expected ${percent(expected)}`;
}

/** A path they have seen too often with one coverage, and what breaks it. */
export function warningWords({ path, coverage, count, trials, instead }: PathWarning): string {
  const remedy = instead.length === 0 ? 'no carried call breaks it' : `change up with ${listed(instead)}`;
  return `${path}: ${coverage} behind it ${count} of ${trials} times; ${remedy}.`;
}

/** How much of our own calls was charted, and how often we sent five or more. */
export function pressureWords({ tonight }: Adjustment): string {
  const { charted, pressures } = tonight;
  if (charted.count === 0) return 'Our calls were not charted beside the snaps.';
  const sent =
    pressures.trials === 0
      ? 'kind of call not known'
      : `five or more sent on ${pressures.count} of ${pressures.trials}`;
  return `Call charted on ${charted.count} of ${charted.trials} snaps; ${sent}.`;
}
