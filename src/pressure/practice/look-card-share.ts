import { type Film, textAt } from '../../game/film.ts';
import { LOOK_KINDS, type LookKind } from '../../game/look-kinds.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { receiverLookOf } from '../snap/look.ts';
import { lookKinds } from './look-card-kind.ts';

/** How often their passes come from empty, and their other sets are trips, on film; the forecast does not ask it. */
export interface LookSplits {
  readonly empty: Share;
  readonly trips: Share;
}

/** Counts empty among quick and dropback snaps, and trips among all snaps with charted receivers. */
export function lookSplits(chart: Film, cuts: SituationCuts): LookSplits {
  const kinds = lookKinds(chart, cuts);
  const passes = kinds.filter((kind) => kind !== undefined && FROM_THE_POCKET.includes(kind));
  const empties = passes.filter((kind) => kind === 'empty').length;
  const receivers = kinds.flatMap((_, i) => receiverLookOf(textAt(chart, 'receivers', i) ?? '') ?? []);
  const trips = receivers.filter((look) => look === 'trips').length;
  return { empty: share(empties, passes.length), trips: share(trips, receivers.length) };
}

/**
 * Share of each kind of look in a situation: the forecast's answers, with a dropback split by the forecast of protectors
 * and of the back's job.
 *
 * @returns shares in the order of the kinds; they sum to 1 when the forecast's answers do
 */
export function lookShares(chapter: ForecastChapter, situation: string, splits: LookSplits): Map<LookKind, number> {
  const answer = sharesOf(chapter, 'answer', situation);
  const job = sharesOf(chapter, 'back_job', situation);
  const most = [...sharesOf(chapter, 'protectors', situation).values()][2] ?? 0;
  const [empty, trips] = [splits.empty.estimate ?? 0, splits.trips.estimate ?? 0];
  const drop = answer.get('dropback') ?? 0;
  const [quick, deep] = [answer.get('quick') ?? 0, answer.get('deep_shot') ?? 0];
  const withBack = drop * (1 - empty) * (1 - most);
  const [wide, inside] = [job.get('releases_wide') ?? 0, job.get('releases_inside') ?? 0];
  const shares: Partial<Record<LookKind, number>> = {
    quick: quick * (1 - empty),
    empty: (quick + drop) * empty,
    max_protection: drop * (1 - empty) * most,
    wide_release: withBack * wide,
    inside_release: withBack * inside,
    dropback: withBack * (1 - wide - inside),
    deep_shot: deep * (1 - trips),
    trips_deep: deep * trips,
  };
  return new Map(LOOK_KINDS.map(({ id }) => [id, shares[id] ?? answer.get(id) ?? 0]));
}

/** The forecast of a target in a situation; of all situations where that one is not forecast. */
export function forecastOf(chapter: ForecastChapter, target: Target, situation: string): Forecast | undefined {
  const asked = chapter.forecasts.filter((forecast) => forecast.target === target);
  return (
    asked.find((forecast) => forecast.situation === situation) ?? asked.find((forecast) => forecast.situation === 'all')
  );
}

const FROM_THE_POCKET: readonly LookKind[] = [
  'quick',
  'dropback',
  'wide_release',
  'inside_release',
  'max_protection',
  'empty',
];

function sharesOf(chapter: ForecastChapter, target: Target, situation: string): Map<string, number> {
  const classes = forecastOf(chapter, target, situation)?.classes ?? [];
  return new Map(classes.map(({ name, share: part }) => [name, part]));
}
