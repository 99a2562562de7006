import { type Chart, textAt } from '../ingest/chart.ts';
import { HASHES } from '../ingest/vocabulary.ts';
import type { ScriptPair } from './script-pair.ts';
import { spreadEvenly } from './script-spread.ts';

/** Situation ids for the repetitions of a pair, by where the menu calls it and the look is expected. */
export function situationsOfPair(pair: ScriptPair, reps: number): string[] {
  return [...spreadEvenly(pair.situations, reps)];
}

/** How often the ball lay on each hash on film; even where nothing was charted. */
export function hashWeights(chart: Chart): ReadonlyMap<string, number> {
  const counts = new Map<string, number>(HASHES.map((hash) => [hash, 0]));
  for (let i = 0; i < chart.size; i++) {
    const hash = textAt(chart, 'hash', i);
    if (hash !== undefined) counts.set(hash, (counts.get(hash) ?? 0) + 1);
  }
  const charted = [...counts.values()].some((count) => count > 0);
  return charted ? counts : new Map(HASHES.map((hash) => [hash, 1]));
}
