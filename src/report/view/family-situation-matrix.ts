import type { FamilyScore } from '../../pressure/score-result.ts';
import type { WeekPlan } from '../../pressure/week-plan.ts';
import { familyLabel } from '../words/label.ts';
import { signed } from '../words/number-words.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { familySituationTable } from './family-table.ts';

/** Situation by family: mean points saved in every cell. */
export function familySituationMatrix(plan: WeekPlan): ChartView {
  const scores = plan.scores.families.filter((score) => score.situation !== ALL_SITUATIONS);
  return {
    id: 'families-by-situation',
    title: matrixTitle(plan, scores),
    caption:
      'Points saved per ten snaps against the base. Darker helps more. An asterisk: ahead of the base beyond its 80% interval.',
    spec: null,
    empty: 'No family was scored by situation, so nothing is drawn.',
    tinted: 'tinted',
    table: familySituationTable(plan, scores),
  };
}

function matrixTitle(plan: WeekPlan, scores: readonly FamilyScore[]): string {
  const ahead = scores.filter((score) => score.verdict === 'ahead of base');
  const best = [...ahead].sort((a, b) => b.points.mean - a.points.mean)[0];
  if (best === undefined) return 'In no situation is a family clearly ahead of the base';
  return `The clearest gain: ${familyLabel(best.family)} on ${situationLabel(plan, best.situation)}, ${signed(best.points.mean)} per ten snaps`;
}
