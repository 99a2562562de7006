import type { CallLibrary } from '../../ingest/call-library.ts';
import type { WeekSettings } from '../../ingest/week-settings.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import type { GuessRate, OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** What the remedy is worked out from. */
export interface RemedyInput {
  readonly snaps: readonly OwnSnap[];
  readonly pairings: OwnFilmChapter['pairings'];
  readonly guesses: readonly GuessRate[];
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter | null;
}

type Swap = OwnFilmChapter['remedy']['swaps'][number];

/** Paths with fewer snaps on our film are too rare to matter. Judgement. */
const RARE = 5;

/**
 * The fewest snaps this week on which a path is followed by its other coverage, so that no path stays above the cap on
 * our whole film; `reaches` is the share a reader of the film would then guess from the path, and `costPoints` what
 * the swaps cost by the scores (0 where scores or library are absent).
 */
export function remedyOf(input: RemedyInput): OwnFilmChapter['remedy'] {
  const cap = input.settings.menu.pairing_cap;
  const pressures = input.snaps.filter(({ pressure }) => pressure);
  const games = Math.max(1, new Set(pressures.map(({ game }) => game)).size);
  const ours = input.pairings.filter(
    ({ path, snaps }) => snaps >= RARE && pressures.some((snap) => snap.path === path),
  );
  const plans = ours.flatMap((pairing) =>
    planFor(pairing, Math.max(1, Math.round(pairing.snaps / games)), { ...input, cap }),
  );
  if (!input.library && plans.length > 0) return withoutLibrary(plans, cap, input.guesses);
  const swaps = plans.flatMap(({ swap }) => (swap ? [swap] : []));
  const stuck = plans.filter(({ swap }) => swap === null).map(({ path }) => path);
  const guessRate = input.guesses.find(({ knows }) => knows === 'the path')?.share.estimate ?? 0;
  const reaches = reachedRate(ours, swaps, games);
  const costPoints = plans.reduce((sum, { cost }) => sum + cost, 0);
  return { cap, guessRate, swaps, reaches, costPoints, words: wordsFor({ swaps, stuck, cap, reaches, costPoints }) };
}

/** Paths over the cap are named, but only a library says what else could follow them. */
function withoutLibrary(
  plans: readonly PathPlan[],
  cap: number,
  guesses: readonly GuessRate[],
): OwnFilmChapter['remedy'] {
  const guessRate = guesses.find(({ knows }) => knows === 'the path')?.share.estimate ?? 0;
  const paths = plans.map(({ path }) => path).join(', ');
  const words = `Followed by one coverage on more than ${Math.round(100 * cap)}% of their snaps: ${paths}. With defense.yaml the tool names what else to play behind them.`;
  return { cap, guessRate, swaps: [], reaches: guessRate, costPoints: 0, words };
}

interface PathPlan {
  readonly path: string;
  readonly swap: Swap | null;
  readonly cost: number;
}

function planFor(
  pairing: OwnFilmChapter['pairings'][number],
  coming: number,
  input: RemedyInput & { cap: number },
): PathPlan[] {
  const [most] = pairing.coverages;
  if (!most || most.share.count / pairing.snaps <= input.cap) return [];
  const other = input.library?.calls.find((call) => call.path === pairing.path && call.coverage !== most.coverage);
  if (!other) return [{ path: pairing.path, swap: null, cost: 0 }];
  const needed = Math.ceil(most.share.count + coming - input.cap * (pairing.snaps + coming));
  const snaps = Math.min(coming, Math.max(1, needed));
  const [situation] = countWords(
    input.snaps.filter(({ path }) => path === pairing.path),
    (snap) => snap.situation,
  );
  const swap = {
    situation: situation?.[0] ?? 'all',
    path: pairing.path,
    instead: most.coverage,
    coverage: other.coverage,
    snaps,
  };
  const usual = input.library?.calls.find((call) => call.path === pairing.path && call.coverage === most.coverage);
  const lost = pointsOf(input.scores, usual?.name) - pointsOf(input.scores, other.name);
  return [{ path: pairing.path, swap, cost: (lost / 10) * snaps }];
}

function pointsOf(scores: ScoreChapter | null, call: string | undefined): number {
  return scores?.calls.find((score) => score.call === call && score.situation === 'all')?.points.mean ?? 0;
}

function reachedRate(ours: OwnFilmChapter['pairings'], swaps: readonly Swap[], games: number): number {
  let [right, all] = [0, 0];
  for (const { path, snaps, coverages } of ours) {
    const coming = Math.max(1, Math.round(snaps / games));
    const swapped = swaps.find((swap) => swap.path === path)?.snaps ?? 0;
    right += (coverages[0]?.share.count ?? 0) + coming - swapped;
    all += snaps + coming;
  }
  return all === 0 ? 0 : right / all;
}

interface Told {
  readonly swaps: readonly Swap[];
  readonly stuck: readonly string[];
  readonly cap: number;
  readonly reaches: number;
  readonly costPoints: number;
}

function wordsFor({ swaps, stuck, cap, reaches, costPoints }: Told): string {
  const percent = (value: number) => `${Math.round(100 * value)}%`;
  const lone =
    stuck.length > 0
      ? ` ${stuck.join(', ')} ${stuck.length === 1 ? 'has' : 'have'} no second coverage in the library.`
      : '';
  if (swaps.length === 0)
    return `No path with another coverage to offer is followed by one coverage on more than ${percent(cap)} of its snaps.${lone}`;
  const total = swaps.reduce((sum, { snaps }) => sum + snaps, 0);
  const paths = swaps.map(({ path, coverage, snaps }) => `${path} with ${coverage} on ${snaps}`).join(', ');
  return `This week play ${paths} (${total} snaps): a reader who guesses from the path would then be right on ${percent(reaches)} of our film. By the scores it costs ${costPoints.toFixed(1)} points.${lone}`;
}
