import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import type { Block } from '../view/block.ts';
import { familyChart } from '../view/family-chart.ts';
import { familySituationMatrix } from '../view/family-situation-matrix.ts';
import { byMean } from '../view/family-table.ts';
import { DISAGREEMENT_WORDS } from '../words/disagreement-words.ts';
import { familyReasonWords } from '../words/family-reason-words.ts';
import { familyLabel } from '../words/label.ts';
import { scoreNoteWords } from '../words/score-note-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** The families by points saved, overall and by situation, with what stands behind them. */
export function pointsBlocks(plan: WeekPlan): readonly Block[] {
  return [
    { kind: 'prose', html: html`<p>${INTRODUCTION}</p>\n` },
    { kind: 'chart', chart: familyChart(plan) },
    { kind: 'prose', html: reasonList(plan) },
    { kind: 'chart', chart: familySituationMatrix(plan) },
    ...disagreementBlocks(plan),
    { kind: 'prose', html: noteList(plan) },
  ];
}

const INTRODUCTION =
  'Points saved per 10 snaps against the four-man base, on what we expect them to do. The line covers the true figure 80 times in 100; where it crosses zero, nobody can say that the family beats the base. Pressure as such pays a little; which family pays best is nearly unknown, so points rule out and do not pick.';

/** Every reason of every family in full sentences, best family first. */
function reasonList(plan: WeekPlan): Html {
  const overall = byMean(plan.scores.families.filter(({ situation }) => situation === ALL_SITUATIONS));
  const items = overall.map(
    (score) => html`<dt>${familyLabel(score.family)}</dt><dd>${familyReasonWords(plan, score)}</dd>`,
  );
  return html`<dl>${items}</dl>\n`;
}

function disagreementBlocks({ scores }: WeekPlan): readonly Block[] {
  if (scores.disagreements.length === 0) return [];
  const items = scores.disagreements.map((id) => html`<li>${DISAGREEMENT_WORDS[id]}</li>`);
  return [{ kind: 'prose', html: html`<p>Where coaches and pro data disagree:</p><ul>${items}</ul>\n` }];
}

function noteList({ scores }: WeekPlan): Html {
  const items = scores.notes.map((note) => html`<li>${scoreNoteWords(note)}</li>`);
  return html`<p>What points do not know this week:</p><ul>${items}</ul>\n`;
}
