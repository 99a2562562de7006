import { readFile } from 'node:fs/promises';
import type { Film } from '../game/film.ts';
import { readSheet } from '../ingest/read-sheet.ts';
import { describeProblems } from '../ingest/row-problem.ts';
import { type ChartAgreement, compareCharts } from '../pressure/chart-comparison/compare-charts.ts';
import type { FieldAgreement } from '../pressure/chart-comparison/field.ts';
import type { NoMatch } from '../pressure/chart-comparison/match.ts';
import { UserProblem } from '../season/user-problem.ts';
import { EXIT } from './exit-code.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';

type Compared = Extract<ChartAgreement, { kind: 'compared' }>;

/** Two charts of one game. */
export interface AgreeFiles {
  readonly first: string;
  readonly second: string;
}

/** Groups of problems named before the rest is only counted. */
const NAMED = 12;
/** Under 20 snaps a share is called thin. Common practice, no source. */
const THIN = 20;

/** Compares two charts of the same game field by field and prints the most disputed columns first. */
export async function agree(
  { first, second }: AgreeFiles,
  options: { readonly json?: boolean },
  terminal: Terminal,
): Promise<number> {
  const one = await readChart(first, terminal);
  const other = await readChart(second, terminal);
  const result = compareCharts(one.chart, other.chart);
  if (result.kind !== 'compared') throw new UserProblem('faults', `cannot compare: ${noMatchWords(result)}`);
  terminal.out(options.json ? `${JSON.stringify({ first, second, ...result }, null, 2)}\n` : agreementText(result));
  return one.faults + other.faults > 0 ? EXIT.faults : EXIT.fine;
}

async function readChart(file: string, terminal: Terminal): Promise<{ chart: Film; faults: number }> {
  const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
    const reason = error.code === 'ENOENT' ? 'there is no such file' : error.message;
    throw new UserProblem('usage', `cannot read ${file}: ${reason}`, { cause: error });
  });
  const theirs = readSheet({ file, bytes }, { kind: 'opponent' });
  const ownCall = theirs.unmapped.some((header) => /^(call|coverage)$/i.test(header.trim()));
  const reading = ownCall ? readSheet({ file, bytes }, { kind: 'own' }) : theirs;
  for (const line of describeProblems(reading.problems, NAMED)) terminal.note(line);
  if (reading.chart.size === 0) throw new UserProblem('faults', `${file} holds no usable snap`);
  return { chart: reading.chart, faults: reading.rejected.length };
}

function noMatchWords(why: NoMatch): string {
  if (why.kind === 'no_snap_in_both') return 'no game and snap number stands in both charts';
  return `the ${why.chart} chart numbers no snap; both need the column snap`;
}

function agreementText(result: Compared): string {
  const head = `${result.matched} snaps matched by ${MATCHED_BY[result.matchedBy]}; ${result.onlyFirst} only in the first chart, ${result.onlySecond} only in the second.`;
  const table = tableText(
    ['column', 'agree', 'share', '95% interval', 'beyond chance (kappa)', 'only one charted', '', 'most disputed'],
    result.fields.map(fieldCells),
  );
  return [head, table, CAVEAT].join('\n');
}

const MATCHED_BY: Readonly<Record<Compared['matchedBy'], string>> = { game_and_snap: 'game and snap', snap: 'snap' };

const CAVEAT = `A blank in either chart is not counted as a disagreement. Numbers agree within the span named after them.
For scale: two professional charts of the same games agree on the exact number of rushers on 81% of snaps
(FTN Data and NFL NextGenStats via nflverse, 2022-23, CC BY-SA 4.0).
`;

function fieldCells(field: FieldAgreement): string[] {
  const { agreed, within } = field;
  const name = within ? `${field.column} (within ${within})` : field.column;
  const one = String(field.onlyFirst + field.onlySecond);
  const percent = (part: number) => `${Math.round(100 * part)}%`;
  if (agreed.estimate === null) return [name, 'never charted by both', '', '', '', one, '', ''];
  return [
    name,
    `${agreed.count} of ${agreed.trials}`,
    percent(agreed.estimate),
    `${percent(agreed.low)} to ${percent(agreed.high)}`,
    kappaWords(field),
    one,
    field.both < THIN ? 'thin' : '',
    disputeWords(field),
  ];
}

/** A kappa of full agreement has no large-sample interval worth showing. */
function kappaWords({ kappa, disputes }: FieldAgreement): string {
  if (kappa === null || kappa.estimate === null) return '';
  const value = kappa.estimate.toFixed(2);
  return disputes.length === 0 ? value : `${value} (${kappa.low.toFixed(2)} to ${kappa.high.toFixed(2)})`;
}

function disputeWords({ disputes }: FieldAgreement): string {
  return disputes
    .slice(0, 2)
    .map(({ first, second, snaps }) => `${first} / ${second} on ${snaps}`)
    .join('; ');
}
