import type { Film } from '../../game/film.ts';
import { FAMILIES } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { SITUATIONS, situationCodes } from '../snap/situation.ts';
import { LOOK_PARTS, type LookPart, type LookReach } from './judgement-look-parts.ts';
import { sheetMark } from './judgement-sheet.ts';

/** Worth of what is typical against the offense's own charted snaps, in snaps; judgement: offenses differ widely. */
export const LOOK_PRIOR_SNAPS = 8;

/** Worth of the offense's looks over all snaps against those of one situation, in snaps; judgement. */
export const SITUATION_PRIOR_SNAPS = 12;

/** Pseudo-counts of every part's classes, in the order of the look parts; a part's sum is its concentration. */
export type LookAlphas = readonly Float64Array[];

/** What an offense shows before the snap and does on passes. */
export interface OffenseLooks {
  readonly all: LookAlphas;
  readonly situations: ReadonlyMap<string, LookAlphas>;
  /** Charted snaps of each class, nothing added. */
  readonly film: LookAlphas;
}

/**
 * The offense's looks over all snaps and by situation, as Dirichlet pseudo-counts: its charted snaps on top of what is
 * typical, a situation's on top of the whole. The back's job and the protectors come from their forecasts where there
 * are any. A column nobody charted leaves the typical shares, with the uncertainty of eight snaps.
 */
export function readLooks(chart: Film, forecast: ForecastChapter, cuts: SituationCuts): OffenseLooks {
  const situationOf = situationCodes(chart, cuts);
  const parts = LOOK_PARTS.map((part) => partAlphas(part, countClasses(part, { chart, cuts, situationOf }), forecast));
  return {
    all: parts.map(({ all }) => all),
    situations: new Map(
      SITUATIONS.map(({ id }, s) => [id, parts.map(({ bySituation }) => bySituation[s] as Float64Array)]),
    ),
    film: parts.map(({ film }) => film),
  };
}

/** Mean shares of Dirichlet pseudo-counts. */
export function meanShares(alphas: ArrayLike<number>): Float64Array {
  const values = Float64Array.from(alphas);
  const total = values.reduce((sum, value) => sum + value, 0);
  return values.map((value) => value / total);
}

/**
 * The sheet's marks of all families over the looks of one reach: each row's mark times how much more than typical they
 * do it, in lots. Linear in the shares, so that more of a look moves a family by its mark and nothing else.
 *
 * @param shares - shares of each part's classes
 * @returns one sum of marks per family of the vocabulary
 */
export function lookMarks(shares: LookAlphas, reach: LookReach): Float64Array {
  const marks = new Float64Array(FAMILIES.length);
  LOOK_PARTS.forEach((part, i) => {
    for (const row of part.rows.filter((entry) => entry.reach === reach)) {
      const lots = lotsOf(part, row, shares[i]?.[row.index] ?? 0);
      FAMILIES.forEach((family, f) => {
        marks[f] = (marks[f] ?? 0) + lots * sheetMark(row.row, family);
      });
    }
  });
  return marks;
}

/** How many lots more than typical a share is: 1 where the sheet's mark applies in full, minus where they do it less. */
export function lotsOf(part: LookPart, row: LookPart['rows'][number], share: number): number {
  return (share - (part.typical[row.index] ?? 0)) / row.lot;
}

interface CountInput {
  readonly chart: Film;
  readonly cuts: SituationCuts;
  readonly situationOf: Uint8Array;
}

/** Counts of a part's classes, over all snaps and by situation. */
interface ClassCounts {
  readonly all: Float64Array;
  readonly bySituation: readonly Float64Array[];
}

function partAlphas(part: LookPart, counts: ClassCounts, forecast: ForecastChapter) {
  const all = forecastAlphas(part, forecast, 'all') ?? plus(counts.all, part.typical, LOOK_PRIOR_SNAPS);
  const bySituation = SITUATIONS.map(({ id }, s) => {
    const own = counts.bySituation[s] as Float64Array;
    return forecastAlphas(part, forecast, id) ?? plus(own, meanShares(all), SITUATION_PRIOR_SNAPS);
  });
  return { all, bySituation, film: counts.all };
}

function countClasses(part: LookPart, { chart, cuts, situationOf }: CountInput): ClassCounts {
  const classes = part.typical.length;
  const all = new Float64Array(classes);
  const bySituation = SITUATIONS.map(() => new Float64Array(classes));
  part.codes(chart, cuts).forEach((code, index) => {
    if (code === NOT_KNOWN) return;
    all[code] = (all[code] ?? 0) + 1;
    const own = bySituation[situationOf[index] ?? NOT_KNOWN];
    if (own) own[code] = (own[code] ?? 0) + 1;
  });
  return { all, bySituation };
}

function plus(counts: Float64Array, shares: ArrayLike<number>, snaps: number): Float64Array {
  return Float64Array.from(shares, (share, i) => (counts[i] ?? 0) + snaps * share);
}

function forecastAlphas(part: LookPart, { forecasts }: ForecastChapter, situation: string): Float64Array | null {
  const entryOf = (id: string) => forecasts.find((entry) => entry.target === part.target && entry.situation === id);
  const found = entryOf(situation);
  if (part.target === undefined || !found || found.classes.length !== part.typical.length) return null;
  // A forecast without one snap of theirs is other offenses', or nobody's: it must not mark this one.
  if ((entryOf('all')?.ownSnaps ?? 0) === 0) return null;
  const alphas = Float64Array.from(found.classes, ({ alpha }) => alpha);
  return alphas.some((alpha) => alpha > 0) ? alphas : null;
}
