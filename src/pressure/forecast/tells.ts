import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { share } from '../../stats/share.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { holds, members, type SnapSet, setSize, sharedCount, snapSet } from '../snap/snap-set.ts';
import { type FittedTarget, type ForecastFilm, fitTarget } from './forecast-film.ts';
import type { Target, Tell, TellSearch } from './forecast-result.ts';
import { leftOutShares } from './left-out-shares.ts';
import { TARGET_DEFINITIONS, type TargetDefinition } from './target.ts';
import { type TellLiteral, tellCells, tellLiterals } from './tell-cell.ts';
import { type CountedTest, correctTells, isSimple, type LookedTests } from './tell-correction.ts';
import { type FeatureName, type SeenValue, tellFeatures } from './tell-feature.ts';
import { errorPart, excessKept } from './tell-kept.ts';
import { tellTotals } from './tell-rest.ts';
import { type TellGround, type TellTest, testCell } from './tell-test.ts';

/** Classes of a target that another one tells: run or pass, screens, and how fast the ball is out. */
const SEARCHED_ELSEWHERE: Readonly<Partial<Record<Target, readonly string[]>>> = {
  answer: ['run', 'screen', 'quick', 'dropback'],
};

/** Features that are the target itself, so that no tell can be made of them. */
const SAME_AS_TARGET: Readonly<Partial<Record<Target, FeatureName>>> = { motion: 'motion' };

/**
 * Expected share of false tells among those shown. In 26 searches of 13 invented offenses without a habit, with an
 * archive and without, one was shown (screens on 11 of 12, so far), and on open play data (2022) none in 207 samples with
 * outcomes drawn from what any offense does, before cells were set against the rest.
 */
export const DISCOVERY_RATE = 0.1;

/** Most tells shown; more could not be taught in a week (judgment). */
const MOST_TELLS = 12;

/**
 * Looks for habits beyond the forecast: every conjunction of up to three things seen before the snap, tested against
 * what the line-of-scrimmage chain expected on those snaps from the other games, brought to the level of the snaps outside
 * of the conjunction, and corrected over everything looked at.
 *
 * @param film - the film the forecast was made from
 * @param chart - the opponent's chart of that film
 */
export function findTells(film: ForecastFilm, chart: Film, cuts: SituationCuts): TellSearch {
  const literals = tellLiterals(tellFeatures(chart, cuts), film.ownSize);
  const searches = TARGET_DEFINITIONS.map((definition) => searchTarget(film, definition, literals));
  const looked = searches.flatMap((search) => search.looked);
  const found = searches.flatMap((search) => search.found);
  const adjusted = correctTells(found, looked, DISCOVERY_RATE);
  const passed = found
    .map((candidate, i) => ({ ...candidate, adjusted: adjusted[i] as number }))
    .filter((candidate) => candidate.adjusted <= DISCOVERY_RATE)
    .sort((a, b) => a.test.p - b.test.p);
  const shown = apart(passed).slice(0, MOST_TELLS);
  const tests = looked.reduce((sum, { leastLogs }) => sum + leastLogs.length, 0);
  return { looked: tests, discoveryRate: DISCOVERY_RATE, tells: shown.map((tell) => describe(film, tell)) };
}

interface Candidate extends CountedTest {
  readonly target: FittedTarget;
  readonly seen: readonly SeenValue[];
  readonly snaps: SnapSet;
  readonly test: TellTest;
  readonly ground: TellGround;
}

type Passed = Candidate & { readonly adjusted: number };

/** All tests of a target that were looked at, and those of them that are anything at all. */
function searchTarget(film: ForecastFilm, definition: TargetDefinition, literals: readonly TellLiteral[]) {
  const target = fitTarget(film, definition, 'line');
  const games = target.own.games[0] as number;
  if (games < 2 && target.archive === null) return NOTHING_LOOKED_AT;
  const ground = tellGround(film, target);
  const charted = snapSet(film.ownSize, (i) => ground.codes[i] !== NOT_KNOWN);
  const usable = literals.filter(({ feature }) => feature !== SAME_AS_TARGET[definition.target]);
  const [question, part] = [definition.target, errorPart(definition.target)];
  const kinds = [true, false].map((simple) => ({ question, part, simple, leastLogs: [] as number[] }));
  const found: Candidate[] = [];
  for (const { seen, snaps } of tellCells(usable, charted)) {
    const simple = isSimple(seen.length);
    const { leastLogs } = kinds[simple ? 0 : 1] as LookedTests;
    for (const test of testCell(ground, snaps)) {
      leastLogs.push(test.leastLog);
      if (test.p < 1)
        found.push({ target, seen, snaps, test, ground, question, simple, leastLog: test.leastLog, p: test.p });
    }
  }
  return { looked: kinds, found };
}

const NOTHING_LOOKED_AT: { readonly looked: LookedTests[]; readonly found: Candidate[] } = { looked: [], found: [] };

function searchedClasses({ target, classes }: TargetDefinition): readonly number[] {
  return [...classes.keys()].filter((k) => !SEARCHED_ELSEWHERE[target]?.includes(classes[k] as string));
}

function tellGround(film: ForecastFilm, target: FittedTarget): TellGround {
  const gameOf = new Int32Array(film.ownSize);
  film.ownGames.forEach(({ rows }, game) => {
    for (const row of rows) gameOf[row] = game;
  });
  const { codes } = target.target;
  const question = target.definition.target;
  const clusters = { gameOf, games: film.ownGames.length, question };
  const expected = leftOutShares(film, target);
  const asked = searchedClasses(target.definition);
  return { codes, expected, asked, clusters, totals: tellTotals(codes.subarray(0, film.ownSize), expected) };
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

function describe(film: ForecastFilm, { target, seen, snaps, test, adjusted, ground }: Passed): Tell {
  const { k, count, trials, expected, p } = test;
  const games = gamesOf(film, ground, { snaps, test });
  const follows = target.definition.classes[k] ?? '';
  const shown = games.filter((game) => game.count > game.due).length;
  const kept = excessKept(target.definition.target, target.archive === null ? 'alone' : 'archive');
  const standing = kept > 0 && 2 * shown > film.ownGames.length ? 'plan_with' : 'so_far';
  return {
    id: [target.definition.target, ...seen.map(({ feature, value }) => `${feature} ${value}`), follows].join(': '),
    seen,
    target: target.definition.target,
    follows,
    film: share(count, trials),
    expected,
    standing,
    planWith: standing === 'so_far' ? expected : expected + kept * (count / trials - expected),
    p,
    adjusted,
    games: games.map(({ due: _, ...game }) => game),
    gamesShown: shown,
    oneGameOnly: shown === 1,
    snaps: members(snaps),
  };
}

/** The tell game by game, what was due in each in the proportion of the snaps' own expectations. */
function gamesOf({ ownGames }: ForecastFilm, { codes, expected }: TellGround, { snaps, test }: Seen) {
  const inGames = ownGames.map(({ game, rows }) => ({ game, rows: rows.filter((row) => holds(snaps, row)) }));
  const shareAt = (row: number) => expected.shares[row * expected.classes + test.k] as number;
  const sumOf = (rows: readonly number[]) => rows.reduce((sum, row) => sum + shareAt(row), 0);
  const whole = inGames.reduce((sum, { rows }) => sum + sumOf(rows), 0);
  return inGames
    .filter(({ rows }) => rows.length > 0)
    .map(({ game, rows }) => ({
      game,
      count: rows.filter((row) => codes[row] === test.k).length,
      trials: rows.length,
      due: (test.trials * test.expected * sumOf(rows)) / whole,
    }));
}

type Seen = Pick<Candidate, 'snaps' | 'test'>;
