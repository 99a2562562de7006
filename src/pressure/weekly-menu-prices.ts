import type { LimitPrice } from './menu-result.ts';
import { menuLimits } from './weekly-menu-limits.ts';
import { type MenuInput, menuProblem } from './weekly-menu-problem.ts';
import { type ChosenMenu, solveMenu } from './weekly-menu-program.ts';

type Loosen = (menu: MenuInput['settings']['menu']) => MenuInput['settings']['menu'];

/** Each limit, loosened by a step a staff could really take. */
const STEPS: readonly { readonly limit: string; readonly step: string; readonly loosen: Loosen }[] = [
  { limit: 'calls carried', step: 'one more call', loosen: (menu) => ({ ...menu, size: menu.size + 1 }) },
  { limit: 'practice repetitions', step: '20 more repetitions', loosen: (menu) => ({ ...menu, reps: menu.reps + 20 }) },
  { limit: 'pairing cap', step: 'no cap', loosen: (menu) => ({ ...menu, pairing_cap: 1 }) },
  {
    limit: 'pressure rate',
    step: '10 points more pressure',
    loosen: (menu) => ({
      ...menu,
      pressure_rate: { ...menu.pressure_rate, most: Math.min(1, menu.pressure_rate.most + 0.1) },
    }),
  },
];

/** What each limit costs, in points a game by the plan's own measure, found by solving again without it. */
export function limitPrices(input: MenuInput, chosen: ChosenMenu): LimitPrice[] {
  return STEPS.map(({ limit, step, loosen }) => {
    const problem = menuProblem({ ...input, settings: { ...input.settings, menu: loosen(input.settings.menu) } });
    const loosened = solveMenu(problem, menuLimits(problem));
    return { limit, step, points: Math.max(0, (loosened?.objective ?? chosen.objective) - chosen.objective) };
  });
}
