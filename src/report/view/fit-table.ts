import type { FamilyFit, FitChapter, FitCharting } from '../../pressure/fit/fit-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Grid, GridCell } from '../chart/matrix-grid.ts';
import { firedWords, MOSTLY_OPEN, ofTen } from '../words/fit-words.ts';
import { familyLabel, plainWords } from '../words/label.ts';
import { percent, percentRange } from '../words/percent.ts';
import { ALL_SITUATIONS, planSituations } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { isCarried } from './carried-calls.ts';
import { numberCell, numbers, type TableView, textCell, words } from './table-view.ts';

/** Every family over all snaps: right, wrong, not charted, and the rules that fired; best first. */
export function fitTable(fit: FitChapter): TableView {
  return {
    id: 'fit-table',
    caption: 'On how many of 10 snaps the idea is right and wrong against them',
    columns: [
      words('Family'),
      numbers('Right'),
      numbers('Wrong'),
      numbers('Not charted'),
      words('Right because'),
      words('Wrong because'),
    ],
    rows: byNet(fit.families.filter(({ situation }) => situation === ALL_SITUATIONS)).map((family) => ({
      name: familyLabel(family.family),
      cells: [
        numberCell(ofTen(family.right.mean), family.right.mean),
        numberCell(ofTen(family.wrong.mean), family.wrong.mean),
        numberCell(ofTen(family.unknown), family.unknown),
        textCell(firedWords(family.rules, 'right', family.family)),
        textCell(firedWords(family.rules, 'wrong', family.family)),
      ],
    })),
    empty: 'nothing is charted that a rule could speak of',
    phone: 'cards',
  };
}

/** Best right less wrong first. */
export function byNet(families: readonly FamilyFit[]): readonly FamilyFit[] {
  return [...families].sort((a, b) => b.net.mean - a.net.mean);
}

/** Right less wrong of each family in each situation, in snaps of ten. */
export function fitMatrix(plan: WeekPlan, fit: FitChapter): ChartView {
  const grid = fitGrid(plan, fit);
  return {
    id: 'fit-by-situation',
    title: 'Right less wrong, of 10 snaps, by situation',
    caption:
      'A stronger tint is right more often. Below zero the idea is wrong more often than right there. Hatched: most snaps cannot be judged on what is charted.',
    drawing: grid.rows.length === 0 ? null : { kind: 'grid', grid },
    empty: 'No situation has film, so nothing is drawn.',
    table: fitSituationTable(plan, fit),
  };
}

/** Net share that is drawn in the darkest tint; judgment. */
const DARKEST = 0.5;

function fitGrid(plan: WeekPlan, { families }: FitChapter): Grid {
  const named = byNet(families.filter(({ situation }) => situation === ALL_SITUATIONS)).map(({ family }) => family);
  const rows = planSituations(plan)
    .filter(({ id, expectedSnaps }) => expectedSnaps >= 0.3 && families.some(({ situation }) => situation === id))
    .map(({ id, label, expectedSnaps }) => ({
      label,
      note: expectedSnaps.toFixed(1),
      cells: named.map((family) =>
        netCell(families.find((entry) => entry.family === family && entry.situation === id)),
      ),
    }));
  return { columns: named.map(familyLabel), noteTitle: 'Snaps expected', rows };
}

/** Right less wrong; where most snaps cannot be judged there is nothing to write. */
function netCell(fit: FamilyFit | undefined): GridCell {
  if (fit === undefined || fit.unknown > MOSTLY_OPEN) return { text: 'not charted', strength: 0, state: 'none' };
  return { text: ofTen(fit.net.mean), strength: fit.net.mean / DARKEST, state: 'filled' };
}

function fitSituationTable(plan: WeekPlan, { calls }: FitChapter): TableView {
  const situations = planSituations(plan);
  return {
    id: 'fit-by-situation-table',
    caption: 'Our calls by situation: right and wrong, of 10 snaps',
    columns: [words('Situation'), words('Call'), numbers('Right'), numbers('Wrong'), numbers('Net, 95% range')],
    rows: calls
      .filter(({ call }) => isCarried(plan)(call))
      .filter(({ situation }) => situations.some(({ id, expectedSnaps }) => id === situation && expectedSnaps >= 0.3))
      .map(({ call, situation, right, wrong, net }) => ({
        name: situations.find(({ id }) => id === situation)?.label ?? situation,
        situation,
        cells: [
          textCell(call),
          numberCell(ofTen(right.mean), right.mean),
          numberCell(ofTen(wrong.mean), wrong.mean),
          numberCell(`${ofTen(net.mean)} (${ofTen(net.low)} to ${ofTen(net.high)})`, net.mean),
        ],
      })),
    empty: 'no call library',
  };
}

/** Where each family turns from right to wrong. */
export function breakEvenTable({ breakEvens }: FitChapter): TableView {
  return {
    id: 'break-even-table',
    caption: 'Where a family turns',
    columns: [words('Family'), words('Against'), words('On'), numbers('They show'), words('Right')],
    rows: breakEvens
      .filter(({ situation, turnsAt }) => situation === ALL_SITUATIONS && turnsAt !== null)
      .map(({ family, against, rules, shown, turnsAt, rightBelow }) => ({
        name: familyLabel(family),
        cells: [
          textCell(against === null ? 'wrong' : familyLabel(against)),
          textCell(rules.map((rule) => plainWords(rule).toLowerCase()).join(', ')),
          numberCell(`${percent(shown.mean)} (${percentRange(shown.low, shown.high)})`, shown.mean),
          textCell(`${rightBelow ? 'below' : 'above'} ${percent(turnsAt ?? 0)}`),
        ],
      })),
    empty: 'nothing turns between 0 and 100%',
  };
}

/** What one more column charted would settle. */
export function fitChartingTable({ charting }: FitChapter): TableView {
  return {
    id: 'fit-charting-table',
    caption: 'What is worth charting next',
    columns: [words('Column'), words('Leaves most open'), numbers('Of 10 snaps'), numbers('Chance the choice changes')],
    rows: charting.map(({ column, family, share, chanceChoiceChanges }: FitCharting) => ({
      name: column,
      cells: [
        textCell(familyLabel(family)),
        numberCell(ofTen(share), share),
        numberCell(percent(chanceChoiceChanges), chanceChoiceChanges),
      ],
    })),
    empty: 'nothing: everything the rules ask is charted',
  };
}

/** The rules, with who says so. */
export function ruleTableView({ rules }: FitChapter): TableView {
  return {
    id: 'rule-table',
    caption: 'The rules; change them under rules: in defense.yaml',
    columns: [words('Rule'), words('Family'), words('Says'), words('When'), words('Source')],
    rows: rules.map(({ id, families, says, when, source }) => ({
      name: plainWords(id),
      cells: [
        textCell(families.map(familyLabel).join(', ')),
        textCell(says),
        textCell(
          Object.entries(when)
            .flatMap(([feature, values]) =>
              values === undefined ? [] : [`${plainWords(feature)}: ${values.join(' or ')}`],
            )
            .join('; ')
            .replaceAll('_', ' '),
        ),
        textCell(source),
      ],
    })),
    empty: 'no rule is on',
  };
}
