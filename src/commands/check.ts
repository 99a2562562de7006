import { describeGroup, groupProblems } from '../ingest/row-problem.ts';
import type { SoundnessFault } from '../pressure/soundness/fault.ts';
import { counted } from '../report/words/number-words.ts';
import { faultInWords } from '../report/words/soundness-words.ts';
import { type RowFindings, readWeek, type WeekInputs, type WeekReading } from '../season/read-week.ts';
import { readSeasonFolder, type SeasonFolder } from '../season/season-folder.ts';
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
  const folder = await readSeasonFolder(diskWeek(weekFolder));
  const reading = await readWeek(folder);
  terminal.out(options.json ? checkJson(reading) : checkText(reading, folder));
  return faultCount(reading.week) > 0 ? EXIT.faults : EXIT.fine;
}

function faultCount({ faults, fileFaults, menuProblems, soundness }: WeekInputs): number {
  return faults + fileFaults + menuProblems.length + unsoundCalls(soundness).length;
}

function unsoundCalls(soundness: readonly SoundnessFault[]): readonly string[] {
  return [...new Set(soundness.filter(({ declared }) => !declared).map(({ call }) => call))];
}

function checkJson({ week, found: { problems } }: WeekReading): string {
  const { film, menuProblems, unknownFormations, unread } = week;
  const soundness = week.soundness.map(faultInWords);
  const result = { film, problems, menuProblems, soundness, unknownFormations, unread, faults: faultCount(week) };
  return `${JSON.stringify(result, null, 2)}\n`;
}

function checkText({ week, found }: WeekReading, folder: SeasonFolder): string {
  const formations = formationText(week.unknownFormations);
  const parts = [problemText(week, found), soundnessText(week.soundness), formations, chartedText(week, folder)];
  return [...parts, verdictText(week)].filter(Boolean).join('\n');
}

function problemText(week: WeekInputs, { problems }: RowFindings): string {
  const { groups, restGroups, restProblems } = groupProblems(problems, LISTED);
  const lines = groups.map(
    (group) => `${group.problem.severity === 'fault' ? 'fault   ' : 'warning '} ${describeGroup(group)}`,
  );
  if (restGroups > 0) lines.push(`… and ${restProblems} more of ${restGroups} other kinds`);
  const menu = week.menuProblems.map((line) => `fault    ${line}`);
  const notes = [...week.unread, ...week.tallyNotes, ...week.ownProblems].map((line) => `warning  ${line}`);
  const head = `${week.opponent} snaps read: ${week.chart.size}; rows kept out of the numbers: ${week.faults}; warnings: ${week.film.warnings}.`;
  return `${[...menu, ...lines, ...notes, head].join('\n')}\n`;
}

/** What makes a call unsound, each; what calls give up on purpose, in one line. */
function soundnessText(soundness: readonly SoundnessFault[]): string {
  const unsound = soundness.filter(({ declared }) => !declared);
  const given = soundness.length - unsound.length;
  const lines = unsound
    .map(faultInWords)
    .map(({ call, rule, words }) => `fault    defense.yaml, ${call}, ${rule}: ${words}`);
  const calls = new Set(soundness.filter(({ declared }) => declared).map(({ call }) => call)).size;
  if (given > 0)
    lines.push(`Given up on purpose: ${given} things in ${calls} calls; "pressure-plan check --json" lists them.`);
  return lines.length === 0 ? '' : `${lines.join('\n')}\n`;
}

/** What to do next, last. */
function verdictText(week: WeekInputs): string {
  const { faults, fileFaults, menuProblems, soundness, film } = week;
  const all = [
    { count: faults, one: 'row is out of the numbers', many: 'rows are out of the numbers' },
    { count: fileFaults, one: 'file cannot be read as it is', many: 'files cannot be read as they are' },
    { count: menuProblems.length, one: 'call of week.yaml cannot be used', many: 'calls of week.yaml cannot be used' },
    { count: unsoundCalls(soundness).length, one: 'call is unsound', many: 'calls are unsound' },
  ];
  const found = all.filter(({ count }) => count > 0).map(({ count, one, many }) => counted(count, one, many));
  const warned = film.warnings + week.unread.length + week.ownProblems.length + week.tallyNotes.length;
  const warnings = warned === 0 ? 'no warnings' : counted(warned, 'warning', 'warnings');
  if (found.length === 0) return `Ready for the report: no faults, ${warnings}.\n`;
  return `Mend first: ${found.join('; ')} (${warnings}).\n`;
}

function chartedText({ film }: WeekInputs, { profileFile }: SeasonFolder): string {
  const rows = film.columns.map(({ column, charted, snaps, of }) => [
    column,
    `${charted} of ${snaps} ${of}`,
    snaps === 0 ? '' : `${Math.round((100 * charted) / snaps)}%`,
  ]);
  const through = profileFile === null ? '' : ` (through ${profileFile.file})`;
  return `Charted${through}:\n${tableText(['column', 'on', 'share'], rows)}`;
}
