import type { CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import type { MenuResult } from '../menu/result.ts';
import type { ScoreChapter } from '../score/score-result.ts';

/** The menu as chosen, with its calls. */
export type ChosenMenu = Extract<MenuResult, { kind: 'menu' }>;

/** What a script is made from. */
export interface ScriptInput {
  readonly chart: Film;
  readonly library: CallLibrary;
  readonly settings: WeekSettings;
  readonly forecast: ForecastChapter;
  readonly scores: ScoreChapter;
  readonly menu: ChosenMenu;
}
