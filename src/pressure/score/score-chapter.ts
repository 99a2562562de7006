import { FAMILIES, type Family } from '../../game/families.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { callScore } from './call-points.ts';
import { disagreementsOf } from './disagreement.ts';
import { familyScores } from './family-points.ts';
import { type PointsWeek, pointsWeek } from './points-mix.ts';
import { type PointsModel, pointsModel, type ScoreInput } from './points-model.ts';
import { scoreNotes } from './score-notes.ts';
import type { CallScore, OwnFamilyFilm, ScoreChapter } from './score-result.ts';

/**
 * Scores the pressure families and, where there is a library, its calls in points: against the four-man base, over all
 * snaps, in every situation and in every field zone, with what points tell apart and what they do not. Nothing is drawn:
 * the same input gives the same bytes.
 */
export function scoreChapter(input: ScoreInput): ScoreChapter {
  const model = pointsModel(input);
  const week = pointsWeek(model);
  const families = scoredFamilies(input.settings);
  const { all, situations, zones } = week;
  return {
    situations: situations.map(({ id, expectedSnaps }) => ({ id, expectedSnaps })),
    families: [all, ...situations].flatMap((mix) => familyScores(mix, families, model)),
    zones: zones.flatMap((mix) => familyScores(mix, families, model)),
    calls: callScores(input, week, model),
    ownFilm: ownFamilies(model),
    disagreements: disagreementsOf(families, all.shares),
    notes: scoreNotes(input, week, model),
  };
}

/** The families on the page, in the order of the vocabulary; the base is always among them. */
function scoredFamilies({ families }: WeekSettings): readonly Family[] {
  return FAMILIES.filter((family) => family === 'base' || families === undefined || families.includes(family));
}

function callScores({ library, settings }: ScoreInput, week: PointsWeek, model: PointsModel): CallScore[] {
  const families = scoredFamilies(settings);
  const calls = (library?.calls ?? []).filter(({ family }) => families.includes(family));
  return [week.all, ...week.situations].flatMap((mix) => calls.map((call) => callScore(mix, call, model)));
}

function ownFamilies({ ownFilm }: PointsModel): OwnFamilyFilm[] {
  return FAMILIES.filter((family) => ownFilm.snaps[family] > 0).map((family) => {
    return { family, snaps: ownFilm.snaps[family], outcomes: ownFilm.outcomes[family] };
  });
}
