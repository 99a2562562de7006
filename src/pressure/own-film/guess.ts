import { quantile } from '../../stats/quantile.ts';
import { createRandom } from '../../stats/random.ts';
import { share } from '../../stats/share.ts';
import type { GuessRate } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** What a reader may know before he guesses, and the keys he looks under, finest first. */
const READERS = [
  { knows: 'nothing', keys: [] },
  { knows: 'the situation', keys: [(snap: OwnSnap) => snap.situation] },
  { knows: 'the path', keys: [(snap: OwnSnap) => snap.path] },
  {
    knows: 'the path and the situation',
    keys: [
      (snap: OwnSnap) => (snap.situation === undefined ? undefined : `${snap.path} ${snap.situation}`),
      (snap: OwnSnap) => snap.path,
    ],
  },
] as const satisfies readonly { knows: GuessRate['knows']; keys: readonly ((snap: OwnSnap) => string | undefined)[] }[];

/** A reader trusts a key seen this often and goes to the next coarser one otherwise. Judgement. */
const SEEN_ENOUGH = 3;

/** Resamples of the games for the interval. Judgement: its own error is then far below a percent. */
const RESAMPLES = 2000;

/**
 * How often a reader of our film, who has all games but the one he guesses in, names the coverage behind a pressure:
 * always the most frequent one under what he knows. Empty when nothing was charted.
 */
export function guessRates(snaps: readonly OwnSnap[], seed: number): GuessRate[] {
  const told = snaps.filter(({ pressure, path, coverage }) => pressure && path !== undefined && coverage !== undefined);
  const games = [...new Set(told.map(({ game }) => game))];
  if (games.length < 2) return [];
  return READERS.map(({ knows, keys }) => {
    const perGame = games.map((game) => guessesIn(game, told, keys));
    const right = perGame.reduce((sum, hits) => sum + hits.right, 0);
    return { knows, share: share(right, told.length), byGame: gameInterval(perGame, `${knows} ${seed}`) };
  });
}

interface GameHits {
  readonly right: number;
  readonly snaps: number;
}

function guessesIn(
  game: string,
  told: readonly OwnSnap[],
  keys: readonly ((snap: OwnSnap) => string | undefined)[],
): GameHits {
  const known = told.filter((snap) => snap.game !== game);
  const asked = told.filter((snap) => snap.game === game);
  const right = asked.filter((snap) => guess(snap, known, keys) === snap.coverage).length;
  return { right, snaps: asked.length };
}

function guess(
  snap: OwnSnap,
  known: readonly OwnSnap[],
  keys: readonly ((snap: OwnSnap) => string | undefined)[],
): string | undefined {
  for (const key of keys) {
    const value = key(snap);
    const like = value === undefined ? [] : known.filter((other) => key(other) === value);
    if (like.length >= SEEN_ENOUGH) return countWords(like, ({ coverage }) => coverage)[0]?.[0];
  }
  return countWords(known, ({ coverage }) => coverage)[0]?.[0];
}

/** Percentile bootstrap over games, 95%; null under four games. @see Efron and Tibshirani 1993, ch. 13 (from memory) */
function gameInterval(games: readonly GameHits[], seed: string): { low: number; high: number } | null {
  if (games.length < 4) return null;
  const random = createRandom(seed);
  const rates = Float64Array.from({ length: RESAMPLES }, () => {
    let [right, snaps] = [0, 0];
    for (let i = 0; i < games.length; i++) {
      const game = games[random.integer(games.length)];
      right += game?.right ?? 0;
      snaps += game?.snaps ?? 0;
    }
    return right / snaps;
  });
  return { low: quantile(rates, 0.025), high: quantile(rates, 0.975) };
}
