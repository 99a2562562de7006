import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { benjaminiHochberg } from '../../stats/adjust.ts';
import { share } from '../../stats/share.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { holds, members, type SnapSet, setSize, sharedCount, snapSet } from '../snap/snap-set.ts';
import { type FittedTarget, type ForecastFilm, fitTarget } from './forecast-film.ts';
import type { Target, Tell, TellSearch } from './forecast-result.ts';
import { leftOutShares } from './left-out-shares.ts';
import { TARGET_DEFINITIONS } from './target.ts';
import { type TellLiteral, tellCells, tellLiterals } from './tell-cell.ts';
import { tellFeatures } from './tell-feature.ts';
import { type TellGround, type TellTest, testCell } from './tell-test.ts';

/** Targets searched for tells: what a defense can act on at the line. */
export const TELL_TARGETS: readonly Target[] = ['run_or_pass', 'screen', 'quick_release', 'slide_to_back', 'back_job'];

/**
 * Expected share of false tells among those shown. Of 207 samples of four games of open play data (2022, archive of
 * other offenses) none showed a tell where run or pass, screen and quick release were drawn again from what an additive
 * logistic model says any offense does; nor where run or pass was drawn from the archive's chain, with its shares held or moving
 * from game to game.
 */
export const DISCOVERY_RATE = 0.1;

/**
 * Share of a tell's excess over the forecast to plan with. On open play data (nflverse and FTN, 2022 and 2023) tells
 * that passed the correction kept .37 of their excess in the next game, and .43 where only the strongest was taken.
 */
export const EXCESS_KEPT = 1 / 3;

/** Most tells shown; more could not be taught in a week (judgement). */
const MOST_TELLS = 12;

/**
 * Looks for habits beyond the forecast: every conjunction of up to three things seen before the snap, tested against
 * what the line-of-scrimmage chain expected on those snaps from the other games, corrected over everything looked at.
 *
 * @param film - the film the forecast was made from
 * @param chart - the opponent's chart of that film
 */
export function findTells(film: ForecastFilm, chart: Film, cuts: SituationCuts): TellSearch {
  const literals = tellLiterals(tellFeatures(chart, cuts), film.ownSize);
  const searches = TELL_TARGETS.map((target) => searchTarget(film, target, literals));
  const looked = searches.reduce((sum, search) => sum + search.looked, 0);
  const found = searches.flatMap((search) => search.found);
  // Tests with a p of 1 come last whatever their number, so only how many they are counts.
  const adjusted = benjaminiHochberg(
    found.map(({ test }) => test.p),
    looked,
  );
  const passed = found
    .map((candidate, i) => ({ ...candidate, adjusted: adjusted[i] as number }))
    .filter((candidate) => candidate.adjusted <= DISCOVERY_RATE)
    .sort((a, b) => a.test.p - b.test.p);
  const shown = apart(passed).slice(0, MOST_TELLS);
  return { looked, discoveryRate: DISCOVERY_RATE, tells: shown.map((tell) => describe(film, tell)) };
}

interface Candidate {
  readonly target: FittedTarget;
  readonly words: readonly string[];
  readonly snaps: SnapSet;
  readonly test: TellTest;
  readonly ground: TellGround;
}

type Passed = Candidate & { readonly adjusted: number };

/** How many tests of a target were looked at, and those of them that are anything at all. */
function searchTarget(film: ForecastFilm, name: Target, literals: readonly TellLiteral[]) {
  const nothing = { looked: 0, found: [] };
  const definition = TARGET_DEFINITIONS.find(({ target }) => target === name);
  if (!definition) return nothing;
  const target = fitTarget(film, definition, 'line');
  const games = target.own.games[0] as number;
  if (games < 2 && target.archive === null) return nothing;
  const ground = { codes: target.target.codes, expected: leftOutShares(film, target) };
  const charted = snapSet(film.ownSize, (i) => ground.codes[i] !== NOT_KNOWN);
  const found: Candidate[] = [];
  let looked = 0;
  for (const { words, snaps } of tellCells(literals, charted)) {
    for (const test of testCell(ground, snaps)) {
      looked++;
      if (test.p < 1) found.push({ target, words, snaps, test, ground });
    }
  }
  return { looked, found };
}

/** The tells in order of p without those that share more than half of their snaps with one before them. */
function apart(passed: readonly Passed[]): Passed[] {
  const kept: Passed[] = [];
  for (const tell of passed) {
    const repeats = kept.some((other) => {
      const smaller = Math.min(setSize(tell.snaps), setSize(other.snaps));
      return other.target === tell.target && sharedCount(tell.snaps, other.snaps) > smaller / 2;
    });
    if (!repeats) kept.push(tell);
  }
  return kept;
}

function describe(film: ForecastFilm, { target, words, snaps, test, adjusted, ground }: Passed): Tell {
  const { k, count, trials, expected, p } = test;
  const games = gamesOf(film, ground, snaps)(k);
  const follows = target.definition.classes[k] ?? '';
  const description = words.join(', ');
  return {
    id: `${target.definition.target}: ${description}: ${follows}`,
    description,
    target: target.definition.target,
    follows,
    film: share(count, trials),
    expected,
    planWith: expected + EXCESS_KEPT * (count / trials - expected),
    p,
    adjusted,
    games: games.map(({ due: _, ...game }) => game),
    oneGameOnly: games.filter((game) => game.count > game.due).length === 1,
    snaps: members(snaps),
  };
}

function gamesOf(film: ForecastFilm, { codes, expected }: TellGround, snaps: SnapSet) {
  return (k: number) =>
    film.ownGames.flatMap(({ game, rows }) => {
      const inGame = rows.filter((row) => holds(snaps, row));
      if (inGame.length === 0) return [];
      const due = inGame.reduce((sum, row) => sum + (expected.shares[row * expected.classes + k] as number), 0);
      const count = inGame.filter((row) => codes[row] === k).length;
      return [{ game, count, trials: inGame.length, due }];
    });
}
