import type { LineForecast } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { betaCdf } from '../../stats/beta.ts';
import { capital } from '../words/label.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import { atMostLean, type Sure, sureOf } from '../words/sure-words.ts';

/** A key a player sees before the snap, with what it means on film. */
export interface RawKey {
  readonly see: string;
  readonly means: string;
  readonly sure: Sure;
}

/** Between these shares of runs a key is even and means nothing; judgment. */
const [EVEN_FROM, EVEN_TO] = [0.42, 0.58];

/** The raw keys: how they line up, run or pass as counted on film, whether or not other offenses do the same. */
export function rawKeys(plan: WeekPlan): readonly RawKey[] {
  return (plan.forecast.line ?? [])
    .filter(({ situation }) => situation === ALL_SITUATIONS)
    .flatMap(rawKey)
    .sort((a, b) => b.weight - a.weight)
    .map(({ weight: _, ...key }) => key);
}

function rawKey({ label, forecasts }: LineForecast): readonly (RawKey & { readonly weight: number })[] {
  const film = forecasts
    .find(({ target }) => target === 'run_or_pass')
    ?.classes.find(({ name }) => name === 'run')?.film;
  if (film === undefined || film.estimate === null || film.trials < LEAST) return [];
  const { count, trials, estimate } = film;
  const see = capital(label);
  const weight = Math.abs(estimate - 0.5);
  if (estimate >= EVEN_FROM && estimate <= EVEN_TO)
    return [{ see, means: `even, run ${shareWords(film)}`, sure: 'no difference', weight }];
  const means = estimate > 0.5 ? `run ${shareWords(film)}` : `pass ${shareWords({ count: trials - count, trials })}`;
  return [{ see, means, sure: keySure(film), weight }];
}

/** Fewest snaps of a key worth a player's memory; judgment. */
const LEAST = 8;

/**
 * How sure it is that the more frequent of run and pass is the more frequent in the long run.
 *
 * @see Jeffreys prior: Brown, Cai and DasGupta 2001, Statistical Science 16:101
 */
export function keySure({ count, trials }: { readonly count: number; readonly trials: number }): Sure {
  const below = betaCdf(0.5, count + 0.5, trials - count + 0.5);
  const sure = sureOf(Math.max(below, 1 - below));
  return isThin({ trials }) ? atMostLean(sure) : sure;
}
