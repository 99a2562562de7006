import type { FamilyFit } from '../../pressure/fit/fit-result.ts';
import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { baseCallWords } from '../words/base-call-words.ts';
import { fitWords, MOSTLY_OPEN } from '../words/fit-words.ts';
import { familyLabel } from '../words/label.ts';
import { ruleWords } from '../words/menu-words.ts';
import { listed, signed } from '../words/number-words.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import { pointsWords } from '../words/spread-words.ts';
import { mixMatrix } from './mix-matrix.ts';

/** Calls or families named where no menu was chosen. */
const NAMED = 3;

/** The mix, or what takes its place: the limits that clash, or the calls and families by score. */
export function callItPart(plan: WeekPlan): Html {
  const { menu } = plan;
  if (menu?.kind === 'menu') return html`${mixMatrix(plan, menu)}<p class="small">${matrixNote(plan, menu)}</p>\n`;
  if (menu?.kind === 'infeasible') {
    const limits = menu.clashing.map((rule) => html`<li>${ruleWords(rule)}</li>`);
    return html`<p>No menu keeps all of this week’s limits. These clash; loosen one in week.yaml:</p><ul>${limits}</ul>\n`;
  }
  return plan.library === null ? familyList(plan) : callList(plan);
}

function matrixNote(plan: WeekPlan, menu: Extract<MenuResult, { kind: 'menu' }>): string {
  const base = baseCallWords(plan);
  const named = base === '' ? 'Base: our four-man calls.' : `Base: ${base}.`;
  const fresh = menu.calls.filter(({ isNew }) => isNew).map(({ call }) => call);
  const install = fresh.length === 0 ? '' : ` New, to be installed: ${listed(fresh)}.`;
  return `${named} ▸ the side we send it to. ${menu.reps} of ${menu.repsAllowed} practice reps.${install}`;
}

/** Kinds of pressure by how their idea fits; points stand beside it and pick nothing. */
function familyList({ scores, fit }: WeekPlan): Html {
  const fits = fit.families.filter(({ situation }) => situation === ALL_SITUATIONS);
  const ranked = scores.families
    .filter(({ situation, family }) => situation === ALL_SITUATIONS && family !== 'base')
    .map(({ family, points }) => ({ family, points, fit: fits.find((one) => one.family === family) }))
    .sort((a, b) => (b.fit?.net.mean ?? 0) - (a.fit?.net.mean ?? 0) || b.points.mean - a.points.mean);
  const items = ranked.slice(0, NAMED).map(({ family, points, fit: found }) => {
    const words = [...(found === undefined ? [] : [knownFit(found)]), pointsWords(points.mean)].join('; ');
    return html`<li>${`${familyLabel(family)}: ${words}`}</li>`;
  });
  return html`<p>No call library (defense.yaml): here are kinds of pressure, not calls.</p><ul>${items}</ul>\n`;
}

function knownFit(fit: FamilyFit): string {
  return fit.unknown > MOSTLY_OPEN ? 'too little is charted to tell' : fitWords(fit);
}

function callList(plan: WeekPlan): Html {
  const rows = plan.scores.situations
    .filter(({ id, expectedSnaps }) => id !== ALL_SITUATIONS && expectedSnaps >= 1)
    .map(({ id }) => {
      const best = plan.scores.calls
        .filter(({ situation, family }) => situation === id && family !== 'base')
        .sort((a, b) => b.points.mean - a.points.mean)
        .slice(0, NAMED);
      return html`<tr><th scope="row">${situationLabel(id)}</th><td>${best.map(({ call, points }) => `${call} ${signed(points.mean)}`).join(', ')}</td></tr>`;
    });
  return html`<p>No menu was chosen. Our calls by points saved per 10 snaps, best first:</p><table class="by-score"><caption class="said">Calls by score</caption><thead><tr><th scope="col">Situation</th><th scope="col">Calls</th></tr></thead><tbody>${rows}</tbody></table>\n`;
}
