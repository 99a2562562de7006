import { isSituation } from '../../game/situations.ts';
import type { Overtaking } from '../../pressure/halftime/best-calls.ts';
import type { HalftimeUpdate, PathWarning } from '../../pressure/halftime/halftime.ts';
import type { MovedHabit } from '../../pressure/halftime/moved.ts';
import { habitName } from '../words/habit-name.ts';
import { listed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';

/**
 * A tendency tonight in one line.
 *
 * @example "Screen, 3rd and long: 6 of 8, expected 24%"
 */
export function habitWords({ target, situation, name, firstHalf, expected }: MovedHabit): string {
  const place = isSituation(situation) ? `, ${situationLabel(situation)}` : '';
  return `${habitName(target, name)}${place}: ${shareWords(firstHalf)}, expected ${percent(expected)}`;
}

/** A path they have seen too often with one coverage, and what breaks it. */
export function warningWords({ path, coverage, count, trials, instead }: PathWarning): string {
  const remedy = instead.length === 0 ? 'nothing on the menu breaks it' : `change up with ${listed(instead)}`;
  return `${path}: same coverage behind it (${coverage}) ${count} of ${trials}; ${remedy}.`;
}

/** How much of our own calls was charted, and how often we sent five or more. */
export function pressureWords({ ours }: HalftimeUpdate): string {
  const { charted, pressures } = ours;
  if (charted.count === 0) return 'Our calls are not charted beside the snaps.';
  const sent = pressures.trials === 0 ? 'family not known' : `we sent five or more on ${shareWords(pressures)}`;
  return `Call charted on ${charted.count} of ${charted.trials} snaps; ${sent}.`;
}

/** Snaps named for one change of order; the rest is counted. */
const SNAPS_NAMED = 6;

/**
 * A call that goes ahead of another tonight, and the snaps that did it. A few snaps are a lean, never an order.
 *
 * @example "Lean: Hackle Peel before Cross Lock (snaps 4, 9 and 21)"
 */
export function overtakingWords({ call, over, snaps }: Overtaking): string {
  const named = snaps.slice(0, SNAPS_NAMED);
  const more = snaps.length > named.length ? ` and ${snaps.length - named.length} more` : '';
  const list = more === '' ? listed(named) : `${named.join(', ')}${more}`;
  const why = snaps.length === 0 ? 'by what they call tonight' : `${snaps.length === 1 ? 'snap' : 'snaps'} ${list}`;
  return `Lean: ${call} before ${over} (${why})`;
}

/** The one line on top: what to change for the second half, or to stay; a few snaps of a path are a lean, no order. */
export function topLine(update: HalftimeUpdate): string {
  const [first] = update.moved.moved;
  if (first !== undefined) return `Change this: ${habitWords(first)}.${bestThere(update, first.situation)}`;
  const breakable = update.warnings.find(({ instead }) => instead.length > 0);
  if (breakable !== undefined && !isThin(breakable)) return `Change this: ${warningWords(breakable)}`;
  const stay = `Stay with Sunday’s calls: nothing real has moved (${update.moved.looked} tendencies checked).`;
  return breakable === undefined ? stay : `${stay} A lean: ${warningWords(breakable)}`;
}

/** The sheet's best call tonight in the situation that moved, or over the game; the base where no pressure fits. */
function bestThere({ situations, calls }: HalftimeUpdate, situation: string): string {
  const here = situations.find((entry) => entry.situation === situation);
  const sheet = here?.calls ?? calls.map(({ call, fit }) => ({ call, now: fit?.now ?? null }));
  const [best] = sheet;
  if (best === undefined) return '';
  const fits = sheet.find(({ now }) => now === null || now > 0);
  if (fits === undefined) return ' Nothing on the sheet is right more often than wrong there: call base.';
  return ` Best on the sheet${here ? ' there' : ''}: ${fits.call}.`;
}
