import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block } from '../view/block.ts';
import { leftOutTable, menuPairingTable, mixTable, priceTable, worstTable } from '../view/menu-table.ts';
import { menuNoteWords, proofWords, secondWordSentences } from '../words/menu-words.ts';
import { signed } from '../words/number-words.ts';
import { situationLabel } from '../words/situation-label.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** What the menu is worth, what each limit costs, what was left out and why; nothing without a menu. */
export function limitBlocks(plan: WeekPlan): readonly Block[] {
  const { menu } = plan;
  if (menu?.kind !== 'menu') return [];
  const sentences = [worthSentence(menu), measureSentence(menu), ...noteSentences(plan, menu)];
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

function noteSentences(plan: WeekPlan, menu: Menu): string[] {
  const notes = menu.notes.map((note) => menuNoteWords(note, situationLabel));
  const titleOf = (role: string) => plan.library?.roles.find(({ id }) => id === role)?.title ?? role;
  return [...notes, ...secondWordSentences(menu.read, titleOf)];
}

function worthSentence(menu: Menu): string {
  const sent = menu.calls.reduce((sum, call) => sum + call.expectedCalls, 0);
  const fits = `Of about ${sent.toFixed(0)} pressures a game the theory is right on ${menu.right.toFixed(1)}, wrong on ${menu.wrong.toFixed(1)}.`;
  return `${fits} By points the menu saves ${signed(menu.value)} a game against always playing the base; worst case, if they always have the answer: ${signed(menu.worstValue)}. It risks about ${menu.explosives.toFixed(1)} explosive plays a game.`;
}

/** What the menu gives up in points, how near the next one comes, and how far the choice is proved. */
function measureSentence(menu: Menu): string {
  const { points, allowed, forced } = menu.regret;
  const most = `at most ${allowed.toFixed(2)}${forced < 0.005 ? '' : `, beside ${forced.toFixed(2)} that the limits force`}`;
  const rule = `Fit, reps and our own film choose; points only rule out: where they tell calls apart the menu gives up ${points.toFixed(2)} points a game (${most}).`;
  return `${rule} ${proofWords(menu)}`;
}
