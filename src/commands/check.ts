import { describeGroup, groupProblems } from '../ingest/row-problem.ts';
import type { SoundnessFault } from '../pressure/protection/protection-result.ts';
import { checkLibrary } from '../pressure/soundness/soundness.ts';
import { readWeek, type WeekInputs } from '../season/read-week.ts';
import { readSeasonFolder } from '../season/season-folder.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { formationText } from './formation-text.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';

/** Groups of equal problems listed before the rest is only counted. */
const LISTED = 200;

/** Lists every fault and warning of the week's files, how much was charted, and what makes a call unsound. */
export async function check(
  weekFolder: string,
  options: { readonly json?: boolean },
  terminal: Terminal,
): Promise<number> {
  const week = await readWeek(await readSeasonFolder(diskWeek(weekFolder)));
  const soundness = week.library ? checkLibrary(week.library) : [];
  terminal.out(options.json ? checkJson(week, soundness) : checkText(week, soundness));
  const unsound = soundness.some((fault) => !fault.declared);
  return week.faults > 0 || week.fileFaults > 0 || unsound ? EXIT.faults : EXIT.fine;
}

function checkJson(week: WeekInputs, soundness: readonly SoundnessFault[]): string {
  const { unknownFormations, unread } = week;
  return `${JSON.stringify({ film: week.film, problems: week.problems, soundness, unknownFormations, unread }, null, 2)}\n`;
}

function checkText(week: WeekInputs, soundness: readonly SoundnessFault[]): string {
  const formations = formationText(week.unknownFormations);
  return [problemText(week), soundnessText(soundness), formations, chartedText(week)].filter(Boolean).join('\n');
}

function problemText(week: WeekInputs): string {
  const { groups, restGroups, restProblems } = groupProblems(week.problems, LISTED);
  const lines = groups.map(
    (group) => `${group.problem.severity === 'fault' ? 'fault   ' : 'warning '} ${describeGroup(group)}`,
  );
  if (restGroups > 0) lines.push(`… and ${restProblems} more of ${restGroups} other kinds`);
  const head = `${week.opponent} snaps read: ${week.chart.size}; rows kept out of the numbers: ${week.faults}; warnings: ${week.film.warnings}.`;
  return `${[...lines, ...[...week.unread, ...week.tallyNotes, ...week.ownProblems].map((line) => `warning  ${line}`), head].join('\n')}\n`;
}

function soundnessText(soundness: readonly SoundnessFault[]): string {
  if (soundness.length === 0) return '';
  const rows = soundness.map(({ call, rule, words, declared }) => [
    call,
    rule,
    declared ? 'given on purpose' : 'UNSOUND',
    words,
  ]);
  return `Calls against the soundness rules:\n${tableText(['call', 'rule', '', ''], rows)}`;
}

function chartedText({ film }: WeekInputs): string {
  const rows = film.columns.map(({ column, charted, snaps }) => [
    column,
    `${charted} of ${snaps}`,
    snaps === 0 ? '' : `${Math.round((100 * charted) / snaps)}%`,
  ]);
  return `Charted:\n${tableText(['column', 'snaps', 'share'], rows)}`;
}
