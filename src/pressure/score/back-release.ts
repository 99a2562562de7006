import { ANSWERS } from '../../game/answers.ts';
import { FAMILIES } from '../../game/families.ts';
import { BACK_ACTIONS } from '../../game/vocabulary.ts';
import { eachAnswer, eachFamily } from '../evidence/by-answer.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME, type SituationEdge } from '../evidence/evidence-race.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import { OUT_JOBS } from '../protection/protection-tally.ts';
import { lossWorth } from './cell-points.ts';
import { type PointsMix, type PointsWeek, SNAPS_PER_SCORE } from './points-mix.ts';
import type { PointsModel } from './points-model.ts';
import type { BackRelease } from './score-result.ts';

/**
 * What the back's release does to every family's points through the race, over all situations first and then in each:
 * the same race with the back always in and always out, less the race as forecast.
 *
 * @returns empty where his job was charted on none of their passes
 */
export function backReleases(week: PointsWeek, model: PointsModel, forecast: ForecastChapter): BackRelease[] {
  return [week.all, ...week.situations].flatMap((mix) => {
    const out = outShare(forecast, mix.id);
    if (out === null) return [];
    const { back } = model.race;
    return [{ situation: mix.id, out, whenIn: changes(mix, model, back.in), whenOut: changes(mix, model, back.out) }];
  });
}

/** Share of passes on which the back is planned to get out; null without any of their snaps. */
function outShare({ forecasts }: ForecastChapter, situation: string): number | null {
  const jobs = forecasts.filter(({ target }) => target === 'back_job');
  if ((jobs.find((entry) => entry.situation === 'all')?.ownSnaps ?? 0) === 0) return null;
  const here = jobs.find((entry) => entry.situation === situation) ?? jobs.find((entry) => entry.situation === 'all');
  return here?.classes.reduce((sum, { name, share }) => sum + (isOut(name) ? share : 0), 0) ?? null;
}

function isOut(job: string): boolean {
  return OUT_JOBS.some((name) => name === job) && (BACK_ACTIONS as readonly string[]).includes(job);
}

/** Points per ten snaps to add, by family and answer of the vocabularies. */
function changes(mix: PointsMix, { race }: PointsModel, changed: SituationEdge): number[][] {
  const worth = eachAnswer((answer) =>
    mix.parts.reduce((sum, { weight, situation }) => sum + weight * lossWorth(answer, situation.down), 0),
  );
  const now = edgeIn(race, mix.id).families;
  const moved = eachFamily((family) =>
    eachAnswer((answer) => LOSSES_PER_RUSHER_HOME * (changed.families[family][answer] - now[family][answer])),
  );
  return FAMILIES.map((family) => ANSWERS.map((answer) => SNAPS_PER_SCORE * moved[family][answer] * worth[answer]));
}
