import { countBy } from '../game/by-word.ts';
import type { ColumnName } from '../game/columns.ts';
import { type Film, numberAt, textAt } from '../game/film.ts';
import { freeWordKey } from '../game/free-word.ts';
import type { RowProblem } from './row-problem.ts';

/** What two charts of one game agree on, where both charted it. */
const COMPARED: readonly ColumnName[] = ['down', 'to_go', 'ball_on', 'gain'];

/** Fewer snaps than this are not compared: a few could agree by chance. Judgment. */
const LEAST_SNAPS = 8;

/** Of the shorter chart of a game, this share must be found in the other; two honest charters agree on more. Judgment. */
const LEAST_SHARE = 0.6;

/** The snaps of one game and offense in one chart. */
interface Charting {
  readonly chart: Film;
  readonly rows: number[];
}

/** The chartings of one game and offense, those with snap numbers and those without. */
interface ChartedGame {
  readonly numbered: Charting[];
  readonly bare: Charting[];
}

/**
 * Faults for the snaps without a number of every game that is charted with numbers as well, in another file or another
 * part of the same one: without a number no snap is known again, and the game would count twice. Only charts that agree
 * on most snaps are of the same plays; two halves of a game are not.
 */
export function chartedTwice(charts: readonly Film[]): readonly RowProblem[] {
  return [...mixedGames(charts).values()].flatMap(({ numbered, bare }) =>
    bare.flatMap((charting) => {
      const twin = numbered.find((other) => agree(charting, other));
      return twin === undefined ? [] : twiceProblems(charting, twin);
    }),
  );
}

/** The games of which some snaps have a number and others none, by game and offense. */
function mixedGames(charts: readonly Film[]): Map<string, ChartedGame> {
  const games = new Map<string, ChartedGame>();
  if (!charts.some(hasBareSnap)) return games;
  for (const chart of charts) enterChart(chart, games);
  return games;
}

function hasBareSnap(chart: Film): boolean {
  const { snap } = chart.columns;
  return chart.size > 0 && (snap?.kind !== 'number' || snap.numbers.some(Number.isNaN));
}

function enterChart(chart: Film, games: Map<string, ChartedGame>): void {
  for (const [key, { numbered, bare }] of partsOf(chart)) {
    const game = games.get(key) ?? { numbered: [], bare: [] };
    games.set(key, game);
    if (numbered.rows.length > 0) game.numbered.push(numbered);
    if (bare.rows.length > 0) game.bare.push(bare);
  }
}

/** The snaps of every game and offense of a chart, with a number and without. */
function partsOf(chart: Film): Map<string, { readonly numbered: Charting; readonly bare: Charting }> {
  const parts = new Map<string, { readonly numbered: Charting; readonly bare: Charting }>();
  for (let i = 0; i < chart.size; i++) {
    const game = textAt(chart, 'game', i);
    if (game === undefined) continue;
    const key = JSON.stringify([game, textAt(chart, 'offense', i) ?? ''].map(freeWordKey));
    const part = parts.get(key) ?? { numbered: { chart, rows: [] }, bare: { chart, rows: [] } };
    parts.set(key, part);
    (numberAt(chart, 'snap', i) === undefined ? part.bare : part.numbered).rows.push(i);
  }
  return parts;
}

/** Whether most snaps of the shorter charting are found in the other, each once. */
function agree(one: Charting, other: Charting): boolean {
  const shorter = Math.min(one.rows.length, other.rows.length);
  if (shorter < LEAST_SNAPS) return false;
  const columns = COMPARED.filter((name) => [one, other].every((charting) => isCharted(charting, name)));
  if (columns.length < 3) return false;
  const left = countPlays(other, columns);
  let found = 0;
  for (const row of one.rows) {
    const key = playKey(one.chart, row, columns);
    const count = left.get(key) ?? 0;
    if (count > 0) found++;
    left.set(key, count - 1);
  }
  return found >= LEAST_SHARE * shorter;
}

function isCharted({ chart, rows }: Charting, name: ColumnName): boolean {
  return rows.filter((row) => numberAt(chart, name, row) !== undefined).length > rows.length / 2;
}

function countPlays({ chart, rows }: Charting, columns: readonly ColumnName[]): Map<string, number> {
  return countBy(rows, (row) => playKey(chart, row, columns));
}

function playKey(chart: Film, row: number, columns: readonly ColumnName[]): string {
  return columns.map((name) => numberAt(chart, name, row) ?? '').join(' ');
}

function twiceProblems({ chart, rows }: Charting, twin: Charting): RowProblem[] {
  const place = twin.chart.sources[twin.chart.sourceOf[twin.rows[0] ?? 0] ?? 0] ?? '';
  const found = textAt(chart, 'game', rows[0] ?? 0) ?? '';
  const rule = `is charted with snap numbers in ${place} too; the snaps with numbers count, these do not count again`;
  return rows.map((row) => {
    const file = chart.sources[chart.sourceOf[row] as number] ?? '';
    return { file, row: chart.rowOf[row] as number, severity: 'fault', header: 'game', found, rule };
  });
}
