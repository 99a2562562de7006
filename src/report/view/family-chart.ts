import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import type { IntervalAxis, IntervalRow } from '../chart/interval-row.ts';
import { intervalSpec } from '../chart/interval-spec.ts';
import { familyLabel } from '../words/label.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { byMean, familyTable } from './family-table.ts';

/** The families over all situations with 80% intervals and the chance to be the best of all. */
export function familyChart(plan: WeekPlan): ChartView {
  const scores = plan.scores.families.filter((score) => score.situation === ALL_SITUATIONS);
  return {
    id: 'families-overall',
    title: familyTitle(byMean(scores)),
    caption:
      'Dot: points saved per ten snaps against the base, with its 80% interval. Right of zero helps us. At the right: the chance of being the best of all.',
    spec: scores.length === 0 ? null : intervalSpec(byMean(scores).map(familyRow), axisOf(scores)),
    empty: 'No family was scored, so nothing is drawn.',
    tinted: 'plain',
    table: familyTable(scores),
  };
}

function familyRow(score: FamilyScore): IntervalRow {
  const { mean, low, high } = score.points;
  const best = `${percent(score.chanceBest)} best of all`;
  const label = familyLabel(score.family);
  return { id: score.family, label, note: best, state: 'solid', value: mean, low, high, second: null };
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
  const best = ranked.find((score) => score.family !== 'base');
  if (best === undefined) return 'The families ranked';
  const size = `${familyLabel(best.family)} leads with ${signed(best.points.mean)} points per ten snaps`;
  return `${size}: ${best.verdict}, ${percent(best.chanceBest)} likely to be the best of all`;
}
