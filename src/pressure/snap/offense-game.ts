import { type Chart, numberAt, textAt } from '../../ingest/chart.ts';

/** The snaps of one offense in one game. */
export interface OffenseGame {
  /** Name of the offense; where it was not charted, the file it came from. */
  readonly offense: string;
  /** Name of the game; empty where it was not charted. */
  readonly game: string;
  /** Week of its first snap with a week; Infinity where none was charted. */
  readonly week: number;
  /** Indices into the chart, in its order. */
  readonly rows: readonly number[];
}

/** Every offense's games, in order of week, then of appearance in the chart. */
export function offenseGames(chart: Chart): readonly OffenseGame[] {
  const found = new Map<string, OffenseGame & { week: number; rows: number[] }>();
  for (let i = 0; i < chart.size; i++) {
    const offense = textAt(chart, 'offense', i) ?? chart.sources[chart.sourceOf[i] ?? 0] ?? '';
    const game = textAt(chart, 'game', i) ?? '';
    const key = JSON.stringify([offense, game]);
    const known = found.get(key) ?? { offense, game, week: Number.POSITIVE_INFINITY, rows: [] };
    if (known.week === Number.POSITIVE_INFINITY) known.week = numberAt(chart, 'week', i) ?? known.week;
    known.rows.push(i);
    found.set(key, known);
  }
  return [...found.values()].sort((a, b) => (a.week === b.week ? 0 : a.week - b.week));
}
