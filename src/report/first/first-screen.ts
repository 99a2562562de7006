import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { sureWithWord } from '../page/sure-mark.ts';
import { planReadWords } from '../words/menu-words.ts';
import { changeUpWords, givesAwayStatement } from '../words/own-look-words.ts';
import { situationLabel } from '../words/situation-label.ts';
import { type Statement, whyStatements } from '../words/why-words.ts';
import { callItPart } from './call-it.ts';
import { differentPart } from './different.ts';
import { sureStatements } from './how-sure.ts';
import { stayOutStatements } from './stay-out.ts';

/** Changes to our own look named on the first screen. */
const CHANGES_SHOWN = 3;

/** Everything a staff meeting needs: what we call, why, what makes them different, what to stay out of, how we look. */
export function firstScreen(plan: WeekPlan): Html {
  return html`<section class="first" id="plan" aria-label="The plan">
<div><h2>Call it like this</h2>
${callItPart(plan)}<h2>Why</h2>
${statementList(whyStatements(plan))}<h2>How sure</h2>
${statementList(sureStatements(plan))}</div>
<div>${differentPart(plan)}<h2>Stay out of</h2>
${statementList(stayOutStatements(plan))}<h2>How we look</h2>
${ourLookPart(plan)}${planReadPart(plan)}</div>
</section>\n`;
}

/** Statements with their marks. */
export function statementList(statements: readonly Statement[]): Html {
  const items = statements.map(
    ({ words, sure }) => html`<li>${words}${sure === null ? null : html` ${sureWithWord(sure)}`}</li>`,
  );
  return html`<ul>${items}</ul>\n`;
}

/** How far this week's mix can be read; nothing without a menu or with the pairing cap off. */
function planReadPart({ menu }: WeekPlan): Html | null {
  if (menu?.kind !== 'menu' || menu.read.most >= 1) return null;
  return html`<ul><li>${planReadWords(menu.read)}</li></ul>\n`;
}

function ourLookPart(plan: WeekPlan): Html {
  const film = plan.ownFilm;
  if (film === null)
    return html`<p class="none">Our own calls are not charted. Add ours.csv to see what our film gives away.</p>\n`;
  const swaps = film.remedy.swaps
    .slice(0, CHANGES_SHOWN)
    .map(
      ({ situation, path, coverage, instead, snaps }) =>
        html`<li>${situationLabel(situation)}: ${path} with ${coverage} instead of ${instead}, ${snaps}×</li>`,
    );
  const more =
    film.remedy.swaps.length > CHANGES_SHOWN ? html`<li>the rest under <a href="#our-film">How we look</a></li>` : null;
  return html`${statementList([givesAwayStatement(film), { words: changeUpWords(film.remedy), sure: null }])}<ul class="small">${swaps}${more}</ul>\n`;
}
