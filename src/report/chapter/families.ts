import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { whatIfPanel } from '../page/what-if-panel.ts';
import type { Chapter } from '../view/block.ts';
import { familyChart } from '../view/family-chart.ts';
import { familySituationMatrix } from '../view/family-situation-matrix.ts';
import { byMean } from '../view/family-table.ts';
import { whatIfModel } from '../view/what-if-model.ts';
import { DISAGREEMENT_WORDS } from '../words/disagreement-words.ts';
import { familyReasonWords } from '../words/family-reason-words.ts';
import { familyLabel } from '../words/label.ts';
import { scoreNoteWords } from '../words/score-note-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** The families ranked, overall and by situation, with what stands behind every rank. */
export function familiesChapter(plan: WeekPlan): Chapter {
  return {
    id: 'families',
    title: 'The families ranked',
    short: 'Families',
    blocks: [
      { kind: 'prose', html: html`<p>${INTRODUCTION}</p>\n` },
      { kind: 'chart', chart: familyChart(plan) },
      { kind: 'heading', id: 'family-reasons', text: 'Why, family by family' },
      { kind: 'prose', html: reasonList(plan) },
      { kind: 'prose', html: whatIfPanel(whatIfModel(plan)) },
      { kind: 'chart', chart: familySituationMatrix(plan) },
      ...disagreementBlocks(plan),
      { kind: 'prose', html: noteList(plan) },
    ],
  };
}

const INTRODUCTION =
  'Points saved per 10 snaps against the four-man base, on what they are expected to do. The line is where the true figure lies in eight cases of ten; where it crosses zero, nobody knows whether the family beats the base. Pressure as such pays a little; which family pays best is nearly unknown, so points rule out and do not pick.';

/** Every reason of every family in full sentences, best family first. */
function reasonList(plan: WeekPlan): Html {
  const overall = byMean(plan.scores.families.filter(({ situation }) => situation === ALL_SITUATIONS));
  const items = overall.map(
    (score) => html`<dt>${familyLabel(score.family)}</dt><dd>${familyReasonWords(plan, score)}</dd>`,
  );
  return html`<dl>${items}</dl>\n`;
}

function disagreementBlocks({ scores }: WeekPlan) {
  if (scores.disagreements.length === 0) return [];
  const items = scores.disagreements.map((id) => html`<li>${DISAGREEMENT_WORDS[id]}</li>`);
  return [{ kind: 'prose', html: html`<p>Where coaches and pro data disagree:</p><ul>${items}</ul>\n` } as const];
}

function noteList({ scores }: WeekPlan): Html {
  const items = scores.notes.map((note) => html`<li>${scoreNoteWords(note)}</li>`);
  return html`<p>What points do not know this week:</p><ul>${items}</ul>\n`;
}
