import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { changeUpWords } from '../words/own-look-words.ts';
import { situationLabel } from '../words/situation-label.ts';

/** Changes named; more would not be kept on the sideline. */
const NAMED = 3;

/** What of our look to break tonight, for the paths we carry; nothing where our film is not charted. */
export function breakLines(plan: WeekPlan): readonly string[] {
  const film = plan.ownFilm;
  if (film === null) return [];
  const carried = carriedPaths(plan);
  const swaps = film.remedy.swaps.filter(({ path }) => carried === null || carried.has(path)).slice(0, NAMED);
  if (swaps.length === 0) return [];
  const named = swaps.map(
    ({ situation, path, coverage, instead }) =>
      `${situationLabel(situation)}: ${path} with ${coverage}, not ${instead}`,
  );
  return [`Our look. ${changeUpWords(film.remedy)} ${named.join('; ')}.`];
}

/** Paths of the calls carried this week, or null where no menu was chosen: what is not carried cannot be changed up. */
function carriedPaths({ menu, library }: WeekPlan): ReadonlySet<string> | null {
  if (menu?.kind !== 'menu' || library === null) return null;
  const names = new Set(menu.calls.map(({ call }) => call));
  return new Set(library.calls.filter(({ name }) => names.has(name)).map(({ path }) => path));
}
