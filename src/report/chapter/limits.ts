import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block } from '../view/block.ts';
import { leftOutTable, menuPairingTable, mixTable, priceTable, worstTable } from '../view/menu-table.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** What the menu is worth, what each limit costs, what was left out and why; nothing without a menu. */
export function limitBlocks(plan: WeekPlan): readonly Block[] {
  const { menu } = plan;
  if (menu?.kind !== 'menu') return [];
  const sentences = [worthSentence(menu), measureSentence(plan, menu), ...(menu.notes ?? [])];
  const worth = html`${sentences.filter((line) => line !== '').map((line) => html`<p>${line}</p>\n`)}`;
  return [
    {
      kind: 'folded',
      summary: 'What the menu is worth, what its limits cost, what was left out',
      blocks: [
        { kind: 'prose', html: worth },
        { kind: 'table', table: mixTable(plan, menu) },
        { kind: 'table', table: worstTable(menu) },
        { kind: 'table', table: priceTable(menu) },
        { kind: 'table', table: leftOutTable(menu) },
        { kind: 'table', table: menuPairingTable(menu) },
      ],
    },
  ];
}

function worthSentence(menu: Menu): string {
  return `The menu saves ${signed(menu.value)} points a game against always playing the base; worst case, if they always have the answer: ${signed(menu.worstValue)}. It risks about ${menu.explosives.toFixed(1)} explosive plays a game.`;
}

/** How menus are compared, how near the next one comes, and how far the choice is proved. */
function measureSentence(plan: WeekPlan, menu: Menu): string {
  const { trust } = plan.settings.menu;
  const measure = `Menus are compared at ${percent(trust)} trust in the forecast, the rest against their best answer.`;
  const next = `${menu.proof?.nextProved === false ? 'The best other menu found' : 'The second-best menu'}: ${menu.nextBest.difference}.`;
  const proof = menu.proof?.finished === true ? 'No other menu within the limits is worth more; that is proved.' : '';
  return [measure, next, proof].filter((sentence) => sentence !== '').join(' ');
}
