#!/usr/bin/env node
import { Command, CommanderError, Option } from 'commander';
import { EXIT } from './commands/exit-code.ts';
import { optimizeLate } from './commands/optimize-late.ts';
import { processTerminal } from './commands/terminal.ts';
import { cannotWrite, writeOut } from './commands/write-out.ts';
import { UserProblem } from './season/user-problem.ts';
import { VERSION } from './season/version.ts';

optimizeLate(process.versions.node);
const terminal = processTerminal();
const json = new Option('--json', 'print the result as JSON on standard output');
const examples = `
Examples:
  pressure-plan new season                      a season folder with commented templates
  pressure-plan desk season                     the whole tool in one page: open it in a browser
  pressure-plan calls season                    every call as a drawing, and whether it is sound
  pressure-plan check season/week-09            every fault in the week's files, in one run
  pressure-plan report season/week-09           Sunday's report, call sheet and tip sheet
  pressure-plan tendency season/week-09 --of screen --when third_long --by receivers
  pressure-plan script season/week-09           Tuesday's practice script
  pressure-plan halftime season/week-09 --live season/week-09/live.csv
  pressure-plan review season/week-09           Monday's review and the season page
  pressure-plan backtest season/week-09         how the forecast would have done on their past games
  pressure-plan demo                            an invented season to try it on

Exit codes: 0 fine, 1 faults in the data (what could be made was made), 2 wrong usage, 70 a bug in Pressure Plan.
No network, no telemetry: it reads the folder you name and writes into that week's out folder.
Guidance only: rules and contact limits belong to your state association and licensed athletic trainers.`;

const program = new Command('pressure-plan')
  .description("Plans a defensive coordinator's pressure week from a few charted games.")
  .version(VERSION, '-v, --version')
  .addHelpText('after', examples)
  .showHelpAfterError('(pressure-plan --help shows how it is used)')
  .exitOverride()
  .configureOutput({ writeOut });

program
  .command('new')
  .description('make a season folder with commented templates, or its next week')
  .argument('<folder>', 'where to make it, or the season that gets a further week')
  .option('--week <number>', 'week folder to make', '1')
  .action(async (folder, options) =>
    finish(await (await import('./commands/new.ts')).newSeason(folder, options, terminal)),
  );

program
  .command('desk')
  .description('write the desk, the whole tool in one page for a browser, into a season folder')
  .argument('[season]', 'season folder', '.')
  .action(async (season) => finish(await (await import('./commands/desk.ts')).desk(season, terminal)));

program
  .command('check')
  .description('list every fault of the week and season files, and unsound calls')
  .argument('<week>', 'folder of the week')
  .addOption(json)
  .action(async (week, options) => {
    terminal.note(`Checking ${week}`);
    finish(await (await import('./commands/check.ts')).check(week, options, terminal));
  });

program
  .command('adopt')
  .description('draft a profile for a sheet with other headers, from its values, and ask what they do not tell')
  .argument('<sheet>', 'a .csv, .tsv or .xlsx sheet; - for text on standard input')
  .option('--kind <kind>', 'opponent or own; by default own for a file named ours…')
  .option(
    '--answer <key=value>',
    'answer a question; may be given again',
    (text, before: string[]) => [...before, text],
    [],
  )
  .option('--answers <file>', 'a YAML file of answers, key: value')
  .option('-o, --output <place>', 'the profile to write, or its folder, instead of profile.yaml beside the sheet')
  .addOption(json)
  .action(async (sheet, options) => {
    terminal.note(`Adopting ${sheet}`);
    finish(await (await import('./commands/adopt.ts')).adopt(sheet, options, terminal));
  });

program
  .command('dictionary')
  .description('what every column means and may hold')
  .addOption(json)
  .action(async (options) => finish(await (await import('./commands/dictionary.ts')).dictionary(options, terminal)));

program
  .command('tendency')
  .description('one question as a table with counts and intervals')
  .argument('<week>', 'folder of the week')
  .requiredOption('--of <what>', 'what is counted: an answer (screen), or column=word (slide=left)')
  .option('--when <situation...>', 'situations (third_long) or column=word conditions; all must hold')
  .option('--by <column>', 'one row for each value of a column', 'situation')
  .option('--csv', 'print the rows as CSV')
  .addOption(json)
  .action(async (week, options) =>
    finish(await (await import('./commands/tendency.ts')).tendency(week, options, terminal)),
  );

program
  .command('report')
  .description("write the week's report, call sheet, tip sheet and wristband into its out folder")
  .argument('<week>', 'folder of the week')
  .option('-o, --output <folder>', 'write here instead of <week>/out')
  .option('--seed <number>', 'seed of every random draw, instead of the one in week.yaml')
  .option('--full', 'open every folded part of the report, so that everything prints')
  .option('--tables', 'write every table of the report as CSV into out/tables')
  .addOption(json)
  .action(async (week, options) => {
    terminal.note(`Reading ${week}`);
    finish(await (await import('./commands/report.ts')).report(week, options, terminal));
  });

program
  .command('script')
  .description('write the practice script and scout cards; contact over the limits is an error')
  .argument('<week>', 'folder of the week')
  .option('-o, --output <folder>', 'write here instead of <week>/out')
  .addOption(json)
  .action(async (week, options) => {
    terminal.note(`Scripting ${week}`);
    finish(await (await import('./commands/script.ts')).script(week, options, terminal));
  });

// The command's first name still works; it is not listed.
for (const command of [program.command('halftime'), program.command('adjust', { hidden: true })]) {
  command
    .description("bring Sunday's plan up to date with the snaps charted tonight; run it again after every series")
    .argument('<week>', 'folder of the week')
    .option('--live <file...>', 'sheets of live snaps, instead of the live….csv of the week')
    .option('-o, --output <folder>', 'write here instead of <week>/out')
    .addOption(json)
    .action(async (week, options) => {
      terminal.note(`Updating ${week}`);
      finish(await (await import('./commands/halftime.ts')).halftime(week, options, terminal));
    });
}

program
  .command('review')
  .description("judge Sunday's plan and our calls on the finished game, and bring the season page up to date")
  .argument('<week>', 'folder of the week')
  .option('-o, --output <folder>', 'write here instead of <week>/out')
  .addOption(json)
  .action(async (week, options) => {
    terminal.note(`Reviewing ${week}`);
    finish(await (await import('./commands/review.ts')).review(week, options, terminal));
  });

program
  .command('backtest')
  .description('replay past games: how every forecast would have done, beside the plain rates')
  .argument('<paths...>', 'week folders, sheets, or folders of sheets')
  .option('--profile <file>', 'how sheets outside week folders are read')
  .option('--games <number>', 'games before the one forecast to learn from, or "all"', '4')
  .option('--earlier-seasons', 'each path is one season, the earliest first; the archive is the seasons before')
  .option('--tells', 'look for tells before every game too, and for what became of them; it takes minutes as well')
  .option('--sample <games>', 'judge only so many games, drawn at random')
  .option('--seed <number>', 'seed of the sample')
  .option('--predictions <file>', 'write one line for every snap and target: what was forecast, what happened')
  .addOption(json)
  .action(async (paths, options) => {
    terminal.note(`Replaying ${paths.join(', ')}`);
    finish(await (await import('./commands/backtest.ts')).backtest(paths, options, terminal));
  });

program
  .command('agree')
  .description('compare two charts of the same game, the most disputed columns first')
  .argument('<first>', 'a charted sheet')
  .argument('<second>', 'another chart of the same game')
  .addOption(json)
  .action(async (first, second, options) => {
    terminal.note(`Comparing ${first} with ${second}`);
    finish(await (await import('./commands/agree.ts')).agree({ first, second }, options, terminal));
  });

program
  .command('calls')
  .description('draw every call of defense.yaml on one page: soundness, what each asks of whom, family and theory')
  .argument('<season>', 'folder of the season or of one week, or a defense.yaml')
  .option('-o, --output <folder>', 'write calls.html here instead of the out folder of the season')
  .addOption(json)
  .action(async (season, options) => {
    terminal.note(`Drawing the calls of ${season}`);
    finish(await (await import('./commands/calls.ts')).calls(season, options, terminal));
  });

program
  .command('counts')
  .description('write tallies of all scouted film as CSV, for others to use as base rates without the film')
  .argument('[week]', 'folder of the week')
  .option('--sql', 'print the SQL that makes the same tallies from a table of snaps on any engine')
  .option('--check <file>', 'say whether a file of tallies can be used, and what it holds')
  .addHelpText(
    'after',
    `
Tallies of other staffs or a league go into the season's archive folder, in files with "counts" in their names; they
join the forecast as sums. An offense with film there too counts by its film alone. backtest tests film only.`,
  )
  .action(async (week, options) => {
    terminal.note(options.check === undefined ? `Counting the film of ${week ?? ''}` : `Checking ${options.check}`);
    finish(await (await import('./commands/counts.ts')).counts(week, options, terminal));
  });

program
  .command('demo')
  .description('copy the invented demo season and write its report')
  .option('-o, --output <folder>', 'where to put the season', 'pressure-plan-demo')
  .action(async (options) => {
    terminal.note('Copying the invented demo season');
    finish(await (await import('./commands/demo.ts')).demo(options, terminal));
  });

program
  .command('completion')
  .description('print what a shell needs to complete commands and flags')
  .argument('<shell>', 'bash, zsh or fish')
  .addHelpText('after', '\nFor example, once: pressure-plan completion bash >> ~/.bashrc')
  .action(async (shell) => finish((await import('./commands/completion.ts')).completion(shell, program, terminal)));

function finish(code: number): void {
  process.exitCode = code;
}

function failed(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.usage;
  if (error instanceof UserProblem) {
    terminal.note(error.message);
    return error.kind === 'usage' ? EXIT.usage : EXIT.faults;
  }
  terminal.note('This is a bug in Pressure Plan. Please report it with what follows:');
  terminal.note(error instanceof Error ? (error.stack ?? error.message) : String(error));
  return EXIT.bug;
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // A reader that has seen enough, as in `| head`, is not a fault.
  if (error.code === 'EPIPE') process.exit(EXIT.fine);
  terminal.note(cannotWrite(error));
  process.exit(EXIT.faults);
});
// Nobody hears a note that cannot be written; the result is still made.
process.stderr.on('error', () => undefined);

try {
  await program.parseAsync();
} catch (error) {
  process.exitCode = failed(error);
}
