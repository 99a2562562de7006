import { toCsv } from '../ingest/write-csv.ts';
import { contactLoad } from '../pressure/practice/contact.ts';
import { practiceScript } from '../pressure/practice/script.ts';
import type { PracticeScript } from '../pressure/practice/script-result.ts';
import { WHO_DECIDES } from '../report/practice/contact-caution.ts';
import { breachWords } from '../report/practice/contact-words.ts';
import { scriptRows } from '../report/practice/script-rows.ts';
import { ruleWords } from '../report/words/menu-words.ts';
import type { Listener, OutputFile, SeasonWeek } from './store.ts';
import { UserProblem } from './user-problem.ts';
import { type PlannedWeek, plannedWeek } from './week-plan-source.ts';

/** The week's practice script with its files, named as they are written into the week's out folder. */
export interface Practice {
  readonly script: PracticeScript;
  readonly pages: readonly OutputFile[];
}

/**
 * The week's practice script and scout cards from Sunday's plan; nothing is written.
 *
 * @throws UserProblem when the contact planned is over the limits, or there is no call or menu to script
 */
export async function practicePages(at: SeasonWeek, listener: Listener): Promise<Practice> {
  const planned = await plannedWeek(at, listener);
  const { week, plan } = planned;
  holdContact(planned);
  const { library, menu } = plan;
  if (!library) throw new UserProblem('faults', 'a script needs defense.yaml: the calls and who does what');
  if (menu?.kind !== 'menu') throw new UserProblem('faults', noMenu(planned));
  const script = practiceScript({
    chart: week.chart,
    library,
    settings: plan.settings,
    forecast: plan.forecast,
    scores: plan.scores,
    menu,
  });
  const { renderScript } = await import('../report/practice/render-script.ts');
  const head = {
    opponent: plan.opponent,
    us: plan.us,
    date: plan.settings.date ?? plan.date,
    invented: plan.film.invented,
  };
  return {
    script,
    pages: [
      { name: 'script.html', text: await renderScript(script, head) },
      { name: 'script.csv', text: toCsv(scriptRows(script)) },
    ],
  };
}

/** @throws UserProblem naming every day over a limit */
function holdContact({ plan }: PlannedWeek): void {
  const { days, contact_limits: limits } = plan.settings.practice;
  const { breaches } = contactLoad(days, limits);
  if (breaches.length === 0) return;
  const lines = breaches.map(breachWords);
  throw new UserProblem('faults', [...lines, 'Nothing was written.', WHO_DECIDES].join('\n'));
}

function noMenu({ plan }: PlannedWeek): string {
  if (plan.menu?.kind !== 'infeasible') return "Sunday's plan carries no menu, so there is nothing to script";
  return [
    'no menu keeps all the limits, so there is nothing to script; these clash:',
    ...plan.menu.clashing.map(ruleWords),
  ].join('\n');
}
