import { type Film, numberAt, textAt } from '../game/film.ts';
import { PASS_COLUMNS, wasRun } from '../game/run-or-pass.ts';
import type { RowProblem } from './row-problem.ts';

/**
 * A warning for every column that says something of passes only and is charted on runs too, once with its count: those
 * cells are left out of the numbers.
 */
export function checkPassColumns(chart: Film): readonly RowProblem[] {
  const columns = PASS_COLUMNS.filter((name) => chart.columns[name] !== undefined);
  if (columns.length === 0) return [];
  const runs = runsOf(chart);
  return columns.flatMap((header): RowProblem[] => {
    const charted = runs.filter((i) => (textAt(chart, header, i) ?? numberAt(chart, header, i)) !== undefined).length;
    if (charted === 0) return [];
    const rule = `is charted on ${charted} of ${runs.length} runs; it says something on passes only, so these cells are left out. A scramble and a sack count as passes`;
    return [{ severity: 'warning', file: chart.sources[0] ?? '', row: 0, header, found: '', rule }];
  });
}

function runsOf(chart: Film): readonly number[] {
  const runs: number[] = [];
  for (let i = 0; i < chart.size; i++)
    if (wasRun(textAt(chart, 'play_kind', i), textAt(chart, 'result', i))) runs.push(i);
  return runs;
}
