import type { FamilyScore } from '../../pressure/score-result.ts';
import type { WeekPlan } from '../../pressure/week-plan.ts';
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
    spec: null,
    empty: 'No family was scored, so nothing is drawn.',
    tinted: 'plain',
    table: familyTable(scores),
  };
}

function familyTitle(ranked: readonly FamilyScore[]): string {
  const best = ranked.find((score) => score.family !== 'base');
  if (best === undefined) return 'The families ranked';
  const size = `${familyLabel(best.family)} leads with ${signed(best.points.mean)} points per ten snaps`;
  return `${size}: ${best.verdict}, ${percent(best.chanceBest)} likely to be the best of all`;
}
