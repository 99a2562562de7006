import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { carryTable } from '../view/carry-table.ts';
import { familyTable } from '../view/family-table.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** The answer first: the plan's own sentences, and what to carry and call. */
export function shortVersionChapter(plan: WeekPlan): Chapter {
  const sentences = html`<ul class="short">${plan.shortVersion.map((sentence) => html`<li>${sentence}</li>`)}</ul>\n`;
  return {
    id: 'short-version',
    title: 'The short version',
    short: 'Short version',
    blocks: [{ kind: 'prose', html: sentences }, carryBlock(plan)],
  };
}

function carryBlock(plan: WeekPlan): Block {
  if (plan.menu?.kind === 'menu') return { kind: 'table', table: carryTable(plan, plan.menu) };
  if (plan.menu?.kind === 'infeasible') {
    const clashing = plan.menu.clashing.map((limit) => html`<li>${limit}</li>`);
    return { kind: 'prose', html: html`<p>No menu keeps all the limits. These clash:</p><ul>${clashing}</ul>\n` };
  }
  const overall = plan.scores.families.filter((score) => score.situation === ALL_SITUATIONS);
  const table = {
    ...familyTable(overall),
    id: 'carry',
    caption: 'The kinds of pressure to prefer',
  };
  return { kind: 'table', table };
}
