import { SITUATION_IDS } from '../../game/situations.ts';
import type { Share } from '../../stats/share.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import type { ProtectionRates } from './protection-rates.ts';
import type { SituationProtection } from './protection-result.ts';
import { OUT_JOBS, type ProtectionTally } from './protection-tally.ts';

/** How they protect in one situation. */
export interface SituationRates {
  readonly situation: string;
  readonly rates: ProtectionRates;
  /** Passes of the situation on which each was charted. */
  readonly charted: SituationProtection['charted'];
}

/** What the rates of a situation are made from. */
export interface SituationFilm {
  readonly tally: ProtectionTally;
  readonly forecast: ForecastChapter | null;
}

interface ForecastFilm extends SituationFilm {
  readonly forecast: ForecastChapter;
}

/**
 * How they protect in each situation: the forecast of every piece that was charted on them, the rates over all their
 * passes for the rest (how the line turns is not forecast by situation). Empty where nothing was charted or forecast, so
 * that one assumed mix is never passed off as thirteen.
 *
 * @param whole - the rates over all their passes
 */
export function situationRates(film: SituationFilm, whole: ProtectionRates): readonly SituationRates[] {
  const { tally, forecast } = film;
  const { protectors, back } = tally.charted;
  const slides = [tally.toBack, tally.toField, tally.toStrength].reduce((sum, { trials }) => sum + trials, 0);
  if (!forecast || protectors + back + slides === 0) return [];
  return SITUATION_IDS.map((id) => ({
    situation: id,
    rates: ratesIn({ tally, forecast }, id, whole),
    charted: {
      protectors: cellOf(forecast, id, 'protectors')?.ownSnaps ?? 0,
      slide: cellOf(forecast, id, 'slide_to_back')?.ownSnaps ?? 0,
      back: cellOf(forecast, id, 'back_job')?.ownSnaps ?? 0,
    },
  }));
}

/** A situation's protections as the report shows them. */
export function situationProtection({ situation, rates, charted }: SituationRates): SituationProtection {
  const { protectors, toBack, wide } = rates;
  const backWide = (protectors[0] as number) * wide;
  return {
    situation,
    charted,
    protectors,
    slideToBack: toBack,
    backWide,
  };
}

function ratesIn(film: ForecastFilm, situation: string, whole: ProtectionRates): ProtectionRates {
  const { tally, forecast } = film;
  const toward = (target: Target, charted: Share, otherwise: number) =>
    charted.trials === 0 ? otherwise : (cellOf(forecast, situation, target)?.classes[0]?.share ?? otherwise);
  const jobs = jobsIn(film, situation);
  return {
    ...whole,
    protectors: protectorsIn(whole.protectors, countsIn(film, situation), jobs),
    toBack: toward('slide_to_back', tally.toBack, whole.toBack),
    toField: toward('slide_to_field', tally.toField, whole.toField),
    toStrength: toward('slide_to_strength', tally.toStrength, whole.toStrength),
    wide: jobs && jobs.out > 0 ? jobs.wide / jobs.out : whole.wide,
  };
}

function cellOf({ forecasts }: ForecastChapter, situation: string, target: Target): Forecast | undefined {
  return forecasts.find((one) => one.target === target && one.situation === situation);
}

/** Shares of five, six, and seven or more protectors; null where nobody counted them. */
function countsIn({ tally, forecast }: ForecastFilm, situation: string): readonly number[] | null {
  const found = tally.charted.protectors > 0 ? cellOf(forecast, situation, 'protectors') : undefined;
  return found ? found.classes.map(({ share }) => share) : null;
}

interface Jobs {
  readonly out: number;
  readonly wide: number;
}

/** Share of passes on which the back gets out or is not there, and on which he goes wide; null where not charted. */
function jobsIn({ tally, forecast }: ForecastFilm, situation: string): Jobs | null {
  const found = tally.charted.back > 0 ? cellOf(forecast, situation, 'back_job') : undefined;
  if (!found) return null;
  const shareOf = (job: string) => found.classes.find(({ name }) => name === job)?.share ?? 0;
  return { out: OUT_JOBS.reduce((sum, job) => sum + shareOf(job), 0), wide: shareOf('releases_wide') };
}

/** Fives, sixes and the rest as forecast, sevens and eights split as over all passes; by the back where nobody counted. */
function protectorsIn(whole: readonly number[], planned: readonly number[] | null, jobs: Jobs | null) {
  const [five = 0, six = 0, seven = 0, eight = 0] = whole;
  if (planned) {
    const [fives = 0, sixes = 0, more = 0] = planned;
    const eights = seven + eight === 0 ? 0 : (more * eight) / (seven + eight);
    return [fives, sixes, more - eights, eights];
  }
  if (!jobs || five === 1) return whole;
  const left = (1 - jobs.out) / (1 - five);
  return [jobs.out, six * left, seven * left, eight * left];
}
