import { benjaminiHochberg } from '../../stats/adjust.ts';
import { runsTest } from '../../stats/runs.ts';
import type { OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** Fewer snaps than this in a game's situation make no sequence. Judgment. */
const SHORTEST = 6;

/**
 * Whether pressures alternate more or less than chance within a situation. Games are never joined: each game with a long
 * enough sequence is tested, and the smallest p is multiplied by the number of games tested (Bonferroni); `adjusted` is
 * corrected over the situations too (Benjamini-Hochberg). Snaps follow one another as they were played, however the sheet
 * is sorted.
 */
export function pressureRuns(snaps: readonly OwnSnap[]): OwnFilmChapter['runsTest'] {
  const played = [...snaps].sort((one, other) => one.order - other.order);
  const charted = played.filter(({ pressure, situation }) => pressure !== undefined && situation !== undefined);
  const tests = countWords(charted, ({ situation }) => situation).flatMap(([situation]) => {
    const games = countWords(charted, ({ game }) => game).map(([game]) =>
      charted.filter((snap) => snap.game === game && snap.situation === situation),
    );
    const long = games.filter((game) => game.length >= SHORTEST);
    if (long.length === 0) return [];
    const found = long.flatMap((game) => runsTest(game.map(({ pressure }) => pressure ?? false)).exact?.twoSided ?? []);
    const p = found.length === 0 ? null : Math.min(1, Math.min(...found) * found.length);
    return [{ situation, p, snaps: long.reduce((sum, game) => sum + game.length, 0) }];
  });
  const tested = tests.filter(({ p }) => p !== null);
  const adjusted = benjaminiHochberg(tested.map(({ p }) => p ?? 1));
  return tests.map((test) => ({ ...test, adjusted: adjusted[tested.indexOf(test)] ?? null }));
}
