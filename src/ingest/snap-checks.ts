import { type Chart, numberAt, textAt } from './chart.ts';
import type { RowProblem } from './row-problem.ts';

/**
 * Faults for every snap that an earlier chart lists already: same game and offense with the same snap number, or with
 * the same quarter, clock, down, distance and ball position where snaps are not numbered. One chart per file. A sheet is
 * read again with these rows left out (see SheetOptions), which keeps them with their reason.
 */
export function checkAcross(charts: readonly Chart[]): readonly RowProblem[] {
  const seen = new Map<string, string>();
  return charts.flatMap((chart) => {
    const keys = Array.from({ length: chart.size }, (_, i) => identityOf(chart, i));
    const problems = repeatsOf(chart, keys, seen);
    keys.forEach((key, i) => {
      const { file, row } = placeOf(chart, i);
      if (key !== undefined && !seen.has(key)) seen.set(key, `${file}, row ${row}`);
    });
    return problems;
  });
}

function placeOf(chart: Chart, index: number): { file: string; row: number } {
  return { file: chart.sources[chart.sourceOf[index] ?? 0] ?? '', row: chart.rowOf[index] ?? 0 };
}

function repeatsOf(
  chart: Chart,
  keys: readonly (string | undefined)[],
  seen: ReadonlyMap<string, string>,
): RowProblem[] {
  return keys.flatMap((key, i) => {
    const earlier = key === undefined ? undefined : seen.get(key);
    return earlier === undefined ? [] : [repeatProblem(chart, i, earlier)];
  });
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
