import { type Film, textAt } from '../game/film.ts';
import { columnLetter } from './column-letter.ts';
import { BEYOND_WORDS } from './column-store.ts';
import { checkPassColumns } from './pass-column-checks.ts';
import type { Spelling } from './row-intake.ts';
import type { RowProblem } from './row-problem.ts';
import { checkSequence } from './sequence-checks.ts';
import { OWN_CALL_COLUMNS, type SheetKind } from './sheet-kind.ts';
import type { SheetPlan } from './sheet-plan.ts';
import { checkSpellings } from './spelling-checks.ts';

/** A sheet with all its rows read. */
export interface ReadSheet {
  readonly file: string;
  readonly kind: SheetKind;
  readonly chart: Film;
  /** Undefined when the sheet has no header row. */
  readonly plan: SheetPlan | undefined;
  readonly rowsRead: number;
  readonly spellings: readonly Spelling[];
}

/** What can only be said when all rows of a sheet are known. */
export function wholeSheetProblems(sheet: ReadSheet): RowProblem[] {
  const { plan } = sheet;
  if (plan === undefined) return [{ ...ofFile(sheet, 'fault'), rule: 'is empty: it has no header row and no snaps' }];
  if (plan.refused) return [];
  return [
    ...(sheet.rowsRead === 0 ? [{ ...ofFile(sheet, 'warning'), rule: 'has a header row and no snaps' }] : []),
    ...tooManyTexts(sheet),
    ...checkSpellings(sheet.chart, sheet.spellings).map((problem) => withLetter(problem, plan)),
    ...checkPassColumns(sheet.chart).map((problem) => withLetter(problem, plan)),
    ...(sheet.kind === 'own' ? uncalledSnaps(sheet) : []),
    ...checkSequence(sheet.chart).map((problem) => withLetter(problem, plan)),
  ];
}

function ofFile({ file }: ReadSheet, severity: RowProblem['severity']) {
  return { severity, file, row: 0, found: '' };
}

function tooManyTexts(sheet: ReadSheet): RowProblem[] {
  const full = Object.entries(sheet.chart.columns).filter(
    ([, column]) => column.kind === 'code' && column.values.includes(BEYOND_WORDS),
  );
  const rule = 'holds more different texts than can be kept apart (65,534); the later ones count as one';
  return full.map(([header]) => ({ ...ofFile(sheet, 'warning'), header, rule }));
}

function uncalledSnaps({ file, chart }: ReadSheet): RowProblem[] {
  const problems: RowProblem[] = [];
  const rule = `names none of ${OWN_CALL_COLUMNS.join(', ')}, so it says nothing of how we look on film`;
  for (let i = 0; i < chart.size; i++) {
    if (OWN_CALL_COLUMNS.some((name) => textAt(chart, name, i) !== undefined)) continue;
    problems.push({ severity: 'warning', file, row: chart.rowOf[i] as number, found: '', rule });
  }
  return problems;
}

/** The problem with the sheet's own header and column letter for our column that it names. */
function withLetter(problem: RowProblem, plan: SheetPlan): RowProblem {
  const column = plan.columns.find(({ name }) => name === problem.header);
  if (column === undefined || column.index < 0) return problem;
  return { ...problem, header: column.header.trim(), columnLetter: columnLetter(column.index) };
}
