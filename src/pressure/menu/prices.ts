import type { WeekSettings } from '../../game/week-settings.ts';
import { chooseMenu, type MenuChoice } from './choice.ts';
import { type CompiledMenu, compileMenu } from './compile.ts';
import { type MenuInput, withMenu } from './input.ts';
import type { LimitPrice } from './result.ts';
import type { MenuRule } from './rule.ts';

type MenuSettings = WeekSettings['menu'];

/** A limit loosened by a step a staff could really take. */
interface Step {
  readonly limit: string;
  readonly step: string;
  readonly change?: Partial<MenuSettings>;
  readonly lift?: MenuRule;
  /** Habits on our film to plan by instead. */
  readonly habits?: MenuInput['habits'];
}

/** Parts of the search looked at for one price before it is given as "at least". Judgement. */
const PRICE_PARTS = 1500;

/**
 * What each limit costs: points a game by the plan's measure (trust times forecast, the rest times their best answer)
 * that one step of loosening would bring, found by choosing again.
 */
export function limitPrices(input: MenuInput, compiled: CompiledMenu, { book }: MenuChoice): LimitPrice[] {
  const now = book.best[0]?.objective ?? 0;
  return steps(input, compiled.rules).map(({ limit, step, change, lift, habits = input.habits }) => {
    const loosened = compileMenu({ ...withMenu(input, change ?? {}), habits }, lift ? [lift] : []);
    const sameCalls = loosened.problem.candidates.length === compiled.problem.candidates.length;
    const known = sameCalls ? book : undefined;
    const choice = chooseMenu({ problem: loosened.problem, wanted: 1, mostParts: PRICE_PARTS, known });
    const points = Math.max(0, (choice?.book.best[0]?.objective ?? now) - now);
    const proved = choice?.end.finished ?? false;
    return { limit, step: proved ? step : `${step} (at least)`, points };
  });
}

function steps({ settings, habits }: MenuInput, rules: readonly MenuRule[]): Step[] {
  const ofFilm = habits && habits.length > 0 && settings.menu.pairing_cap < 1 ? [FILM_STEP] : [];
  return [...numberSteps(settings.menu), ...rules.flatMap((rule) => liftStep(rule)), ...ofFilm];
}

const FILM_STEP: Step = { limit: 'what our film already shows', step: 'left out of account', habits: [] };

function numberSteps(menu: MenuSettings): Step[] {
  const { size, reps, pressure_rate: rate, explosives } = menu;
  const more: Step[] = [
    { limit: 'calls carried', step: 'one more call', change: { size: size + 1 } },
    { limit: 'practice repetitions', step: 'ten more', change: { reps: reps + 10 } },
  ];
  if (rate.most < 1) {
    const most = Math.min(1, rate.most + 0.1);
    more.push({ limit: 'most pressure', step: 'ten points more', change: { pressure_rate: { ...rate, most } } });
  }
  if (rate.least > 0) {
    const least = Math.max(0, rate.least - 0.1);
    more.push({ limit: 'least pressure', step: 'ten points less', change: { pressure_rate: { ...rate, least } } });
  }
  if (explosives !== undefined) {
    more.push({ limit: 'explosive plays', step: 'half a play more', change: { explosives: explosives + 0.5 } });
  }
  return more;
}

function liftStep(rule: MenuRule): Step[] {
  const lift = { limit: rule.words, lift: rule };
  switch (rule.kind) {
    case 'pairing':
      return [{ ...lift, limit: 'pairing cap', step: 'no cap' }];
    case 'theory':
      return [{ ...lift, step: 'not demanded' }];
    case 'must':
      return [{ ...lift, step: 'left free' }];
    case 'ban':
      return [{ ...lift, step: 'allowed' }];
    case 'size':
    case 'reps':
    case 'least':
    case 'most':
    case 'explosives':
    case 'use':
      return [];
    default:
      return rule.kind satisfies never;
  }
}
