import { logDirichletMultinomial } from '../../stats/dirichlet-multinomial.ts';
import type { ChainFit } from './chain-fit.ts';
import { ALL_SNAPS_BELIEF, averageWorth, type LeagueWorth } from './league-worth.ts';
import { WORTHS, weighed } from './worth-grid.ts';

/** An offense's film over all its snaps, and what other offenses do on them. */
export interface RootEvidence {
  /** Own snaps of each class. */
  readonly counts: Float64Array;
  /** Independent snaps they are worth. */
  readonly worth: number;
  /** The archive's shares on the offense's own cells. */
  readonly league: Float64Array;
  readonly archive: Pick<LeagueWorth, 'offenses' | 'snaps'> & Partial<LeagueWorth>;
  /** Most snaps an archive is worth for intervals. */
  readonly most: number;
}

/** Prior count of each class over all snaps of a film (Jeffreys). */
export const ROOT_PRIOR = 0.5;

/**
 * Writes what an offense does over all its snaps: its own film's shares and the archive's, the own film's with the
 * weight that the film itself and the archive's differences teach: W film + (1 - W) archive, where W is the mean of
 * n / (n + worth) over the chances of each worth. What the shares are worth follows from the spread of the mixture.
 */
export function settleRoot(fit: ChainFit, evidence: RootEvidence): void {
  const { counts, league } = evidence;
  const snaps = counts.reduce((sum, count) => sum + count, 0);
  const film = counts.map((count) => (count + ROOT_PRIOR) / (snaps + ROOT_PRIOR * counts.length));
  const learned = filmWeight(evidence);
  const { weight } = learned;
  for (let k = 0; k < fit.classes; k++) {
    fit.shares[k] = weight * (film[k] as number) + (1 - weight) * (league[k] as number);
  }
  fit.ownWeight[0] = weight;
  fit.concentration[0] = mixtureWorth({ ...evidence, ...learned, film });
}

/** How much a film counts beside other offenses, for each worth of the grid and on the whole. */
export interface FilmWeight {
  /** Snaps the archive's average is worth, and the film's weight then. */
  readonly worths: Float64Array;
  readonly weights: Float64Array;
  /** Chance of each worth after the film. */
  readonly chances: Float64Array;
  /** Mean weight of the film, 0 to 1. */
  readonly weight: number;
}

/** Learns from an offense's counts, and from what is believed of the archive, how much its own film counts. */
export function filmWeight({ counts, worth: own, league, archive }: Omit<RootEvidence, 'most'>): FilmWeight {
  const snaps = counts.reduce((sum, count) => sum + count, 0);
  const worths = WORTHS.map((worth) => averageWorth(worth, archive));
  const seen = counts.map((count) => (snaps === 0 ? 0 : (count * own) / snaps));
  const evidence = worths.map((worth) => logDirichletMultinomial({ counts: seen, shares: league, worth }));
  const chances = weighed(archive.chances ?? ALL_SNAPS_BELIEF, evidence);
  const weights = worths.map((worth) => own / (own + worth));
  const weight = weights.reduce((sum, one, i) => sum + one * (chances[i] as number), 0);
  return { worths, weights, chances, weight };
}

interface Mixture extends RootEvidence, FilmWeight {
  readonly film: Float64Array;
}

/** The concentration of the Dirichlet with the variance of the mixture, added up over the classes. */
function mixtureWorth({ film, league, worth, most, worths, weights, chances, weight }: Mixture): number {
  let [single, variance] = [0, 0];
  for (let k = 0; k < film.length; k++) {
    const [own, other] = [film[k] as number, league[k] as number];
    const mean = weight * own + (1 - weight) * other;
    single += mean * (1 - mean);
    for (let i = 0; i < worths.length; i++) {
      const at = (weights[i] as number) * own + (1 - (weights[i] as number)) * other;
      const sure = worth + Math.min(worths[i] as number, most) + 1;
      variance += (chances[i] as number) * ((at * (1 - at)) / sure + (at - mean) ** 2);
    }
  }
  return Math.max(ROOT_PRIOR * film.length, single / variance - 1);
}
