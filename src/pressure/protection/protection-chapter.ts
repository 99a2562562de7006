import type { Call, CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import { checkLibrary } from '../soundness/soundness.ts';
import { matchProtection } from './protection.ts';
import { protectionMix } from './protection-mix.ts';
import { picturesFor } from './protection-pictures.ts';
import { averageRates, type ProtectionRates, protectionRates } from './protection-rates.ts';
import type { CallProtection, ProtectionChapter, RaceLine } from './protection-result.ts';
import { tallyByOffense, tallyProtection } from './protection-tally.ts';
import { createHomeCurves } from './race.ts';
import { raceLines } from './race-lines.ts';
import { type Release, releaseCurve, releases } from './release.ts';
import { type SituationRates, situationRates } from './situation-protection.ts';

/** What the chapter on protection is made from; the archive, the library and the forecast may be absent. */
export interface ProtectionInput {
  readonly chart: Film;
  readonly archive: Film | null;
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly forecast: ForecastChapter | null;
}

/**
 * How they protect, whom each of our calls frees against each picture, whether he is home before the ball is out, and
 * whether the calls are sound. Without a library the mix and the release curves alone.
 */
export function protectionChapter(input: ProtectionInput): ProtectionChapter {
  const { chart, archive, library, forecast } = input;
  const tally = tallyProtection(chart);
  const others = archive && tallyProtection(archive);
  const sourced = protectionRates({ tally, archive: others, league: archive ? tallyByOffense(archive) : [], forecast });
  const ball = releases(input);
  const situations = situationRates({ tally, forecast }, sourced.rates);
  const seen: SeenRates = { rates: sourced.rates, situations, average: averageRates(others) };
  return {
    mix: protectionMix(tally, sourced, situations),
    calls: library ? library.calls.flatMap((call) => shownPictures(call, library, sourced.rates)) : [],
    race: library ? races(library, seen, ball) : [],
    release: ball.map(releaseCurve),
    soundness: library ? checkLibrary(library) : [],
  };
}

interface SeenRates {
  readonly rates: ProtectionRates;
  readonly situations: readonly SituationRates[];
  readonly average: ProtectionRates;
}

/** Pictures rarer than this are raced but not listed. */
const LISTED_SHARE = 0.02;

function shownPictures(call: Call, library: CallLibrary, rates: ProtectionRates): CallProtection[] {
  return picturesFor(call, rates)
    .filter(({ share }) => share >= LISTED_SHARE)
    .map(({ picture, share }) => ({ ...matchProtection(call, library, picture), share }));
}

function races(library: CallLibrary, { rates, situations, average }: SeenRates, ball: readonly Release[]): RaceLine[] {
  const context = { roles: library.roles, curves: createHomeCurves(library.level) };
  return library.calls.flatMap((call) => {
    const pictures = picturesFor(call, rates);
    const seen = situations.map((one) => ({ situation: one.situation, pictures: picturesFor(call, one.rates) }));
    return raceLines({ call, pictures, typicalPictures: picturesFor(call, average), situations: seen }, ball, context);
  });
}
