import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { inventedForecast } from './invented-forecast.ts';
import { inventedLibrary } from './invented-library.ts';
import { inventedMenu } from './invented-menu.ts';
import { inventedOwnFilm } from './invented-own-film.ts';
import { inventedProtection } from './invented-protection.ts';
import { inventedQuestions } from './invented-questions.ts';
import { inventedScores } from './invented-scores.ts';

/** A whole invented week: schools, games and numbers that never were, with the shape a real plan has. */
export function inventedPlan(changes: Partial<WeekPlan> = {}): WeekPlan {
  const library = inventedLibrary();
  const forecast = inventedForecast();
  const scores = inventedScores(forecast, library);
  const settings = weekSettingsSchema.parse({
    opponent: 'Larkmoor Herons',
    us: 'Dunfield Badgers',
    practice: { days: DAYS },
  });
  return {
    schema: 'pressure-plan.week/4',
    version: '0.1.0',
    opponent: settings.opponent,
    us: settings.us,
    date: '2031-10-17',
    seed: 7,
    settings,
    library,
    film: FILM,
    forecast,
    ...inventedQuestions(),
    archive: {
      offenses: [],
      offenseGames: 0,
      snaps: 0,
      ownGames: null,
      ownYards: null,
      uses: [],
      level: settings.level,
    },
    protection: inventedProtection(library),
    scores,
    fit: { rules: [], families: [], calls: [], breakEvens: [], charting: [], adjustments: [], holes: [] },
    menu: inventedMenu(library, scores),
    zones: [],
    ownFilm: inventedOwnFilm(),
    ...changes,
  };
}

const DAYS = [
  {
    day: 'Tue',
    periods: [
      { name: 'Pressure fits', minutes: 10, reps: 16, contact: 'thud' },
      { name: 'Team', minutes: 15, reps: 12, contact: 'control' },
    ],
  },
  { day: 'Wed', periods: [{ name: 'Third down', minutes: 15, reps: 20, contact: 'live' }] },
  { day: 'Thu', periods: [{ name: 'Walk', minutes: 20, reps: 24, contact: 'air' }] },
];

const FILM: WeekPlan['film'] = {
  snaps: 236,
  games: [
    { game: 'w02 Alder Gap', snaps: 61 },
    { game: 'w04 Pinlow', snaps: 57 },
    { game: 'w06 Coldbrook', snaps: 55 },
    { game: 'w07 Esterline', snaps: 63 },
  ],
  sources: ['opponent-1.csv', 'opponent-2.csv', 'ours.csv'],
  columns: [
    { column: 'down', charted: 236, snaps: 236, of: 'snaps' },
    { column: 'play_kind', charted: 233, snaps: 236, of: 'snaps' },
    { column: 'time_to_throw', charted: 31, snaps: 99, of: 'passes' },
    { column: 'slide', charted: 58, snaps: 99, of: 'passes' },
    { column: 'back_action', charted: 0, snaps: 99, of: 'passes' },
  ],
  faults: 2,
  warnings: 3,
  problems: ['opponent-2.csv, row 14, column F (to_go): "1O" is not a number; kept out of the numbers'],
  absent: ['archive'],
  invented: true,
};
