import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import type { Grid, GridCell } from '../chart/matrix-grid.ts';
import { familyLabel } from '../words/label.ts';
import { fixed, signed } from '../words/number-words.ts';
import { ALL_SITUATIONS, planSituations, situationLabel } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { familySituationTable } from './family-table.ts';

/** Situation by family: mean points saved in every cell. */
export function familySituationMatrix(plan: WeekPlan): ChartView {
  const scores = plan.scores.families.filter((score) => score.situation !== ALL_SITUATIONS);
  return {
    id: 'families-by-situation',
    title: matrixTitle(scores),
    caption:
      'Points saved per ten snaps against the base. A stronger tint helps more. An asterisk: ahead of the base beyond its 80% interval.',
    drawing: scores.length === 0 ? null : { kind: 'grid', grid: familyGrid(plan, scores) },
    empty: 'No family was scored by situation, so nothing is drawn.',
    table: familySituationTable(plan, scores),
  };
}

function familyGrid(plan: WeekPlan, scores: readonly FamilyScore[]): Grid {
  const families = [...new Set(scores.map((score) => score.family))].filter((family) => family !== 'base');
  const rows = planSituations(plan).map((situation) => {
    const here = scores.filter((score) => score.situation === situation.id);
    return {
      label: situation.label,
      note: fixed(situation.expectedSnaps, 1),
      cells: families.map((family) => scoreCell(here.find((score) => score.family === family))),
    };
  });
  return { columns: families.map(familyLabel), noteTitle: 'Snaps expected', rows };
}

function scoreCell(score: FamilyScore | undefined): GridCell {
  if (score === undefined) return { text: 'not scored', strength: 0, state: 'none' };
  const mark = score.verdict === 'ahead' ? '*' : '';
  return { text: `${signed(score.points.mean)}${mark}`, strength: score.points.mean / DARKEST_POINTS, state: 'filled' };
}

/** Points per ten snaps that are drawn in the darkest tint; judgment: larger gains hardly occur. */
const DARKEST_POINTS = 1;

function matrixTitle(scores: readonly FamilyScore[]): string {
  const ahead = scores.filter((score) => score.verdict === 'ahead');
  const best = [...ahead].sort((a, b) => b.points.mean - a.points.mean)[0];
  if (best === undefined) return 'In no situation is a family clearly ahead of the base';
  return `The clearest gain: ${familyLabel(best.family)} on ${situationLabel(best.situation)}, ${signed(best.points.mean)} per ten snaps`;
}
