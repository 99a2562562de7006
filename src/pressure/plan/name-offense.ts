import { countBy, mostFirst } from '../../game/by-word.ts';
import { type Film, rowsOf, textAt } from '../../game/film.ts';

/** The chart with every snap that names no offense given this one. */
export function withOffense(chart: Film, offense: string): Film {
  const column = chart.columns.offense;
  const values = column?.kind === 'code' ? [...column.values] : [''];
  let code = values.indexOf(offense);
  if (code < 0) code = values.push(offense) - 1;
  const codes = Uint16Array.from({ length: chart.size }, (_, i) =>
    column?.kind === 'code' && column.codes[i] ? column.codes[i] : code,
  );
  return { ...chart, columns: { ...chart.columns, offense: { kind: 'code', codes, values } } };
}

/** The offense named on most snaps, or plain words when none is named. */
export function offenseOf(chart: Film): string {
  const [most] = mostFirst(countBy(rowsOf(chart), (row) => textAt(chart, 'offense', row)));
  return most?.[0] ?? 'the opponent';
}
