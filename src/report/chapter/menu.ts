import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { callCards } from '../view/call-cards.ts';
import { leftOutTable, menuPairingTable, mixTable, priceTable, worstTable } from '../view/menu-table.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** The menu: the mix of every situation, what each limit costs, what was left out, and the calls drawn. */
export function menuChapter(plan: WeekPlan): Chapter {
  return { id: 'menu', title: 'The menu', short: 'Menu', blocks: menuBlocks(plan) };
}

function menuBlocks(plan: WeekPlan): readonly Block[] {
  if (plan.menu === null)
    return [{ kind: 'prose', html: html`<p>${plan.library === null ? NO_LIBRARY : NO_MENU}</p>\n` }];
  if (plan.menu.kind === 'infeasible') return [{ kind: 'prose', html: html`<p>${clashSentence(plan.menu)}</p>\n` }];
  return [
    {
      kind: 'prose',
      html: html`<p>${menuSentence(plan.menu)}</p>\n<p>${measureSentence(plan, plan.menu)}</p>\n${noteParagraphs(plan.menu)}`,
    },
    { kind: 'table', table: mixTable(plan, plan.menu) },
    { kind: 'folded', summary: 'What the mix is worth if the forecast is wrong', table: worstTable(plan.menu) },
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
function clashSentence({ clashing, notes = [] }: Extract<MenuResult, { kind: 'infeasible' }>): string {
  return `No menu keeps all the limits of this week. These cannot hold together: ${clashing.join('; ')}. One of them has to give. ${notes.join(' ')}`.trimEnd();
}

function menuSentence(menu: Menu): string {
  const worth = `${menu.calls.length} calls for ${menu.reps} of ${menu.repsAllowed} practice repetitions, worth ${signed(menu.value)} points a game against always playing the base if the forecast holds, and ${signed(menu.worstValue)} if they find the answer that hurts most in every situation.`;
  return `${worth} It risks about ${menu.explosives.toFixed(1)} explosive plays a game.`;
}

/** How menus are compared, how near the next one comes, and how far the choice is proved. */
function measureSentence(plan: WeekPlan, menu: Menu): string {
  const { trust } = plan.settings.menu;
  const measure = `Menus are compared by ${percent(trust)} of what they are worth by the forecast and ${percent(1 - trust)} of what they are worth against their best answer${menu.planValue === undefined ? '' : `: ${signed(menu.planValue)} here`}.`;
  const next = `${menu.proof?.nextProved === false ? 'The best other menu found' : 'The second-best menu'}: ${menu.nextBest.difference}.`;
  return [measure, next, proofSentence(menu)].filter((sentence) => sentence !== '').join(' ');
}

function proofSentence({ proof }: Menu): string {
  if (proof === undefined) return '';
  return proof.finished ? 'No other menu within the limits is worth more; that is proved.' : '';
}

function noteParagraphs({ notes = [] }: Menu) {
  return html`${notes.map((note) => html`<p>${note}</p>\n`)}`;
}
