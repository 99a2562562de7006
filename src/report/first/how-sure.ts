import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { backtestWords } from '../words/backtest-words.ts';
import { counted } from '../words/number-words.ts';
import type { Statement } from '../words/why-words.ts';

/** Below this many snaps the film as a whole is thin; judgment. */
const THIN_FILM = 150;

/** How much film stands behind the plan, what could not be used, and how the forecast did on film it had not seen. */
export function sureStatements({ film, forecast }: WeekPlan): readonly Statement[] {
  const size = `${counted(film.snaps, 'snap', 'snaps')} in ${counted(film.games.length, 'game', 'games')}`;
  const thin = film.snaps < THIN_FILM ? ': thin. Trust the football before the numbers.' : '.';
  const faults =
    film.faults === 0 ? [] : [`${counted(film.faults, 'row', 'rows')} left out of the numbers for faults.`];
  const judged = forecast.backtest === null ? [] : [backtestWords(forecast.backtest.targets)];
  return [`${size}${thin}`, ...faults, ...judged].map((words) => ({ words, sure: null }));
}
