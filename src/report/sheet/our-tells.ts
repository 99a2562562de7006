import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { countWords } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';

/** Our habits an opponent can read, and the swaps that break them; says so when our film was not charted. */
export function tellsToBreak(plan: WeekPlan): readonly string[] {
  const film = plan.ownFilm;
  if (film === null) return ['Our own film was not charted: nothing is known of our tells.'];
  const carried = carriedPaths(plan);
  const swaps = film.remedy.swaps
    .filter(({ path }) => carried === null || carried.has(path))
    .map(
      (swap) =>
        `${situationLabel(plan, swap.situation)}, ${swap.path}: ${swap.coverage} instead of ${swap.instead}, ${counted(swap.snaps, 'snap', 'snaps')} in ${counted(film.remedy.games, 'game', 'games')}.`,
    );
  const tells = film.tells.map((tell) => `${tell.description}: ${tell.follows} on ${countWords(tell.share)}.`);
  const lines = [...swaps, ...tells];
  return lines.length === 0 ? ['None stood out.'] : lines;
}

/** Paths of the calls carried this week, or null where no menu was chosen: what is not carried cannot be swapped. */
function carriedPaths({ menu, library }: WeekPlan): ReadonlySet<string> | null {
  if (menu?.kind !== 'menu' || library === null) return null;
  const names = new Set(menu.calls.map(({ call }) => call));
  return new Set(library.calls.filter(({ name }) => names.has(name)).map(({ path }) => path));
}

/** How often we sent pressure on film, and how often the plan does: by down, when charted. */
export function pressureReminders(plan: WeekPlan): readonly string[] {
  const film = (plan.ownFilm?.pressureRates ?? []).filter((rate) => rate.by === 'down' && rate.share.estimate !== null);
  const onFilm = film.map(
    (rate) => `On film, ${rate.value}: ${countWords(rate.share)} (${percent(rate.share.estimate ?? 0)}).`,
  );
  return [...planned(plan), ...onFilm];
}

function planned(plan: WeekPlan): readonly string[] {
  if (plan.menu?.kind !== 'menu') return [];
  const { situations } = plan.menu;
  const snaps = situations.reduce((sum, situation) => sum + situation.expectedSnaps, 0);
  const base = situations.reduce((sum, situation) => sum + situation.expectedSnaps * situation.baseShare, 0);
  if (snaps === 0) return [];
  return [`This plan sends pressure on ${percent(1 - base / snaps)} of about ${Math.round(snaps)} snaps.`];
}
