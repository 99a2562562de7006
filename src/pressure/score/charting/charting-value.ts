import { chartedCount, type Film, textAt } from '../../../game/film.ts';
import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { percentWords } from '../../evidence/percent-words.ts';
import { runOrPassCodes } from '../../snap/run-or-pass.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import type { ScoredWeek } from '../family/family-score-week.ts';
import { FAMILY_WORDS } from '../family-words.ts';
import type { ChartingValue } from '../score-result.ts';
import { VALUED_COLUMNS, type ValuedColumn } from './charting-value-column.ts';
import { narrowingOf } from './charting-value-variance.ts';

/** Charted this much or more, a column is called fully charted. */
const FULLY_CHARTED = 0.95;

/**
 * How much narrower the overall scores would be if the next game were fully charted for a column that is not, best
 * first. From the variance the column's share of the score has now and would have with that many more snaps, everything
 * else as it is: what is learned, not what is found.
 */
export function chartingValues(chart: Film, week: ScoredWeek, model: ScoreModel): ChartingValue[] {
  const passes = passCount(chart);
  return VALUED_COLUMNS.flatMap(({ column, on, words }) => {
    const applicable = on === 'snap' ? chart.size : passes;
    const charted = applicable === 0 ? 0 : Math.min(1, knownCount(chart, column) / applicable);
    if (charted >= FULLY_CHARTED) return [];
    const newSnaps = on === 'snap' ? model.settings.snaps : model.settings.snaps * passShare(week);
    const narrowing = narrowingOf(column, week, { model, newSnaps });
    return [{ narrowing, value: chartingValue({ column, words, on }, charted, narrowing) }];
  })
    .sort((one, other) => meanOf(other.narrowing) - meanOf(one.narrowing))
    .map(({ value }) => value);
}

function chartingValue(
  { column, words, on }: { column: string; words: string; on: 'snap' | 'pass' },
  chartedShare: number,
  narrowing: Float64Array,
): ChartingValue {
  const most = narrowing.indexOf(Math.max(...narrowing));
  const now = `It is charted on ${percentWords(chartedShare)} of ${on === 'snap' ? 'snaps' : 'passes'} now.`;
  const mean = meanOf(narrowing);
  const gain =
    mean < 0.005
      ? `Charting ${words} on every ${on} of the next game would hardly narrow the scores.`
      : `Charting ${words} on every ${on} of the next game would narrow the scores by about ${percentWords(mean)}, most for ${FAMILY_WORDS[FAMILIES[most] ?? 'base']} (${percentWords(narrowing[most] ?? 0)}).`;
  return { column, chartedShare, words: `${gain} ${now}` };
}

/** Mean over the pressures; the base is the yardstick and has no width. */
function meanOf(narrowing: Float64Array): number {
  return narrowing.reduce((sum, value) => sum + value, 0) / (FAMILIES.length - 1);
}

function passShare({ all }: ScoredWeek): number {
  return ANSWERS.reduce((sum, answer, a) => {
    return answer === 'run' || answer === 'quarterback_run' ? sum : sum + (all.shares[a] ?? 0);
  }, 0);
}

function passCount(chart: Film): number {
  return runOrPassCodes(chart).reduce((count, code) => count + (code === 1 ? 1 : 0), 0);
}

/** A bare `pass` is charted, but not what kind: it counts as not charted for the answer. */
function knownCount(chart: Film, column: ValuedColumn): number {
  if (column !== 'play_kind') return chartedCount(chart, column);
  let count = 0;
  for (let i = 0; i < chart.size; i++) {
    const kind = textAt(chart, column, i);
    if (kind !== undefined && kind !== 'pass') count += 1;
  }
  return count;
}
