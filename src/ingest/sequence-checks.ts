import type { ColumnName } from '../game/columns.ts';
import type { CodeColumn, Film, NumberColumn } from '../game/film.ts';
import { leftAfter } from '../game/next-snap.ts';
import { writeFieldPosition } from '../game/written-numbers.ts';
import type { RowProblem } from './row-problem.ts';

/** Results after which down and distance say nothing of the next snap. */
const NO_FOLLOW_UP = ['penalty', 'interception', 'fumble_lost'];

/** The columns the check reads, as their bare entries; a column that is absent has none. */
interface Sequence {
  readonly chart: Film;
  readonly game: Uint16Array;
  readonly offense: Uint16Array;
  readonly drive: NumberColumn['numbers'];
  readonly snap: NumberColumn['numbers'];
  readonly gain: NumberColumn['numbers'];
  readonly down: NumberColumn['numbers'];
  readonly toGo: NumberColumn['numbers'];
  readonly ballOn: NumberColumn['numbers'];
  readonly result: CodeColumn | undefined;
}

/**
 * Warnings where a snap does not follow from the one before it: same game, offense and drive, snap numbers one apart,
 * yet down, distance or ball position differ from what the gain left. A penalty between the two is a good reason, so
 * these are never faults. Row order does not matter.
 */
export function checkSequence(chart: Film): readonly RowProblem[] {
  const sequence = sequenceOf(chart);
  if (sequence.drive.length === 0 || sequence.snap.length === 0 || sequence.gain.length === 0) return [];
  const order = snapOrder(sequence, chart.size);
  const problems: RowProblem[] = [];
  for (let k = 1; k < chart.size; k++) {
    const before = order[k - 1] ?? k - 1;
    const after = order[k] ?? k;
    if (follows(sequence, before, after)) problems.push(...checkStep(sequence, before, after));
  }
  return problems;
}

function sequenceOf(chart: Film): Sequence {
  const { result } = chart.columns;
  return {
    chart,
    game: codesOf(chart, 'game'),
    offense: codesOf(chart, 'offense'),
    drive: numbersOf(chart, 'drive'),
    snap: numbersOf(chart, 'snap'),
    gain: numbersOf(chart, 'gain'),
    down: numbersOf(chart, 'down'),
    toGo: numbersOf(chart, 'to_go'),
    ballOn: numbersOf(chart, 'ball_on'),
    result: result?.kind === 'code' ? result : undefined,
  };
}

function codesOf(chart: Film, name: ColumnName): Uint16Array {
  const column = chart.columns[name];
  return column?.kind === 'code' ? column.codes : new Uint16Array(0);
}

function numbersOf(chart: Film, name: ColumnName): NumberColumn['numbers'] {
  const column = chart.columns[name];
  return column?.kind === 'number' ? column.numbers : new Float64Array(0);
}

/** Snaps by game, offense, drive and number; empty when they stand in that order already, as in most sheets. */
function snapOrder(sequence: Sequence, size: number): ArrayLike<number> {
  let sorted = true;
  for (let i = 1; sorted && i < size; i++) sorted = compareSnaps(sequence, i - 1, i) <= 0;
  if (sorted) return [];
  const order = new Uint32Array(size).map((_, i) => i);
  return order.sort((left, right) => compareSnaps(sequence, left, right) || left - right);
}

function compareSnaps({ game, offense, drive, snap }: Sequence, left: number, right: number): number {
  const byGame = (game[left] ?? 0) - (game[right] ?? 0);
  if (byGame !== 0) return byGame;
  const byOffense = (offense[left] ?? 0) - (offense[right] ?? 0);
  if (byOffense !== 0) return byOffense;
  return compareNumbers(drive, left, right) || compareNumbers(snap, left, right);
}

/** Not charted comes first. */
function compareNumbers(numbers: NumberColumn['numbers'], left: number, right: number): number {
  return (numbers[left] || -1) - (numbers[right] || -1);
}

/** A number that was not charted is NaN, which equals nothing. */
function follows({ game, offense, drive, snap, gain, result }: Sequence, before: number, after: number): boolean {
  if (game[before] !== game[after] || offense[before] !== offense[after]) return false;
  if (drive[before] !== drive[after] || (snap[before] ?? Number.NaN) + 1 !== snap[after]) return false;
  const ended = result?.values[result.codes[before] as number] ?? '';
  return !Number.isNaN(gain[before]) && !NO_FOLLOW_UP.includes(ended);
}

function checkStep(sequence: Sequence, before: number, after: number): RowProblem[] {
  const { chart, down, toGo, ballOn } = sequence;
  const gain = sequence.gain[before] ?? 0;
  const at = (numbers: NumberColumn['numbers']) => numbers[before] ?? Number.NaN;
  const left = leftAfter({ down: at(down), toGo: at(toGo), ballOn: at(ballOn) }, gain);
  const steps: readonly Step[] = [
    { name: 'down', expected: left.down, value: down[after] ?? Number.NaN },
    { name: 'to_go', expected: left.toGo, value: toGo[after] ?? Number.NaN },
    { name: 'ball_on', expected: left.ballOn, value: ballOn[after] ?? Number.NaN },
  ];
  return steps.filter(differs).map((step) => stepProblem(chart, after, step));
}

interface Step {
  readonly name: 'down' | 'to_go' | 'ball_on';
  readonly expected: number;
  readonly value: number;
}

function differs({ expected, value }: Step): boolean {
  return !Number.isNaN(expected) && !Number.isNaN(value) && value !== expected;
}

function stepProblem(chart: Film, index: number, { name, expected, value }: Step): RowProblem {
  const say = name === 'ball_on' ? writeFieldPosition : String;
  const place = { file: chart.sources[chart.sourceOf[index] as number] ?? '', row: chart.rowOf[index] as number };
  const rule = `does not follow from the snap before, which leaves ${say(expected)}; a charting slip or a penalty?`;
  return { ...place, severity: 'warning', header: name, found: say(value), rule };
}
