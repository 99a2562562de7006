import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import type { IntervalAxis, IntervalRow } from '../chart/interval-row.ts';
import { familyLabel } from '../words/label.ts';
import { signed } from '../words/number-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { byMean, familyTable, standingWords, VERDICT_WORDS } from './family-table.ts';

/** The families over all situations with 80% intervals and whether points can tell each from the best. */
export function familyChart(plan: WeekPlan): ChartView {
  const scores = plan.scores.families.filter((score) => score.situation === ALL_SITUATIONS);
  return {
    id: 'families-overall',
    title: familyTitle(byMean(scores)),
    caption:
      'Dot: points saved per 10 snaps against the base; the bar holds the true figure 80 times in 100. Right of zero helps us. At the right: whether points can tell it from the best.',
    drawing: scores.length === 0 ? null : { kind: 'strips', rows: byMean(scores).map(familyRow), axis: axisOf(scores) },
    empty: 'No family was scored, so nothing is drawn.',
    table: familyTable(scores),
  };
}

function familyRow(score: FamilyScore): IntervalRow {
  const { mean, low, high } = score.points;
  const label = familyLabel(score.family);
  return { id: score.family, label, note: standingWords(score), state: 'solid', value: mean, low, high, second: null };
}

/** The axis holds every interval and zero, to the next half point. */
function axisOf(scores: readonly FamilyScore[]): IntervalAxis {
  const low = Math.min(0, ...scores.map((score) => score.points.low));
  const high = Math.max(0, ...scores.map((score) => score.points.high));
  const domain = [Math.floor(low * 2) / 2, Math.max(0.5, Math.ceil(high * 2) / 2)] as const;
  return {
    title: 'Points saved per ten snaps',
    domain,
    format: 'points',
    reference: { at: 0, label: 'four-man base' },
  };
}

function familyTitle(ranked: readonly FamilyScore[]): string {
  const pressures = ranked.filter((score) => score.family !== 'base');
  const [best] = pressures;
  if (best === undefined) return 'What pressure pays';
  const open = pressures.filter(({ ruledOutBy }) => ruledOutBy === null).length;
  const size = `Pressure saves about ${signed(best.points.mean)} points per 10 snaps`;
  return `${size}: ${VERDICT_WORDS[best.verdict]}; points cannot tell ${open} of ${pressures.length} families apart`;
}
