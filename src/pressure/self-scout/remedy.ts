import type { CallLibrary } from '../../game/call-library.ts';
import { plainName } from '../../game/plain-name.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { largestRemainder } from '../../stats/apportion.ts';
import { type PathHabit, readableSnaps } from '../menu/habits.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import { type FilmPath, favorite, favoriteSnaps, filmPaths } from './film-path.ts';
import type { GuessRate, Remedy } from './result.ts';
import { type OwnSnap, pairedPressures } from './snaps.ts';
import { type SwapCell, swapCells } from './swap-cell.ts';
import { type SwapPlan, type SwapProblem, swapPlan } from './swap-plan.ts';

/** What the remedy is worked out from. */
export interface RemedyInput {
  readonly snaps: readonly OwnSnap[];
  readonly guesses: readonly GuessRate[];
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter | null;
  /** Paths carried this week, in small letters; null before the menu is known: then the whole library counts. */
  readonly carried?: ReadonlySet<string> | null;
}

/** Games looked ahead for the earliest one by which the cap can be met. Judgment: a season has no more left. */
const MOST_GAMES = 8;

/**
 * The fewest snaps on which a path is to be followed by its other coverage, by situation, so that one who guesses each
 * path's usual coverage is right on no more than the cap of the film an opponent has of us by a given number of games;
 * what that costs by the scores, and how many calls a game each path's usual coverage gives up for it. A defense that mostly
 * plays one coverage does not give it away by the path: nothing is to be mended where the path tells a reader no more
 * than a blind guess does, and never below the blind rate.
 */
export function remedyOf(input: RemedyInput): Remedy {
  const { pairing_cap, pairing_games: games, ban } = input.settings.menu;
  const verdict = guessVerdict(input.guesses, pairing_cap);
  const { cap } = verdict;
  const pressures = pairedPressures(input.snaps);
  const paths = filmPaths(pressures);
  const isCarried = ({ path }: FilmPath) => input.carried == null || input.carried.has(plainName(path));
  const readable = paths.filter(({ snaps }) => snaps >= readableSnaps(pairing_cap));
  const source = input.library && { library: input.library, scores: input.scores, ban };
  const cells = source ? readable.filter(isCarried).flatMap((path) => swapCells(path, source)) : [];
  const filmGames = Math.max(1, new Set(pressures.map(({ game }) => game)).size);
  const problem = { paths, cells, filmGames, cap };
  const { givesAway: mend } = verdict;
  const byGames = Array.from({ length: MOST_GAMES }, (_, i) => swapPlan(problem, i + 1));
  const plan = mend ? swapPlan(problem, games) : untouched(problem, games);
  const stuck = readable.filter(
    (path) => isCarried(path) && isOver(path, cap) && !cells.some((cell) => cell.path === path.path),
  );
  return {
    ...verdict,
    games,
    swaps: mend ? wholeSwaps(cells, plan) : [],
    reaches: plan.reaches,
    costPoints: plan.costPoints,
    coming: plan.coming,
    earliest: mend ? (byGames.find(({ needed, done }) => done >= needed - 1e-9)?.games ?? null) : 0,
    byGames: mend ? byGames.map(({ byCell: _, ...rest }) => rest) : [],
    tooRare: paths.filter((path) => !readable.includes(path)).map(({ path, snaps }) => ({ path, snaps })),
    oneCoverage: stuck.map(({ path }) => path),
    habits: paths.map((path) => habitOf(path, problem, plan)),
    library: input.library !== null,
    readable: readableSnaps(pairing_cap),
  };
}

/** What a reader's guesses say of our paths. */
interface GuessVerdict {
  readonly cap: number;
  readonly guessRate: number;
  readonly blindRate: number;
  readonly givesAway: boolean;
}

/**
 * Whether the path gives the coverage away: a reader who knows it is right more often than the cap allows, and more often
 * than one who guesses blind, by more than games differ by chance (where there are games enough to say).
 */
function guessVerdict(guesses: readonly GuessRate[], pairingCap: number): GuessVerdict {
  const [blind, path] = ['nothing', 'path'].map((knows) => guesses.find((guess) => guess.knows === knows));
  const [guessRate, blindRate] = [path?.share.estimate ?? 0, blind?.share.estimate ?? 0];
  const gains = path?.gain ? path.gain.low > 0 : guessRate > blindRate;
  const cap = Math.max(pairingCap, blindRate);
  return { cap, guessRate, blindRate, givesAway: guessRate > cap && gains };
}

function untouched(problem: SwapProblem, games: number): SwapPlan {
  return swapPlan({ ...problem, cap: 1 }, games);
}

function isOver(path: FilmPath, cap: number): boolean {
  return favoriteSnaps(path) > cap * path.snaps;
}

/** Whole snaps in place of expected ones, so that their sum is kept. */
function wholeSwaps(cells: readonly SwapCell[], { byCell, done }: SwapPlan): Remedy['swaps'] {
  if (byCell.length === 0) return [];
  const whole = largestRemainder(byCell, Math.round(done));
  return cells
    .flatMap(({ situation, path, instead, coverage, cost }, i) => {
      const snaps = whole[i] as number;
      return snaps === 0 ? [] : [{ situation, path, instead, coverage, snaps, costPoints: snaps * cost }];
    })
    .sort((a, b) => b.snaps - a.snaps);
}

/** What the plan's swaps ask of a path in each of the coming games. */
function habitOf(path: FilmPath, { cells }: SwapProblem, { byCell, games }: SwapPlan): PathHabit {
  const swapped = byCell.reduce((sum, times, i) => sum + (cells[i]?.path === path.path ? times : 0), 0);
  const changeUp = swapped === 0 ? null : { usual: favorite(path), calls: swapped / games };
  return { path: path.path, snaps: path.snaps, changeUp };
}
