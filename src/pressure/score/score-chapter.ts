import { FAMILIES, type Family } from '../../game/vocabulary.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { disagreements } from '../evidence/open-data-disagreement.ts';
import { backReleases } from './back-release.ts';
import { callScores } from './call-score.ts';
import { chartingValues } from './charting/charting-value.ts';
import { familyScores } from './family/family-score.ts';
import { sharedDraws } from './family/family-score-draws.ts';
import { type ScoreInput, type ScoreModel, scoreModel } from './family/family-score-model.ts';
import { type ScoredWeek, scoreWeek } from './family/family-score-week.ts';
import { emptyScoreDraws, MENU_DRAW_COUNT, type ScoreDraws, writeScoreDraws } from './score-draws.ts';
import { scoreNotes } from './score-notes.ts';
import type { CallScore, ScoreChapter } from './score-result.ts';

/** The chapter for the page and the draws for the menu. */
export interface ScoredChapter {
  readonly chapter: ScoreChapter;
  readonly draws: ScoreDraws;
}

/**
 * Scores the pressure families and, where there is a library, its calls: against the four-man base, in every situation
 * and over all of them (`all` comes first), over seeded draws that all share. The same input gives the same bytes.
 */
export function scoreChapter(input: ScoreInput): ScoredChapter {
  const model = scoreModel(input);
  const week = scoreWeek(model, sharedDraws(model));
  const families = scoredFamilies(input.settings);
  const { calls, draws } = scoreCalls(input, week, model);
  const judged = { model, slideToBack: input.protection.mix.slideToBack, families };
  const chapter: ScoreChapter = {
    situations: week.situations.map(({ id, label, expectedSnaps }) => ({ id, label, expectedSnaps })),
    families: [week.all, ...week.situations].flatMap((situation) => familyScores(situation, judged)),
    calls,
    backRelease: backReleases(week, model),
    charting: chartingValues(input.chart, week, model),
    disagreements: disagreements({ families, shares: week.all.shares }),
    notes: scoreNotes(input, week, model),
  };
  return { chapter, draws };
}

/** The families on the page, in the order of the vocabulary; the base is always among them. */
function scoredFamilies({ families }: WeekSettings): readonly Family[] {
  return FAMILIES.filter((family) => family === 'base' || families === undefined || families.includes(family));
}

function scoreCalls({ library, settings }: ScoreInput, week: ScoredWeek, model: ScoreModel) {
  const families = scoredFamilies(settings);
  const calls = (library?.calls ?? []).filter(({ family }) => families.includes(family));
  const names = calls.map(({ name }) => name);
  const ids = week.situations.map(({ id }) => id);
  const draws = emptyScoreDraws(names, ids, MENU_DRAW_COUNT);
  const scores: CallScore[] = [];
  [week.all, ...week.situations].forEach((situation, place) => {
    callScores(situation, calls, model).forEach(({ score, points }, call) => {
      scores.push(score);
      if (place > 0) writeScoreDraws(draws, { call, situation: place - 1 }, points);
    });
  });
  return { calls: scores, draws };
}
