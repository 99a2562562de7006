import type { ColumnName } from '../../game/columns.ts';
import { type DownDistanceBall, leftAfter } from '../../game/next-snap.ts';
import { writeFieldPosition } from '../../game/written-numbers.ts';
import { readFieldPosition } from '../../ingest/read-field-position.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';
import { isIncomplete } from './play-facts.ts';
import { withCell } from './snap-cells.ts';

/** A snap about to be charted: what is in it already, and which of that needs no second look. */
export interface ComingSnap {
  readonly cells: SnapCells;
  readonly known: ReadonlySet<ColumnName>;
}

/** What stays the same from snap to snap until it is changed. */
const SAME: readonly ColumnName[] = ['offense', 'defense', 'game', 'week', 'quarter', 'personnel'];

/** Results after which the other team has the ball. */
const TURNOVERS: readonly (string | undefined)[] = ['interception', 'fumble_lost'];

/** The snap after one, as far as it follows; the first of a game when there is none before. */
export function followOn(before: SnapCells | undefined, game: SnapCells): ComingSnap {
  if (before === undefined || before.game !== (game.game ?? before.game)) return firstSnap(game);
  const kept = Object.fromEntries(SAME.flatMap((name) => (before[name] === undefined ? [] : [[name, before[name]]])));
  const cells: SnapCells = { ...kept, ...game, snap: plusOne(before.snap), drive: before.drive ?? '1' };
  if (before.result === 'penalty') return afterPenalty(cells, before);
  const left = leftAfter(situationOf(before), Number(before.gain ?? Number.NaN));
  return isOver(before, left) ? newSeries(cells) : sameSeries(cells, left, before);
}

function firstSnap(game: SnapCells): ComingSnap {
  return newSeries({ ...game, snap: '1', drive: '0' });
}

/** A new series: first and ten, and the ball is wherever it is. */
export function newSeries(cells: SnapCells): ComingSnap {
  const fresh = { ...withCell(cells, 'ball_on', ''), drive: plusOne(cells.drive), down: '1', to_go: '10' };
  return { cells: fresh, known: new Set<ColumnName>(['down', 'to_go']) };
}

/** What a flag leaves is not known: the same down and ball stand there to be kept or changed. */
function afterPenalty(cells: SnapCells, { down, to_go, ball_on, hash }: SnapCells): ComingSnap {
  const same = Object.entries({ down, to_go, ball_on, hash }).filter(([, text]) => text !== undefined);
  return { cells: { ...cells, ...Object.fromEntries(same) }, known: new Set() };
}

function sameSeries(cells: SnapCells, left: DownDistanceBall, before: SnapCells): ComingSnap {
  const toGo = Number.isNaN(left.toGo) && left.down === 1 ? Math.min(10, left.ballOn) : left.toGo;
  const next: [ColumnName, string][] = [
    ['down', numberText(left.down)],
    ['to_go', numberText(toGo)],
    ['ball_on', left.ballOn > 0 && left.ballOn < 100 ? writeFieldPosition(left.ballOn) : ''],
  ];
  if (isIncomplete(before) && before.hash !== undefined) next.push(['hash', before.hash]);
  const found = next.filter(([, text]) => text !== '');
  return { cells: { ...cells, ...Object.fromEntries(found) }, known: new Set(found.map(([name]) => name)) };
}

function isOver(before: SnapCells, left: DownDistanceBall): boolean {
  return TURNOVERS.includes(before.result) || left.ballOn <= 0 || (before.down === '4' && left.down !== 1);
}

/** Down, distance and ball of a snap as numbers. */
export function situationOf({ down, to_go, ball_on }: SnapCells): DownDistanceBall {
  const ball = ball_on === undefined ? null : readFieldPosition(ball_on);
  return {
    down: Number(down ?? Number.NaN),
    toGo: Number(to_go ?? Number.NaN),
    ballOn: ball?.kind === 'value' ? Number(ball.value) : Number.NaN,
  };
}

function numberText(value: number): string {
  return Number.isNaN(value) ? '' : String(value);
}

function plusOne(text: string | undefined): string {
  return String((Number(text ?? 0) || 0) + 1);
}
