import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { signed } from '../words/number-words.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';

/** Calls named for a situation. Common practice, no source: three fit a box. */
const NAMED = 3;

/** Without a menu: the best-scored pressures of each situation with their intervals, most frequent situation first. */
export function scoredCalls(plan: WeekPlan): Html {
  const rows = scoredRows(plan).map(
    ({ label, calls }) => html`<tr><th scope="row" class="where">${label}</th><td class="calls">${calls}</td></tr>\n`,
  );
  return html`<p class="small">No menu was chosen, so these are our calls by points, not a mix. Points saved per 10 snaps against the base, with where the true figure lies 80 times in 100.</p>
<div class="scroll" tabindex="0" role="region" aria-label="Situations and calls"><table><thead><tr><th scope="col">Situation</th><th scope="col">Calls</th></tr></thead><tbody>${rows}</tbody></table></div>\n`;
}

function scoredRows(plan: WeekPlan): readonly { readonly label: string; readonly calls: string }[] {
  const known = plan.scores.situations.filter(({ id, expectedSnaps }) => id !== ALL_SITUATIONS && expectedSnaps >= 1);
  return [...known]
    .sort((a, b) => b.expectedSnaps - a.expectedSnaps)
    .map(({ id }) => {
      const ranked = plan.scores.calls
        .filter((score) => score.situation === id && score.family !== 'base')
        .sort((a, b) => b.points.mean - a.points.mean);
      return {
        label: situationLabel(id),
        calls: ranked
          .slice(0, NAMED)
          .map(({ call, points }) => `${call} ${signed(points.mean)} (${signed(points.low)} to ${signed(points.high)})`)
          .join('; '),
      };
    })
    .filter(({ calls }) => calls !== '');
}
