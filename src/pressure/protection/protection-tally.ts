import { countBy } from '../../game/by-word.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { BACK_ACTIONS } from '../../game/vocabulary.ts';
import { type Share, share } from '../../stats/share.ts';
import { type SlideReference, slideCodes } from '../snap/field-side.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { type OffenseGame, offenseGames } from '../snap/offense-game.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';

/** One of the back's jobs. */
export type BackJob = (typeof BACK_ACTIONS)[number];

/** Jobs that take the back out of the protection, or mean that there is none. */
export const OUT_JOBS: readonly BackJob[] = ['releases_wide', 'releases_inside', 'none'];

/** How a line turned: half slide, full slide, or man. */
export const TURNS = ['half', 'full', 'man'] as const;
/** One word of {@link TURNS}. */
export type Turn = (typeof TURNS)[number];

/** Numbers of protectors separated; the last is eight or more, the first five or fewer. */
export const PROTECTOR_COUNTS = [5, 6, 7, 8] as const;

/** What was charted of a chart's protections, on its passes. */
export interface ProtectionTally {
  readonly games: number;
  readonly passes: number;
  /** In the order of {@link PROTECTOR_COUNTS}. */
  readonly protectors: readonly { readonly count: number; readonly share: Share }[];
  /** In the order of {@link TURNS}. */
  readonly turns: readonly { readonly turn: Turn; readonly share: Share }[];
  /** In the order of the vocabulary's back actions. */
  readonly backJobs: readonly { readonly job: BackJob; readonly share: Share }[];
  /** Passes on which each was charted. */
  readonly charted: { readonly protectors: number; readonly slide: number; readonly back: number };
  readonly toBack: Share;
  readonly toField: Share;
  readonly toStrength: Share;
}

/** Counts a chart's protections on its passes, each over the passes on which it was charted. */
export function tallyProtection(chart: Film): ProtectionTally {
  return protectionTallier(chart)(offenseGames(chart));
}

/** The same for each offense of a chart. */
export function tallyByOffense(chart: Film): readonly ProtectionTally[] {
  const tally = protectionTallier(chart);
  const games = offenseGames(chart);
  const names = [...new Set(games.map(({ offense }) => offense))];
  return names.map((name) => tally(games.filter(({ offense }) => offense === name)));
}

function protectionTallier(chart: Film): (games: readonly OffenseGame[]) => ProtectionTally {
  const passed = runOrPassCodes(chart);
  const slides: SlideCodes = {
    back: slideCodes(chart, 'back'),
    field: slideCodes(chart, 'field'),
    strength: slideCodes(chart, 'strength'),
  };
  return (games) => {
    const passes = games.flatMap(({ rows }) => rows.filter((row) => passed[row] === 1));
    return { games: games.length, ...tallyPasses(chart, passes, slides) };
  };
}

type SlideCodes = Readonly<Record<SlideReference, Uint8Array>>;

function tallyPasses(chart: Film, passes: readonly number[], slides: SlideCodes): Omit<ProtectionTally, 'games'> {
  const protectors = chartedWords(passes, (i) => protectorsAt(chart, i));
  const turns = chartedWords(passes, (i) => turnAt(chart, i));
  const backJobs = chartedWords(passes, (i) => textAt(chart, 'back_action', i) as BackJob | undefined);
  return {
    passes: passes.length,
    protectors: PROTECTOR_COUNTS.map((count) => ({ count, share: shareOf(count, protectors) })),
    turns: TURNS.map((turn) => ({ turn, share: shareOf(turn, turns) })),
    backJobs: BACK_ACTIONS.map((job) => ({ job, share: shareOf(job, backJobs) })),
    charted: { protectors: protectors.length, slide: turns.length, back: backJobs.length },
    toBack: slideShare(passes, slides.back),
    toField: slideShare(passes, slides.field),
    toStrength: slideShare(passes, slides.strength),
  };
}

/** How often each word was charted, and how often any was. */
interface WordCounts<T> {
  readonly counts: ReadonlyMap<T, number>;
  readonly length: number;
}

function chartedWords<T>(passes: readonly number[], at: (index: number) => T | undefined): WordCounts<T> {
  const counts = countBy(passes, at);
  return { counts, length: [...counts.values()].reduce((sum, count) => sum + count, 0) };
}

function shareOf<T>(word: T, { counts, length }: WordCounts<T>): Share {
  return share(counts.get(word) ?? 0, length);
}

function protectorsAt(chart: Film, index: number): (typeof PROTECTOR_COUNTS)[number] | undefined {
  const count = numberAt(chart, 'protectors', index);
  if (count === undefined) return undefined;
  return PROTECTOR_COUNTS[Math.min(3, Math.max(0, count - 5))];
}

function turnAt(chart: Film, index: number): Turn | undefined {
  const slide = textAt(chart, 'slide', index);
  if (slide === undefined || slide === 'man') return slide;
  return slide.startsWith('full') ? 'full' : 'half';
}

function slideShare(passes: readonly number[], codes: Uint8Array): Share {
  let known = 0;
  let to = 0;
  for (const i of passes) {
    if (codes[i] === NOT_KNOWN) continue;
    known++;
    if (codes[i] === 0) to++;
  }
  return share(to, known);
}
