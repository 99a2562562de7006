import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { callCards } from '../view/call-cards.ts';
import { leftOutTable, menuPairingTable, mixTable, priceTable } from '../view/menu-table.ts';
import { signed } from '../words/number-words.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** The menu: the mix of every situation, what each limit costs, what was left out, and the calls drawn. */
export function menuChapter(plan: WeekPlan): Chapter {
  return { id: 'menu', title: 'The menu', short: 'Menu', blocks: menuBlocks(plan) };
}

function menuBlocks(plan: WeekPlan): readonly Block[] {
  if (plan.menu === null)
    return [{ kind: 'prose', html: html`<p>${plan.library === null ? NO_LIBRARY : NO_MENU}</p>\n` }];
  if (plan.menu.kind === 'infeasible') return [{ kind: 'prose', html: html`<p>${CLASH}</p>\n` }];
  return [
    { kind: 'prose', html: html`<p>${menuSentence(plan.menu)}</p>\n` },
    { kind: 'table', table: mixTable(plan, plan.menu) },
    ...cardBlocks(plan, plan.menu),
    { kind: 'table', table: priceTable(plan.menu) },
    { kind: 'table', table: leftOutTable(plan.menu) },
    { kind: 'table', table: menuPairingTable(plan.menu) },
  ];
}

function cardBlocks(plan: WeekPlan, menu: Menu): readonly Block[] {
  if (plan.library === null) return [];
  return [
    { kind: 'heading', id: 'calls-drawn', text: 'The calls drawn' },
    { kind: 'prose', html: callCards(plan, plan.library, menu.calls) },
    { kind: 'heading', id: 'menu-limits', text: 'What the limits cost' },
  ];
}

const NO_LIBRARY =
  'No call library was given, so no menu was made. With defense.yaml the tool picks the calls to carry and their mix.';
const NO_MENU =
  'No menu was chosen. The families and calls are ranked by score; how many to carry and how to mix them is yours to decide.';
const CLASH = 'No menu keeps all the limits of this week; the short version lists those that clash.';

function menuSentence(menu: Menu): string {
  const worth = `${menu.calls.length} calls for ${menu.reps} of ${menu.repsAllowed} practice repetitions, worth ${signed(menu.value)} points a game against always playing the base by the forecast, and ${signed(menu.worstValue)} if they answer it as well as they can.`;
  const next = `The second-best menu is worth ${signed(menu.nextBest.value)}: ${menu.nextBest.difference}.`;
  return `${worth} ${next} It risks about ${menu.explosives.toFixed(1)} explosive plays a game.`;
}
