import { type Chart, numberAt, selectSnaps, textAt } from './chart.ts';
import { writeFieldPosition } from './read-field-position.ts';
import type { RowProblem } from './row-problem.ts';

/** Results after which down and distance say nothing of the next snap. */
const NO_FOLLOW_UP = ['penalty', 'interception', 'fumble_lost'];

/**
 * Warnings where a snap does not follow from the one before it: same game, offense and drive, snap numbers one apart,
 * yet down, distance or ball position differ from what the gain left. A penalty between the two is a good reason, so
 * these are never faults. Row order does not matter.
 */
export function checkSequence(chart: Chart): readonly RowProblem[] {
  const { game, drive, snap, gain } = chart.columns;
  if (!game || !drive || !snap || !gain) return [];
  const order = snapOrder(chart);
  const problems: RowProblem[] = [];
  for (let k = 1; k < order.length; k++) {
    const [before = 0, after = 0] = [order[k - 1], order[k]];
    if (follows(chart, before, after)) problems.push(...checkStep(chart, before, after));
  }
  return problems;
}

/**
 * Faults for every snap that an earlier chart lists already: same game and offense with the same snap number, or with
 * the same quarter, clock, down, distance and ball position where snaps are not numbered. One chart per file.
 */
export function checkAcross(charts: readonly Chart[]): readonly RowProblem[] {
  return findRepeats(charts).flatMap(({ problems }) => problems);
}

/** The charts without the snaps that an earlier chart lists already, and a fault for each one left out. */
export function keepFirstListed(charts: readonly Chart[]): {
  readonly charts: readonly Chart[];
  readonly problems: readonly RowProblem[];
} {
  const found = findRepeats(charts);
  return {
    charts: found.map(({ chart, kept }) => (kept.length === chart.size ? chart : selectSnaps(chart, kept))),
    problems: found.flatMap(({ problems }) => problems),
  };
}

/** Snaps by game, offense, drive and number; the snaps as they stand when they are in order, as most sheets are. */
function snapOrder(chart: Chart): Uint32Array {
  const order = Uint32Array.from({ length: chart.size }, (_, i) => i);
  const keys = ['game', 'offense', 'drive', 'snap'].map((name) => sortKeys(chart, name as 'game'));
  const compare = (left: number, right: number): number => {
    for (const key of keys) {
      const difference = (key[left] ?? 0) - (key[right] ?? 0);
      if (difference !== 0) return difference;
    }
    return left - right;
  };
  const sorted = order.every((_, i) => i === 0 || compare(i - 1, i) <= 0);
  return sorted ? order : order.sort(compare);
}

/** The column as numbers to sort by; not charted comes first. */
function sortKeys(chart: Chart, name: 'game' | 'offense' | 'drive' | 'snap'): ArrayLike<number> {
  const column = chart.columns[name];
  if (column === undefined) return [];
  return column.kind === 'code' ? column.codes : column.numbers.map((value) => (Number.isNaN(value) ? -1 : value));
}

function follows(chart: Chart, before: number, after: number): boolean {
  const same = (['game', 'offense'] as const).every(
    (name) => textAt(chart, name, before) === textAt(chart, name, after),
  );
  const drive = numberAt(chart, 'drive', before);
  const snap = numberAt(chart, 'snap', before);
  if (!same || drive === undefined || snap === undefined) return false;
  if (NO_FOLLOW_UP.includes(textAt(chart, 'result', before) ?? '')) return false;
  return numberAt(chart, 'drive', after) === drive && numberAt(chart, 'snap', after) === snap + 1;
}

function checkStep(chart: Chart, before: number, after: number): RowProblem[] {
  const gain = numberAt(chart, 'gain', before);
  const down = numberAt(chart, 'down', before);
  const toGo = numberAt(chart, 'to_go', before);
  if (gain === undefined || down === undefined || toGo === undefined) return [];
  const expected = {
    ballOn: (numberAt(chart, 'ball_on', before) ?? Number.NaN) - gain,
    down: down + 1,
    toGo: toGo - gain,
  };
  const converted = gain >= toGo;
  return [
    ...stepProblem(chart, after, { name: 'down', expected: converted ? 1 : expected.down }),
    ...(converted ? [] : stepProblem(chart, after, { name: 'to_go', expected: expected.toGo })),
    ...stepProblem(chart, after, { name: 'ball_on', expected: expected.ballOn }),
  ];
}

interface Expectation {
  readonly name: 'down' | 'to_go' | 'ball_on';
  readonly expected: number;
}

function stepProblem(chart: Chart, index: number, { name, expected }: Expectation): RowProblem[] {
  const value = numberAt(chart, name, index);
  if (value === undefined || Number.isNaN(expected) || value === expected) return [];
  const say = name === 'ball_on' ? writeFieldPosition : String;
  const rule = `does not follow from the snap before, which leaves ${say(expected)}; a charting slip or a penalty?`;
  return [{ ...placeOf(chart, index), severity: 'warning', header: name, found: say(value), rule }];
}

function placeOf(chart: Chart, index: number): { file: string; row: number } {
  return { file: chart.sources[chart.sourceOf[index] ?? 0] ?? '', row: chart.rowOf[index] ?? 0 };
}

interface ChartRepeats {
  readonly chart: Chart;
  readonly kept: readonly number[];
  readonly problems: readonly RowProblem[];
}

function findRepeats(charts: readonly Chart[]): ChartRepeats[] {
  const seen = new Map<string, string>();
  return charts.map((chart) => {
    const keys = Array.from({ length: chart.size }, (_, i) => identityOf(chart, i));
    const repeats = splitRepeats(chart, keys, seen);
    keys.forEach((key, i) => {
      const { file, row } = placeOf(chart, i);
      if (key !== undefined && !seen.has(key)) seen.set(key, `${file}, row ${row}`);
    });
    return repeats;
  });
}

function splitRepeats(
  chart: Chart,
  keys: readonly (string | undefined)[],
  seen: ReadonlyMap<string, string>,
): ChartRepeats {
  const kept: number[] = [];
  const problems: RowProblem[] = [];
  keys.forEach((key, i) => {
    const earlier = key === undefined ? undefined : seen.get(key);
    if (earlier === undefined) kept.push(i);
    else problems.push(repeatProblem(chart, i, earlier));
  });
  return { chart, kept, problems };
}

function repeatProblem(chart: Chart, index: number, earlier: string): RowProblem {
  const snap = numberAt(chart, 'snap', index);
  const found = `${textAt(chart, 'game', index)}${snap === undefined ? '' : `, snap ${snap}`}`;
  return { ...placeOf(chart, index), severity: 'fault', found, rule: `is listed already in ${earlier}` };
}

/** What makes a snap the same snap in two files; undefined when too little was charted to say. */
function identityOf(chart: Chart, index: number): string | undefined {
  const game = textAt(chart, 'game', index);
  if (game === undefined) return undefined;
  const whose = [game, textAt(chart, 'offense', index) ?? ''];
  const snap = numberAt(chart, 'snap', index);
  if (snap !== undefined) return JSON.stringify([...whose, snap]);
  const moment = (['quarter', 'clock'] as const).map((name) => numberAt(chart, name, index));
  if (moment.includes(undefined)) return undefined;
  const place = (['down', 'to_go', 'ball_on'] as const).map((name) => numberAt(chart, name, index));
  return JSON.stringify([...whose, ...moment, ...place]);
}
