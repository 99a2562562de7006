import type { CallLibrary } from '../../ingest/call-library.ts';
import type { Chart } from '../../ingest/chart.ts';
import type { WeekSettings } from '../../ingest/week-settings.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import type { MenuResult } from '../menu/result.ts';
import type { ScoreChapter } from '../score/score-result.ts';

/** The menu as chosen, with its calls. */
export type ChosenMenu = Extract<MenuResult, { kind: 'menu' }>;

/** What a script is made from. */
export interface ScriptInput {
  readonly chart: Chart;
  readonly library: CallLibrary;
  readonly settings: WeekSettings;
  readonly forecast: ForecastChapter;
  readonly scores: ScoreChapter;
  readonly menu: ChosenMenu;
}
