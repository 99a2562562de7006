import { ANSWERS } from '../../src/game/answers.ts';
import type { CallLibrary } from '../../src/game/call-library.ts';
import { FAMILIES, type Family } from '../../src/game/families.ts';
import type { ForecastChapter } from '../../src/pressure/forecast/forecast-result.ts';
import type { FamilyScore, ScoreChapter } from '../../src/pressure/score/score-result.ts';
import { INVENTED_SITUATIONS } from './invented-forecast.ts';
import { wobble } from './invented-numbers.ts';

/** Invented scores with answer parts that sum to the family's mean, as real ones do. */
export function inventedScores(forecast: ForecastChapter, library: CallLibrary): ScoreChapter {
  const situations = INVENTED_SITUATIONS.map(({ id, expectedSnaps }) => ({ id, expectedSnaps }));
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
        byAnswer: ANSWERS.map((answer) => ({
          answer,
          points: valueAgainst(call.family, answer) + wobble(call.name) / 5,
        })),
      };
    }),
  );
  return {
    situations,
    families,
    calls,
    zones: ['open_field', 'red_zone', 'goal_line'].flatMap((zone) =>
      FAMILIES.map((family) => familyOf(family, zone, forecast)),
    ),
    ownFilm: [],
    notes: [{ kind: 'runs', share: 0.48 }],
    disagreements: ['play_action'],
  };
}

/** Invented points saved per ten snaps when the answer is certain. */
function valueAgainst(family: Family, answer: string): number {
  if (family === 'base') return 0;
  const held = answer === 'dropback' || answer === 'deep_shot' ? 1.1 : 0;
  const harmed = (answer === 'screen' || answer === 'quick') && (family === 'add_on' || family === 'zero') ? -1.6 : 0;
  return held + harmed + 1.4 * (wobble(family, answer) - 0.45);
}

function verdictOf(mean: number, half: number): FamilyScore['verdict'] {
  if (mean - half > 0) return 'ahead';
  return mean + half < 0 ? 'behind' : 'level';
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
  return {
    family,
    situation,
    points: { mean, low: mean - half, high: mean + half },
    explosives: { mean: 8 + 4 * wobble(family), low: 5, high: 15 },
    regret: Math.max(0, 1 - mean),
    behindChance: 0.4 + 0.3 * wobble(family, situation, 'best'),
    ruledOutBy: null,
    chanceBetterThanBase: family === 'base' ? 0 : Math.min(0.98, Math.max(0.02, 0.5 + mean)),
    answers,
    sources: { league: 0.7 * mean, race: 0.2 * mean, ownFilm: 0.1 * mean },
    race: { home: 0.4, typical: 0.35 },
    ownSnaps: Math.floor(20 * wobble(family, 'own')),
    verdict: family === 'base' ? 'level' : verdictOf(mean, half),
  };
}
