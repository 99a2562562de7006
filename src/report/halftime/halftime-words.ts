import type { HalftimeUpdate, PathWarning } from '../../pressure/halftime/halftime.ts';
import type { MovedHabit } from '../../pressure/halftime/moved.ts';
import { SITUATIONS } from '../../pressure/snap/situation.ts';
import { habitName } from '../words/habit-name.ts';
import { listed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';

/**
 * A tendency tonight in one line.
 *
 * @example "Screen, 3rd and long: 6 of 8, expected 24%"
 */
export function habitWords({ target, situation, name, tonight, expected }: MovedHabit): string {
  const where = SITUATIONS.find(({ id }) => id === situation)?.label;
  const place = where ? `, ${where}` : '';
  return `${habitName(target, name)}${place}: ${shareWords(tonight)}, expected ${percent(expected)}`;
}

/** A path they have seen too often with one coverage, and what breaks it. */
export function warningWords({ path, coverage, count, trials, instead }: PathWarning): string {
  const remedy = instead.length === 0 ? 'nothing on the menu breaks it' : `change up with ${listed(instead)}`;
  return `${path}: same coverage behind it (${coverage}) ${count} of ${trials}; ${remedy}.`;
}

/** How much of our own calls was charted, and how often we sent five or more. */
export function pressureWords({ tonight }: HalftimeUpdate): string {
  const { charted, pressures } = tonight;
  if (charted.count === 0) return 'Our calls are not charted beside the snaps.';
  const sent = pressures.trials === 0 ? 'family not known' : `we sent five or more on ${shareWords(pressures)}`;
  return `Call charted on ${charted.count} of ${charted.trials} snaps; ${sent}.`;
}

/** The one line on top: what to change for the second half, or to stay. */
export function topLine({ moved, warnings }: HalftimeUpdate): string {
  const [first] = moved.moved;
  if (first !== undefined) return `Change this: ${habitWords(first)}.`;
  const breakable = warnings.find(({ instead }) => instead.length > 0);
  if (breakable !== undefined) return `Change this: ${warningWords(breakable)}`;
  return `Stay with Sunday’s calls: nothing real has moved (${moved.looked} tendencies checked).`;
}
