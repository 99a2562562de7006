import { type Film, textAt } from '../../game/film.ts';

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
  const counts = new Map<string, number>();
  for (let i = 0; i < chart.size; i++) {
    const name = textAt(chart, 'offense', i);
    if (name !== undefined) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return most?.[0] ?? 'the opponent';
}
