import type { ColumnName } from '../../../game/columns.ts';
import { type Film, numberAt, textAt } from '../../../game/film.ts';
import { gameStateCodes } from '../../snap/game-state.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import type { SnapCells } from '../../snap/snap-cells.ts';
import { type CutsByKind, levelAmong, levelByKind } from './additive-levels.ts';

/** What the additive model looks at before the snap. Never motion, never anything of the defense, never an outcome. */
export const ADDITIVE_COLUMNS = [
  'down',
  'yards',
  'distance',
  'rough_distance',
  'situation',
  'state',
  'quarter',
  'clock',
  'rough_clock',
  'margin',
  'rough_margin',
  'field',
  'rough_field',
  'hash',
  'tempo',
  'personnel',
  'backs',
  'look',
  'formation',
  'receivers',
  'back_spot',
] as const;
/** One word of {@link ADDITIVE_COLUMNS}. */
export type AdditiveColumn = (typeof ADDITIVE_COLUMNS)[number];

/** The level of every snap in every column, counted from 1; 0 where it was not charted. */
export type AdditiveLevels = Readonly<Record<AdditiveColumn, Uint16Array>>;

/**
 * Reads what the additive model looks at. The staff's own words (formation, personnel) are numbered as the chart
 * numbers them, so an opponent and an archive that are modelled together must come as one chart.
 *
 * @param cells - the chart's own cells, which hold the staff's cut-offs
 */
export function additiveLevels(chart: Film, cells: SnapCells): AdditiveLevels {
  const levels = ADDITIVE_COLUMNS.map((column) => {
    const levelAt = READERS[column](chart, cells);
    return [column, Uint16Array.from({ length: chart.size }, (_, i) => levelAt(i))];
  });
  return Object.fromEntries(levels) as AdditiveLevels;
}

type LevelAt = (index: number) => number;

/** Yards to go, one by one where they matter; all cuts in this file are judgement, chosen once and not tuned. */
const YARD_CUTS = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 18, 21];
const LATER_DOWN = [2, 3, 4, 5, 7, 9, 11, 15];
const DISTANCE_CUTS: CutsByKind = [[10, 11], LATER_DOWN, LATER_DOWN, LATER_DOWN];
const ROUGH_DISTANCE_CUTS: CutsByKind = [[], [4, 8], [3, 6], [3, 6]];
/** Seconds left in the quarter, first quarter to overtime: fine where the clock presses. */
const CLOCK_CUTS: CutsByKind = [
  [300],
  [31, 61, 121, 201, 301, 601],
  [301, 601],
  [31, 61, 121, 181, 241, 301, 421, 601],
  [],
];
const ROUGH_CLOCK_CUTS: CutsByKind = [[], [61, 121, 241], [], [61, 121, 181, 301, 481], []];
/** Points ahead: at one, two and three scores, and at the field goals and touchdowns between. */
const MARGIN_CUTS = [-20, -16, -13, -10, -8, -6, -3, 0, 1, 4, 7, 9, 11, 14, 17, 21];
const ROUGH_MARGIN_CUTS = [-16, -8, -3, 0, 1, 4, 9, 17];
/** Yards to the opponent's goal line. */
const FIELD_CUTS = [2, 3, 4, 5, 7, 10, 14, 20, 25, 30, 35, 40, 50, 60, 70, 80, 85, 90, 95];
const ROUGH_FIELD_CUTS = [3, 6, 11, 21, 40, 90];

const READERS: Readonly<Record<AdditiveColumn, (chart: Film, cells: SnapCells) => LevelAt>> = {
  down: (chart) => (i) => numberAt(chart, 'down', i) ?? 0,
  yards: cut('to_go', YARD_CUTS),
  distance: cutBy('down', 'to_go', DISTANCE_CUTS),
  rough_distance: cutBy('down', 'to_go', ROUGH_DISTANCE_CUTS),
  situation: (_, cells) => coded(cells.situation),
  state: (chart) => coded(gameStateCodes(chart)),
  quarter: (chart) => (i) => numberAt(chart, 'quarter', i) ?? 0,
  clock: cutBy('quarter', 'clock', CLOCK_CUTS),
  rough_clock: cutBy('quarter', 'clock', ROUGH_CLOCK_CUTS),
  margin: cut('score_margin', MARGIN_CUTS),
  rough_margin: cut('score_margin', ROUGH_MARGIN_CUTS),
  field: cut('ball_on', FIELD_CUTS),
  rough_field: cut('ball_on', ROUGH_FIELD_CUTS),
  hash: worded('hash'),
  tempo: worded('tempo'),
  personnel: worded('personnel'),
  backs: (chart) => (i) => backLevel(textAt(chart, 'personnel', i)),
  look: (_, cells) => coded(cells.look),
  formation: worded('formation'),
  receivers: (_, cells) => coded(cells.receivers),
  back_spot: (_, cells) => coded(cells.backSpot),
};

function cut(column: ColumnName, cuts: readonly number[]): (chart: Film) => LevelAt {
  return (chart) => (i) => levelAmong(numberAt(chart, column, i), cuts);
}

function cutBy(kind: ColumnName, column: ColumnName, cuts: CutsByKind): (chart: Film) => LevelAt {
  return (chart) => (i) => levelByKind(numberAt(chart, kind, i), numberAt(chart, column, i), cuts);
}

function coded(codes: Uint8Array): LevelAt {
  return (i) => (codes[i] === NOT_KNOWN ? 0 : (codes[i] as number) + 1);
}

function worded(column: ColumnName): (chart: Film) => LevelAt {
  return (chart) => {
    const found = chart.columns[column];
    return (i) => (found?.kind === 'code' ? (found.codes[i] ?? 0) : 0);
  };
}

/** The first digit of the personnel is the number of backs. */
function backLevel(personnel: string | undefined): number {
  return personnel === undefined ? 0 : Number.parseInt(personnel.slice(0, 1), 10) + 1;
}
