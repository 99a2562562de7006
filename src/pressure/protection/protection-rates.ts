import type { Share } from '../../stats/share.ts';
import type { ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { ASSUMED_WORTH, baseWorth } from './base-worth.ts';
import type { AssumedPiece } from './protection-result.ts';
import { OUT_JOBS, type ProtectionTally } from './protection-tally.ts';

/** How an offense protects when it passes, as shares to plan with. */
export interface ProtectionRates {
  /** Five, six, seven, eight protectors; sums to 1. */
  readonly protectors: readonly number[];
  /** Half slide, full slide, man; sums to 1. */
  readonly turns: readonly number[];
  readonly toBack: number;
  readonly toField: number;
  readonly toStrength: number;
  /** Of backs who get out, or are not there, the share who release wide. */
  readonly wide: number;
}

/** Rates with what nobody charted on this opponent, and where it was taken from instead. */
export interface SourcedRates {
  readonly rates: ProtectionRates;
  readonly assumed: readonly AssumedPiece[];
}

/** What a week's rates are made from; a missing archive or forecast is null. */
export interface RateSources {
  readonly tally: ProtectionTally;
  readonly archive: ProtectionTally | null;
  /** The archive offense by offense; absent, other offenses weigh as much as an assumption. */
  readonly league?: readonly ProtectionTally[] | undefined;
  readonly forecast: ForecastChapter | null;
}

/**
 * Rates where nothing was charted; judgment. Turns away from the back are the commoner habit of those who turn (Kuchar,
 * Pressures to Attack Full-Slide Protection, 2015: some teams nearly always).
 */
export const ASSUMED_RATES: ProtectionRates = {
  protectors: [0.2, 0.6, 0.15, 0.05],
  turns: [0.6, 0.15, 0.25],
  toBack: 0.35,
  toField: 0.5,
  toStrength: 0.5,
  wide: 0.5,
};

/**
 * The rates to plan with: the forecast over all their passes where the column was charted, else other opponents' where
 * the archive has at least twenty, else an assumption.
 */
export function protectionRates({ tally, archive, league = [], forecast }: RateSources): SourcedRates {
  const base = averageRates(archive);
  const worths: PieceWorths = {
    turns: turnsWorth(tally, league, base.turns),
    wide: wideWorth(tally, league, base.wide),
    out: outWorth(tally, league, base.protectors[0] as number),
  };
  const rates: ProtectionRates = {
    protectors: protectorRates(tally, { base, out: worths.out }, forecast),
    turns: shrunkAll(tally.turns, base.turns, worths.turns),
    toBack: slideRate(tally.toBack, base.toBack, planned(forecast, 'slide_to_back')),
    toField: slideRate(tally.toField, base.toField, planned(forecast, 'slide_to_field')),
    toStrength: slideRate(tally.toStrength, base.toStrength, planned(forecast, 'slide_to_strength')),
    wide: wideRate(tally, base.wide, worths.wide),
  };
  return { rates, assumed: assumedPieces(tally, archive) };
}

/** An average opponent's rates: the archive's where it has at least twenty snaps of a piece, else the assumption. */
export function averageRates(archive: ProtectionTally | null): ProtectionRates {
  if (!archive) return ASSUMED_RATES;
  const slide = (share: Share, assumed: number) => (share.trials >= ENOUGH ? share.count / share.trials : assumed);
  return {
    protectors: archive.charted.protectors >= ENOUGH ? estimates(archive.protectors) : ASSUMED_RATES.protectors,
    turns: archive.charted.slide >= ENOUGH ? estimates(archive.turns) : ASSUMED_RATES.turns,
    toBack: slide(archive.toBack, ASSUMED_RATES.toBack),
    toField: slide(archive.toField, ASSUMED_RATES.toField),
    toStrength: slide(archive.toStrength, ASSUMED_RATES.toStrength),
    wide: wideRate(archive, ASSUMED_RATES.wide),
  };
}

/** Snaps the base rate of each piece weighs against their own. */
interface PieceWorths {
  readonly turns: number;
  readonly wide: number;
  /** Of backs who get out, or are not there. */
  readonly out: number;
}

type CountsOf = (tally: ProtectionTally) => readonly number[];

function worthOf(own: ProtectionTally, league: readonly ProtectionTally[], counts: CountsOf) {
  const others = league.map((tally) => ({ counts: counts(tally), games: tally.games }));
  return (base: readonly number[]) => baseWorth({ own: counts(own), games: own.games, others, base });
}

function turnsWorth(own: ProtectionTally, league: readonly ProtectionTally[], base: readonly number[]): number {
  return worthOf(own, league, ({ turns }) => turns.map(({ share }) => share.count))(base);
}

function wideWorth(own: ProtectionTally, league: readonly ProtectionTally[], base: number): number {
  const counts: CountsOf = (tally) => [widesOf(tally), backsOut(tally) - widesOf(tally)];
  return worthOf(own, league, counts)([base, 1 - base]);
}

function outWorth(own: ProtectionTally, league: readonly ProtectionTally[], base: number): number {
  const counts: CountsOf = (tally) => [backsOut(tally), tally.charted.back - backsOut(tally)];
  return worthOf(own, league, counts)([base, 1 - base]);
}

/** Snaps of other opponents from which their rate is taken over the assumption. */
const ENOUGH = 20;

type Counted = readonly { readonly share: Share }[];

function estimates(counted: Counted): readonly number[] {
  return counted.map(({ share }) => share.count / share.trials);
}

function shrunkAll(counted: Counted, base: readonly number[], worth = ASSUMED_WORTH): readonly number[] {
  return counted.map(({ share }, i) => shrunk(share, base[i] as number, worth));
}

function shrunk({ count, trials }: Pick<Share, 'count' | 'trials'>, base: number, worth = ASSUMED_WORTH): number {
  return (count + worth * base) / (trials + worth);
}

function slideRate(charted: Share, base: number, forecast: readonly number[] | null): number {
  if (charted.trials === 0) return base;
  return forecast?.[0] ?? shrunk(charted, base);
}

/** The forecast's shares of a target over all snaps, or null where none of the opponent's snaps tell. */
function planned(forecast: ForecastChapter | null, target: Target): readonly number[] | null {
  const found = forecast?.forecasts.find((one) => one.target === target && one.situation === 'all');
  return found && found.ownSnaps > 0 ? found.classes.map(({ share }) => share) : null;
}

interface UsualProtectors {
  readonly base: ProtectionRates;
  readonly out: number;
}

function protectorRates(
  tally: ProtectionTally,
  { base, out }: UsualProtectors,
  forecast: ForecastChapter | null,
): readonly number[] {
  if (tally.charted.protectors > 0) {
    return withEights(planned(forecast, 'protectors'), tally, base) ?? shrunkAll(tally.protectors, base.protectors);
  }
  if (tally.charted.back === 0) return base.protectors;
  // Nobody counted protectors, but a back who gets out, or is not there, leaves five.
  const [usual = 0, ...more] = base.protectors;
  const five = shrunk({ count: backsOut(tally), trials: tally.charted.back }, usual, out);
  return [five, ...more.map((share) => ((1 - five) * share) / (1 - usual))];
}

/** The forecast speaks of five, six, and seven or more; eights are separated by their own count. */
function withEights(planned: readonly number[] | null, { protectors }: ProtectionTally, base: ProtectionRates) {
  if (!planned) return null;
  const [five = 0, six = 0, more = 0] = planned;
  const countOf = (men: number) => protectors.find(({ count }) => count === men)?.share.count ?? 0;
  const [, , usualSeven = 0, usualEight = 0] = base.protectors;
  const usual = usualEight === 0 ? 0 : usualEight / (usualSeven + usualEight);
  const eight = more * shrunk({ count: countOf(8), trials: countOf(7) + countOf(8) }, usual);
  return [five, six, more - eight, eight];
}

/** Passes on which the back got out or was not there. */
function backsOut({ backJobs }: ProtectionTally): number {
  return backJobs.filter(({ job }) => OUT_JOBS.includes(job)).reduce((sum, { share }) => sum + share.count, 0);
}

function wideRate(tally: ProtectionTally, base: number, worth = ASSUMED_WORTH): number {
  return shrunk({ count: widesOf(tally), trials: backsOut(tally) }, base, worth);
}

/** Passes on which the back released wide. */
function widesOf({ backJobs }: ProtectionTally): number {
  return backJobs.find(({ job }) => job === 'releases_wide')?.share.count ?? 0;
}

function assumedPieces(tally: ProtectionTally, archive: ProtectionTally | null): AssumedPiece[] {
  const pieces = [
    { piece: 'protectors', own: tally.charted.protectors, others: archive?.charted.protectors },
    { piece: 'slide', own: tally.charted.slide, others: archive?.charted.slide },
    { piece: 'slide_to_back', own: tally.toBack.trials, others: archive?.toBack.trials },
    { piece: 'back_job', own: tally.charted.back, others: archive?.charted.back },
  ] as const;
  return pieces
    .filter(({ own }) => own === 0)
    .map(({ piece, others = 0 }) => ({ piece, from: others >= ENOUGH ? 'other_opponents' : 'assumed' }));
}
