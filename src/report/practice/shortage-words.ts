import { lookKindLabel } from '../../game/look-kinds.ts';
import type { PracticeScript } from '../../pressure/practice/script-result.ts';

/** What the practice periods could not hold: how many reps too few, then the looks each call misses; empty for nothing. */
export function shortageWords({ unmet, periods }: Pick<PracticeScript, 'unmet' | 'periods'>): readonly string[] {
  if (unmet.length === 0) return [];
  const seats = periods.reduce((sum, { reps }) => sum + reps, 0);
  const calls = [...new Set(unmet.map(({ call }) => call))];
  const missing = calls.map((call) => {
    const looks = unmet.filter((pair) => pair.call === call).map(({ look }) => lookKindLabel(look));
    return `${call} is not repped against: ${looks.join('; ')}`;
  });
  return [
    `The periods hold ${seats} repetitions, ${unmet.length} too few for one of every call against its looks. An un-repped pressure should not be called (common practice).`,
    ...missing,
  ];
}
