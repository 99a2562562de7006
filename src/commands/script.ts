import { join } from 'node:path';
import { toCsv } from '../ingest/write-csv.ts';
import { contactLoad } from '../pressure/practice/contact.ts';
import { WHO_DECIDES } from '../pressure/practice/contact-caution.ts';
import { practiceScript } from '../pressure/practice/script.ts';
import type { PracticeScript } from '../pressure/practice/script-result.ts';
import { scriptRows } from '../pressure/practice/script-rows.ts';
import { CommandProblem, EXIT } from './exit-code.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { type PlannedWeek, plannedWeek } from './week-plan-source.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the script command. */
export interface ScriptOptions {
  readonly output?: string;
  readonly json?: boolean;
}

/** Writes the week's practice script and scout cards; nothing when the contact planned is over the limits. */
export async function script(weekFolder: string, options: ScriptOptions, terminal: Terminal): Promise<number> {
  const planned = await plannedWeek(weekFolder, terminal);
  const { week, plan } = planned;
  holdContact(planned);
  const { library, menu } = plan;
  if (!library) throw new CommandProblem('faults', 'a script needs defense.yaml: the calls and who does what');
  if (menu?.kind !== 'menu') throw new CommandProblem('faults', noMenu(planned));
  const made = practiceScript({
    chart: week.chart,
    library,
    settings: plan.settings,
    forecast: plan.forecast,
    scores: plan.scores,
    menu,
  });
  const { renderScript } = await import('../report/script/render-script.ts');
  const head = {
    opponent: plan.opponent,
    us: plan.us,
    date: plan.settings.date ?? plan.date,
    invented: plan.film.invented,
  };
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), [
    { name: 'script.html', text: await renderScript(made, head) },
    { name: 'script.csv', text: toCsv(scriptRows(made)) },
  ]);
  terminal.out(options.json ? `${JSON.stringify(made, null, 2)}\n` : scriptText(made));
  for (const line of made.shortages) terminal.note(line);
  terminal.note(WHO_DECIDES);
  for (const path of written) terminal.note(`Wrote ${path}`);
  return EXIT.fine;
}

/** @throws CommandProblem naming every day over a limit */
function holdContact({ plan }: PlannedWeek): void {
  const { days, contact_limits: limits } = plan.settings.practice;
  const { breaches } = contactLoad(days, limits);
  if (breaches.length === 0) return;
  const lines = breaches.map(({ words }) => words);
  throw new CommandProblem('faults', [...lines, 'Nothing was written.', WHO_DECIDES].join('\n'));
}

function noMenu({ plan }: PlannedWeek): string {
  if (plan.menu?.kind !== 'infeasible') return "Sunday's plan carries no menu, so there is nothing to script";
  return ['no menu keeps all the limits, so there is nothing to script; these clash:', ...plan.menu.clashing].join(
    '\n',
  );
}

function scriptText({ calls, reps, cards, contact }: PracticeScript): string {
  const rows = calls.map((call) => [
    call.isNew ? `${call.call} (new)` : call.call,
    String(call.reps),
    String(call.asked),
    call.looks.map(({ look, reps: count }) => `${look} ${count}`).join(', '),
  ]);
  const head = `${reps.length} repetitions, ${cards.length} scout cards; full contact ${contact.weekMinutes} minutes on ${contact.contactDays} ${contact.contactDays === 1 ? 'day' : 'days'}`;
  return `${head}\n${tableText(['call', 'reps', 'asked', 'against'], rows)}`;
}
