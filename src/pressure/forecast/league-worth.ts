import { logDirichletMultinomial } from '../../stats/dirichlet-multinomial.ts';
import { beliefOnGrid, WORTHS, weighed } from './worth-grid.ts';

/** One offense of the archive, counted for one target. */
export interface LeagueOffense {
  /** Snaps of class k in situation s at `s * classes + k`; the last row holds snaps of no known situation. */
  readonly counts: Float64Array;
  /** Games on which the target was charted. */
  readonly games: number;
}

/** What an archive says, before this opponent's film, of how much an average of other offenses is worth. */
export interface LeagueWorth {
  /** How many offenses with equal film the archive is as good as (Kish's effective number). */
  readonly offenses: number;
  /** Independent snaps its shares rest on. */
  readonly snaps: number;
  /** Chance of each worth of the grid. */
  readonly chances: Float64Array;
}

/**
 * Snaps an average offense is worth as evidence of another, before any film is seen: median 32, log-normal. Wide, since
 * offenses differ little in some leagues and very much in others. Judgment: the film soon outweighs it, and other
 * medians were not compared.
 */
export const ALL_SNAPS_BELIEF = beliefOnGrid({ median: 32, spread: 1.2 });

/** Chance that this opponent is none of the archive's kind: its offenses' differences say nothing of him. Judgment. */
const NONE_OF_THEIR_KIND = 0.25;

/**
 * Learns from an archive how much its offenses differ: each is left out in turn and set against what the others do on
 * its situations. A quarter of the chance stays with the belief held before any film was seen.
 *
 * @param offenses - of the archive, at least one
 */
export function leagueWorth(
  offenses: readonly LeagueOffense[],
  { classes, gameToGame }: { readonly classes: number; readonly gameToGame: number },
): LeagueWorth {
  const counted = offenses.map((offense) => countOffense(offense, classes, gameToGame));
  const whole = sumOf(counted.map(({ counts }) => counts));
  const independent = counted.reduce((sum, { snaps, share }) => sum + snaps * share, 0);
  const evidence = new Float64Array(WORTHS.length);
  for (const offense of counted) {
    const others = counted.filter((other) => other !== offense && other.snaps > 0);
    if (others.length === 0 || offense.snaps === 0) continue;
    const archive = { offenses: kishNumber(others), snaps: independent - offense.snaps * offense.share };
    const shares = expectedShares(offense.counts, whole, classes);
    const counts = offense.totals.map((count) => count * offense.share);
    WORTHS.forEach((worth, i) => {
      const chance = logDirichletMultinomial({ counts, shares, worth: averageWorth(worth, archive) });
      evidence[i] = (evidence[i] as number) + chance;
    });
  }
  const learned = weighed(ALL_SNAPS_BELIEF, evidence);
  const chances = ALL_SNAPS_BELIEF.map(
    (belief, i) => NONE_OF_THEIR_KIND * belief + (1 - NONE_OF_THEIR_KIND) * (learned[i] as number),
  );
  return { offenses: kishNumber(counted), snaps: independent, chances };
}

/**
 * Snaps the average of some offenses is worth where any one of them is worth `worth`: they differ among themselves as
 * they differ from this one, and their average is known from so many snaps.
 *
 * @example averageWorth(64, { offenses: 4, snaps: 512 }) // 46.5: 1 / ((1 + 1/4) / 64 + 1/512)
 */
export function averageWorth(worth: number, { offenses, snaps }: Pick<LeagueWorth, 'offenses' | 'snaps'>): number {
  return 1 / ((1 + 1 / offenses) / worth + 1 / Math.max(1, snaps));
}

interface CountedOffense {
  readonly counts: Float64Array;
  readonly totals: Float64Array;
  readonly snaps: number;
  /** Independent snaps for each snap: those of one game are alike (Kish's design effect for clusters). */
  readonly share: number;
}

function countOffense({ counts, games }: LeagueOffense, classes: number, gameToGame: number): CountedOffense {
  const totals = classTotals(counts, classes);
  const snaps = totals.reduce((sum, count) => sum + count, 0);
  const perGame = snaps / Math.max(1, games);
  return { counts, totals, snaps, share: 1 / (1 + Math.max(0, perGame - 1) / (gameToGame + 1)) };
}

function kishNumber(offenses: readonly CountedOffense[]): number {
  const snaps = offenses.reduce((sum, offense) => sum + offense.snaps, 0);
  const squares = offenses.reduce((sum, offense) => sum + offense.snaps ** 2, 0);
  return squares === 0 ? 1 : snaps ** 2 / squares;
}

/** Snaps that all of an archive's snaps are worth in one of its situations; judgment, its size hardly matters. */
const SITUATION_WORTH = 16;
/** Prior count of each class over all snaps (Jeffreys). */
const CLASS_PRIOR = 0.5;

/** Shares of an offense's snaps if in each situation it did what the others do there. */
function expectedShares(own: Float64Array, whole: Float64Array, classes: number): Float64Array {
  const others = whole.map((count, i) => Math.max(0, count - (own[i] as number)));
  const totals = classTotals(others, classes).map((count) => count + CLASS_PRIOR);
  const total = totals.reduce((sum, count) => sum + count, 0);
  const sums = new Float64Array(classes);
  for (let start = 0; start < own.length; start += classes) {
    const snaps = rowTotal(own, start, classes);
    const perSnap = snaps / (rowTotal(others, start, classes) + SITUATION_WORTH);
    for (let k = 0; k < classes; k++) {
      const theirs = (others[start + k] as number) + (SITUATION_WORTH * (totals[k] as number)) / total;
      sums[k] = (sums[k] as number) + perSnap * theirs;
    }
  }
  const snaps = sums.reduce((sum, count) => sum + count, 0);
  return sums.map((sum) => sum / snaps);
}

function classTotals(counts: Float64Array, classes: number): Float64Array {
  const totals = new Float64Array(classes);
  for (let i = 0; i < counts.length; i++) {
    totals[i % classes] = (totals[i % classes] as number) + (counts[i] as number);
  }
  return totals;
}

function rowTotal(counts: Float64Array, start: number, classes: number): number {
  let total = 0;
  for (let k = 0; k < classes; k++) total += counts[start + k] as number;
  return total;
}

function sumOf(lists: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(lists[0]?.length ?? 0);
  for (const list of lists) {
    for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] as number) + (list[i] as number);
  }
  return sum;
}
