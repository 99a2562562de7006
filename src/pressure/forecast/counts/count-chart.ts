import type { Film } from '../../../game/film.ts';
import type { SituationCuts } from '../../../game/week-settings.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import { type OffenseGame, offenseGames } from '../../snap/offense-game.ts';
import { type SnapCells, snapCells } from '../../snap/snap-cells.ts';
import { TARGET_DEFINITIONS } from '../target.ts';
import { ANY, COUNT_SITUATIONS, COUNT_STATES, type CountRow, GAMES, SNAPS } from './count-row.ts';

/**
 * The tallies of a chart, by offense, target, situation, state and class: all that the plan's forecast takes from film of
 * other offenses. Cells without a snap have no row; the rows stand in the order of the SQL that makes them elsewhere.
 *
 * @param cuts - the staff's cut-offs; tallies made with others count other situations
 */
export function countChart(chart: Film, cuts: SituationCuts): CountRow[] {
  const cells = snapCells(chart, cuts);
  const tallied = [
    { target: SNAPS, classes: [ANY], codes: new Uint8Array(chart.size) },
    ...TARGET_DEFINITIONS.map(({ target, classes, codes }) => ({ target, classes, codes: codes(chart, cuts) })),
  ];
  const rows = [...gamesByOffense(chart)].flatMap(([offense, games]) => [
    ...tallied.flatMap((target) => snapRows(cells, target, games).map((row) => ({ offense, ...row }))),
    ...gameRows(tallied, games).map((row) => ({ offense, ...row })),
  ]);
  return rows.sort(inOrder);
}

/** The order that the SQL asks for as well, so that both write the same file. */
const ORDER = ['offense', 'target', 'situation', 'state', 'class'] as const;

function inOrder(left: CountRow, right: CountRow): number {
  const name = ORDER.find((one) => left[one] !== right[one]);
  if (name === undefined) return 0;
  return left[name] < right[name] ? -1 : 1;
}

interface Tallied {
  readonly target: string;
  readonly classes: readonly string[];
  readonly codes: Uint8Array;
}

type Tally = Omit<CountRow, 'offense'>;

function gamesByOffense(chart: Film): ReadonlyMap<string, readonly OffenseGame[]> {
  const games = offenseGames(chart);
  const names = [...new Set(games.map(({ offense }) => offense))].sort();
  return new Map(names.map((name) => [name, games.filter(({ offense }) => offense === name)]));
}

function snapRows(cells: SnapCells, { target, classes, codes }: Tallied, games: readonly OffenseGame[]): Tally[] {
  const states = COUNT_STATES.length + 1;
  const counts = new Uint32Array((COUNT_SITUATIONS.length + 1) * states * classes.length);
  for (const { rows } of games) {
    for (const row of rows) {
      if (codes[row] === NOT_KNOWN) continue;
      const situation = placeOf(cells.situation, row, COUNT_SITUATIONS.length);
      const state = placeOf(cells.moment, row, COUNT_STATES.length);
      const at = (situation * states + state) * classes.length + (codes[row] as number);
      counts[at] = (counts[at] as number) + 1;
    }
  }
  return [...counts].flatMap((count, at) => {
    if (count === 0) return [];
    const cell = Math.floor(at / classes.length);
    const situation = COUNT_SITUATIONS[Math.floor(cell / states)] ?? '';
    const state = COUNT_STATES[cell % states] ?? '';
    return [{ situation, state, target, class: classes[at % classes.length] ?? '', count }];
  });
}

/** The place of a snap's code in a table with one more place at the end for what was not charted. */
function placeOf(codes: Uint8Array, row: number, unknown: number): number {
  const code = codes[row] as number;
  return code === NOT_KNOWN ? unknown : code;
}

/** Games in all, and those in which each target was charted. */
function gameRows(tallied: readonly Tallied[], games: readonly OffenseGame[]): Tally[] {
  return tallied.flatMap(({ target, codes }) => {
    const charted = games.filter(({ rows }) => rows.some((row) => codes[row] !== NOT_KNOWN)).length;
    const named = target === SNAPS ? ANY : target;
    return charted === 0 ? [] : [{ situation: '', state: '', target: GAMES, class: named, count: charted }];
  });
}
