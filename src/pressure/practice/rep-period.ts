import type { ContactLevel, PracticeDay } from '../../game/week-settings.ts';

/** One period of the week with its pressure repetitions. */
export interface RepPeriod {
  readonly day: PracticeDay['day'];
  readonly period: string;
  readonly minutes: number;
  readonly contact: ContactLevel;
  readonly reps: number;
}

/** The week's periods that have repetitions, in the order of the plan. */
export function repPeriods(practice: readonly PracticeDay[]): readonly RepPeriod[] {
  return practice.flatMap(({ day, periods }) =>
    periods
      .filter(({ reps }) => reps > 0)
      .map(({ name, minutes, contact, reps }) => ({ day, period: name, minutes, contact, reps })),
  );
}

/**
 * Shares the ordered repetitions out over the periods. A period with a name that speaks of third down, or of early downs, takes
 * the repetitions of those situations first; every other one takes them as they come.
 *
 * @param situations - situation id of every repetition, in order
 * @returns for each period, indices into `situations`, in order; all together every index once while there is room
 */
export function fillPeriods(
  situations: readonly string[],
  periods: readonly RepPeriod[],
): readonly (readonly number[])[] {
  let waiting = situations.map((_, i) => i);
  return periods.map(({ period, reps }) => {
    const wanted = wantedDowns(period);
    const fits = (i: number) => wanted === null || wanted.test(situations[i] ?? '');
    const first = waiting.filter(fits).slice(0, reps);
    const others = waiting.filter((i) => !fits(i)).slice(0, reps - first.length);
    const taken = new Set([...first, ...others]);
    waiting = waiting.filter((i) => !taken.has(i));
    return [...taken].sort((a, b) => a - b);
  });
}

/** Situations a period's name asks for; null when it asks for none. Common words of practice plans, no source. */
function wantedDowns(period: string): RegExp | null {
  if (/third|3rd/i.test(period)) return /^(third|fourth)_/;
  return /early|first|1st|second|2nd|base/i.test(period) ? /^(first|second)_/ : null;
}
