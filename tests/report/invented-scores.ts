import type { CallLibrary } from '../../src/game/call-library.ts';
import { ANSWERS, FAMILIES, type Family } from '../../src/game/vocabulary.ts';
import type { ForecastChapter } from '../../src/pressure/forecast/forecast-result.ts';
import type { FamilyScore, ScoreChapter } from '../../src/pressure/score/score-result.ts';
import { INVENTED_SITUATIONS } from './invented-forecast.ts';
import { wobble } from './invented-numbers.ts';

/** Invented scores whose answer parts sum to the family's mean, as real ones do. */
export function inventedScores(forecast: ForecastChapter, library: CallLibrary): ScoreChapter {
  const situations = INVENTED_SITUATIONS.map(({ id, label, expectedSnaps }) => ({ id, label, expectedSnaps }));
  const cells = ['all', ...situations.map((situation) => situation.id)];
  const families = cells.flatMap((situation) => FAMILIES.map((family) => familyOf(family, situation, forecast)));
  const calls = library.calls.flatMap((call) =>
    cells.map((situation) => {
      const mean =
        (families.find((f) => f.family === call.family && f.situation === situation)?.points.mean ?? 0) +
        wobble(call.name) / 5;
      return {
        call: call.name,
        family: call.family,
        situation,
        points: { mean, low: mean - 0.6, high: mean + 0.6 },
        explosives: { mean: 9, low: 6, high: 13 },
        chanceBest: wobble(call.name, situation) / 5,
        byAnswer: ANSWERS.map((answer) => ({ answer, points: valueAgainst(call.family, answer) })),
      };
    }),
  );
  return {
    situations,
    families,
    calls,
    charting: [
      {
        column: 'time_to_throw',
        chartedShare: 0.31,
        words: 'With release times on every pass the race would be half as wide.',
      },
      {
        column: 'back_action',
        chartedShare: 0.44,
        words: "The back's job decides between zero and peel; it is charted on under half.",
      },
    ],
    backRelease: cells.map((situation) => ({
      situation,
      out: 0.4,
      whenIn: FAMILIES.map((family) => ANSWERS.map((answer) => backChange(family, answer, 0.5))),
      whenOut: FAMILIES.map((family) => ANSWERS.map((answer) => backChange(family, answer, -0.75))),
    })),
    disagreements: ['The trade likes man-free against runs; the open data shows no difference.'],
  };
}

/** Invented points saved per ten snaps when the answer is certain. */
function valueAgainst(family: Family, answer: string): number {
  if (family === 'base') return 0;
  const held = answer === 'dropback' || answer === 'deep_shot' ? 1.1 : 0;
  const harmed = (answer === 'screen' || answer === 'quick') && (family === 'add_on' || family === 'zero') ? -1.6 : 0;
  return held + harmed + 1.4 * (wobble(family, answer) - 0.45);
}

/** Invented: a back who stays helps the add-on and zero on a held ball, one who gets out hurts them. */
function backChange(family: Family, answer: string, change: number): number {
  return answer === 'dropback' && (family === 'add_on' || family === 'zero') ? change : 0;
}

function fitOf(family: Family): FamilyScore['fit'] {
  return wobble(family, 'fit') > 0.5 ? 'sound here' : 'mixed';
}

function verdictOf(mean: number, half: number): FamilyScore['verdict'] {
  if (mean - half > 0) return 'ahead of base';
  return mean + half < 0 ? 'behind base' : 'no clear difference';
}

function familyOf(family: Family, situation: string, forecast: ForecastChapter): FamilyScore {
  const cell = forecast.forecasts.find((entry) => entry.target === 'answer' && entry.situation === situation);
  const answers = (cell?.classes ?? []).map((entry) => ({
    answer: entry.name as (typeof ANSWERS)[number],
    share: entry.share,
    points: entry.share * valueAgainst(family, entry.name),
  }));
  const mean = answers.reduce((sum, part) => sum + part.points, 0);
  const half = family === 'base' ? 0 : 0.35 + (cell?.thin ? 0.5 : 0.1);
  const pays = family === 'add_on';
  return {
    family,
    situation,
    points: { mean, low: mean - half, high: mean + half },
    explosives: { mean: 8 + 4 * wobble(family), low: 5, high: 15 },
    chanceBest: wobble(family, situation, 'best') / 4,
    chanceBetterThanBase: family === 'base' ? 0 : Math.min(0.98, Math.max(0.02, 0.5 + mean)),
    answers,
    weights: { judgement: 0.52, openData: 0.35, ownFilm: 0.13 },
    ownSnaps: Math.floor(20 * wobble(family, 'own')),
    verdict: family === 'base' ? 'no clear difference' : verdictOf(mean, half),
    fit: pays ? 'poor fit' : fitOf(family),
    reasons: [
      `Their dropback adds ${mean.toFixed(1)} points per ten snaps`,
      'They get the back out on 31 of 99 passes',
    ],
    breakEven: pays
      ? {
          quantity: 'screens and quick game together',
          shown: 0.31,
          low: 0.24,
          high: 0.39,
          turnsAt: 0.22,
          words: 'Add-on pays below 22% screens and quick game together; they show 31% (24-39%).',
        }
      : null,
  };
}
