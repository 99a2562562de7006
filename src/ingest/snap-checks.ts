import { type Chart, numberAt, selectSnaps, textAt } from './chart.ts';
import type { RowProblem } from './row-problem.ts';

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
