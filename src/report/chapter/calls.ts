import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Block, type Chapter, foldedTables } from '../view/block.ts';
import { callCards, whoDoesWhatTable } from '../view/call-cards.ts';

/** The calls carried, drawn, with where they are called; who does what is folded. */
export function callsChapter(plan: WeekPlan): Chapter {
  return { id: 'calls', title: 'The calls', short: 'Calls', blocks: callBlocks(plan) };
}

function callBlocks(plan: WeekPlan): readonly Block[] {
  const { menu, library } = plan;
  if (menu?.kind !== 'menu' || library === null) return [];
  return [
    { kind: 'prose', html: callCards(plan, library, menu.calls) },
    foldedTables('Who does what', whoDoesWhatTable(library, menu.calls)),
  ];
}
