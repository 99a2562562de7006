import type { ScoreDraws } from '../score/score-draws.ts';
import { reaches } from './book.ts';
import { chooseSet, type KnownMenus, type MenuChoice } from './choice.ts';
import { bestMix, type MenuMix, worthOfMix } from './mix.ts';
import type { MenuProblem } from './model.ts';
import { setKey } from './set.ts';

/** Posterior draws a menu is chosen for; a share of 30 is told to within 18 points. Judgement. */
export const MENU_DRAWS = 30;

/** Parts of the search looked at in one draw before its best set is taken without a proof. Judgement. */
const DRAW_PARTS = 300;

/** How often each candidate makes the menu when the scores are drawn from what is known of them. */
export interface MenuMembership {
  readonly draws: number;
  /** Draws in which the menu was proved to be the best. */
  readonly proved: number;
  /** By candidate, 0 to 1; all 0 when there is no draw. */
  readonly shares: readonly number[];
}

/**
 * Chooses the menu again under posterior draws spread evenly over those given. In a draw a call's worth moves by the same
 * points against the forecast and against every answer: what is not known is how good the call is. Each draw starts from
 * the menu so far that is worth most in it.
 */
export function menuMembership(problem: MenuProblem, draws: ScoreDraws, { book }: MenuChoice): MenuMembership {
  const count = Math.min(MENU_DRAWS, draws.count);
  const times = problem.candidates.map(() => 0);
  const found = new Map(book.best.map((mix) => [setKey(mix.set), mix]));
  let proved = 0;
  for (let k = 0; k < count; k++) {
    const drawn = drawnProblem(problem, draws, Math.floor((k * draws.count) / count));
    const menu = drawnMenu(drawn, { best: [bestOf(drawn, [...found.values()])], prices: book.prices });
    if (menu?.mix) found.set(setKey(menu.set), menu.mix);
    if (menu?.proved) proved++;
    for (const c of menu?.set ?? []) times[c] = (times[c] ?? 0) + 1;
  }
  return { draws: count, proved, shares: times.map((hits) => (count === 0 ? 0 : hits / count)) };
}

/** The set chosen in one draw, its best mix where one was found, and whether it is proved to be the best. */
interface DrawnMenu {
  readonly set: readonly number[];
  readonly mix: MenuMix | null;
  readonly proved: boolean;
}

function drawnMenu(problem: MenuProblem, known: KnownMenus): DrawnMenu | null {
  const choice = chooseSet(problem, known, DRAW_PARTS);
  const best = choice?.book.best[0];
  if (!best) return null;
  const mix = bestMix(problem, best.set);
  return { set: best.set, mix, proved: choice.end.finished && reaches(mix, best.objective) };
}

/** The mix that is worth most under a problem; mixes keep their limits whatever the scores. */
function bestOf(problem: MenuProblem, mixes: readonly MenuMix[]): MenuMix {
  const worths = mixes.map(({ set, shares }) => worthOfMix(problem, set, shares));
  return worths.reduce((best, mix) => (mix.objective > best.objective ? mix : best));
}

function drawnProblem(problem: MenuProblem, draws: ScoreDraws, draw: number): MenuProblem {
  const { candidates, situations, answers } = problem;
  const callAt = new Map(draws.calls.map((call, i) => [call, i]));
  const situationAt = new Map(draws.situations.map((id, i) => [id, i]));
  const value = problem.value.map((mean, at) => {
    const call = callAt.get(candidates[Math.floor(at / situations.length)]?.call.name ?? '');
    const situation = situationAt.get(situations[at % situations.length]?.id ?? '');
    if (call === undefined || situation === undefined) return mean;
    return (draws.points[(draw * draws.calls.length + call) * draws.situations.length + situation] ?? 0) / 10;
  });
  const byAnswer = problem.byAnswer.map((worth, i) => {
    const at = Math.floor(i / answers);
    return worth + (value[at] as number) - (problem.value[at] as number);
  });
  return { ...problem, value, byAnswer };
}
