import type { Level } from '../../game/call-library.ts';
import type { Answer, Family } from '../../game/vocabulary.ts';
import type { OutcomeKind } from '../snap/outcome.ts';
import { openAnswerOf, openFamilyOf, proxyQuality } from './open-data-proxy.ts';
import { openDataSize } from './open-data-size.ts';
import {
  OPEN_BASE_SHARES,
  OPEN_FAMILIES,
  OPEN_RUN_SHARES,
  OPEN_TABLE,
  type OpenAnswer,
  type OpenFamily,
} from './open-data-table.ts';
import { familyTrust, pooledDifference, type TrustedFigure, trustedDifference } from './open-data-trust.ts';

/** To be printed with any figure made from the open-data table. */
export const OPEN_DATA_ATTRIBUTION =
  'Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse (CC BY-SA 4.0). Participation: NFL NextGenStats ' +
  'via nflverse (CC BY-SA 4.0). Columns selected, renamed and joined; families, answers and outcomes derived.';

/** The licence of the open-data table's figures. */
export const OPEN_DATA_LICENCE = 'CC BY-SA 4.0';

/** What open data says of a family against an answer. */
export interface OpenEvidence {
  /** Shares of the outcome kinds, summing to 1. */
  readonly shares: Float64Array;
  /** Worth in our own snaps. */
  readonly size: number;
}

/**
 * Outcome shares of a family against an answer in open play data, and how many of our own snaps they are worth; null
 * where open data has nothing to say: every run, and the spy.
 *
 * The table's cells are not used as they stand. They were not matched for the situation (half the zeros were sent on
 * short fields, which hides their explosives), and a family's margin is noise where families do not differ by more than
 * chance. So a cell is the pooled pressure's shares for the answer times the family's matched difference, trusted
 * figure by figure; screens alone keep their cell.
 */
export function openEvidence(family: Family, answer: Answer, level: Level): OpenEvidence | null {
  const [proxy, proxyAnswer] = [openFamilyOf(family), openAnswerOf(answer)];
  if (proxy === null || proxyAnswer === null) return null;
  const quality = proxyQuality(family, answer);
  const size = openDataSize({ family: proxy, answer: proxyAnswer, quality, level });
  return { shares: sharesOf(proxy, proxyAnswer), size };
}

/**
 * Outcome shares against a plain four-man rush when the offense answers so; for runs those against six and seven in
 * the box, whoever rushed.
 */
export function baseShares(answer: Answer): Float64Array {
  const proxy = openAnswerOf(answer);
  return normalized(proxy === null ? OPEN_RUN_SHARES : OPEN_TABLE.base[proxy].shares);
}

/** Screens keep their own cell, the one answer where the shell matters; the rest is family margin times answer margin. */
function sharesOf(family: OpenFamily, answer: OpenAnswer): Float64Array {
  if (family === 'base') return normalized(OPEN_TABLE.base[answer].shares);
  if (answer === 'screen') return trustedCell(family, answer);
  const ratios = familyRatios(family);
  const pressure = normalized(pooledShares(answer).map((share, kind) => share * (ratios[kind] ?? 1)));
  return answer === 'play_action' ? nearerToBase(pressure, answer) : pressure;
}

/** A cell's shares pulled to the pooled pressure's, kind by kind; what is left over is the stop. */
function trustedCell(family: OpenFamily, answer: OpenAnswer): Float64Array {
  const own = normalized(OPEN_TABLE[family][answer].shares);
  const pooled = pooledShares(answer);
  const kept = (kind: number, figure: TrustedFigure) => {
    const trust = familyTrust(family, figure);
    return trust * (own[kind] ?? 0) + (1 - trust) * (pooled[kind] ?? 0);
  };
  return withStop({
    loss: kept(0, 'loss'),
    gain: kept(2, 'success'),
    explosive: kept(3, 'explosive'),
    takeaway: kept(4, 'takeaway'),
  });
}

/** How a family's outcome shares compare with the pooled pressure's in the same situations, kind by kind. */
function familyRatios(family: OpenFamily): Float64Array {
  const own = marginOf((figure) => trustedDifference(family, figure));
  const pooled = marginOf(pooledDifference);
  return own.map((share, kind) => share / (pooled[kind] ?? 1));
}

function marginOf(difference: (figure: TrustedFigure) => number): Float64Array {
  const [loss, , gain, explosive, takeaway] = OPEN_BASE_SHARES;
  const success = gain + explosive + difference('success');
  const explosives = explosive + difference('explosive');
  return withStop({
    loss: loss + difference('loss'),
    gain: success - explosives,
    explosive: explosives,
    takeaway: takeaway + difference('takeaway'),
  });
}

function withStop({ loss, gain, explosive, takeaway }: Readonly<Record<Exclude<OutcomeKind, 'stop'>, number>>) {
  return Float64Array.of(loss, 1 - loss - gain - explosive - takeaway, gain, explosive, takeaway);
}

/**
 * The share of a play-action difference that is kept. A linebacker drawn by the fake is counted as a rusher by tracking
 * (-0.17 points against five rushers, matched); people counting rushers find a third of it (-0.055).
 */
const PLAY_ACTION_KEPT = 0.33;

function nearerToBase(shares: Float64Array, answer: OpenAnswer): Float64Array {
  const base = normalized(OPEN_TABLE.base[answer].shares);
  return shares.map((share, kind) => PLAY_ACTION_KEPT * share + (1 - PLAY_ACTION_KEPT) * (base[kind] ?? 0));
}

function pooledShares(answer: OpenAnswer): Float64Array {
  const sums = new Float64Array(5);
  for (const family of OPEN_FAMILIES) {
    if (family === 'base') continue;
    const { snaps, shares } = OPEN_TABLE[family][answer];
    shares.forEach((share, kind) => {
      sums[kind] = (sums[kind] ?? 0) + snaps * share;
    });
  }
  return normalized(sums);
}

function normalized(values: ArrayLike<number>): Float64Array {
  const shares = Float64Array.from(values);
  const total = shares.reduce((sum, value) => sum + value, 0);
  return shares.map((value) => value / total);
}
