import type { SeasonPart, WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import { archiveTable, archiveUseTable } from '../view/archive-table.ts';
import { type Block, foldedTables } from '../view/block.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { gameDay } from '../words/game-day.ts';
import { levelWords } from '../words/level-words.ts';
import { counted } from '../words/number-words.ts';
import { shareWords } from '../words/share-words.ts';

/** About the data: games, charted shares, faults, absent parts, sources, seed and version. */
export function aboutTheDataBlocks(plan: WeekPlan): readonly Block[] {
  return [
    { kind: 'prose', html: html`<p>${originSentence(plan)}</p>\n` },
    { kind: 'table', table: gamesTable(plan) },
    { kind: 'table', table: columnsTable(plan) },
    ...absentBlocks(plan),
    ...archiveBlocks(plan),
    ...problemBlocks(plan),
  ];
}

/** Below this share of snaps a column is said to be patchy. */
const WELL_CHARTED = 0.95;

function originSentence({ film, seed, version, date, settings }: WeekPlan): string {
  const faults = `${counted(film.faults, 'row', 'rows')} left out for faults, ${counted(film.warnings, 'warning', 'warnings')}`;
  return `Read from ${film.sources.join(', ')}: ${counted(film.snaps, 'snap', 'snaps')}, ${faults}. Level of play: ${settings.level.replaceAll('_', ' ')}. Made ${gameDay(date)}, seed ${seed}, version ${version}. The same files, seed and version give the same page.`;
}

function gamesTable({ film }: WeekPlan): TableView {
  return {
    id: 'games-table',
    caption: 'Games charted',
    columns: [words('Game'), numbers('Snaps')],
    rows: film.games.map(({ game, snaps }) => ({
      name: game ?? 'not charted',
      cells: [numberCell(String(snaps), snaps)],
    })),
    empty: 'no game was charted',
  };
}

function columnsTable({ film }: WeekPlan): TableView {
  return {
    id: 'columns-table',
    caption: 'How much of each column was charted',
    columns: [words('Column'), numbers('Charted'), words('Reading')],
    rows: film.columns.map(({ column, charted, snaps, of }) => ({
      name: column,
      cells: [
        numberCell(chartedWords(charted, snaps, of), snaps === 0 ? -1 : charted / snaps),
        textCell(chartedReading(charted, snaps)),
      ],
    })),
    empty: 'no column was charted',
  };
}

function chartedWords(charted: number, snaps: number, of: string): string {
  const share = shareWords({ count: charted, trials: snaps });
  return of === 'passes' && snaps > 0 ? `${share}, passes only` : share;
}

function chartedReading(charted: number, snaps: number): string {
  if (charted === 0) return 'not charted';
  return charted < WELL_CHARTED * snaps ? 'patchy: numbers rest on the charted snaps only' : 'well charted';
}

function absentBlocks({ film }: WeekPlan): readonly Block[] {
  if (film.absent.length === 0) return [];
  const table: TableView = {
    id: 'absent-table',
    caption: 'Not in the season folder',
    columns: [words('Part'), words('What it would add')],
    rows: film.absent.map((part) => ({ name: PARTS[part].file, cells: [textCell(PARTS[part].wouldAdd)] })),
    empty: 'nothing',
  };
  return [{ kind: 'table', table }];
}

const PARTS: Readonly<Record<SeasonPart, { readonly file: string; readonly wouldAdd: string }>> = {
  weekFile: { file: 'week.yaml', wouldAdd: 'your own cut-offs, practice budget and menu limits; defaults were used' },
  library: {
    file: 'defense.yaml',
    wouldAdd: 'your calls: who comes free, the race, soundness, a menu and a call sheet',
  },
  ownFilm: { file: 'ours.csv', wouldAdd: 'your own results in the scores, and what your film gives away' },
  archive: { file: 'archive', wouldAdd: 'base rates of other opponents, which sharpen every forecast' },
};

/** Nothing without other offenses' film: the table of absent parts says so. */
function archiveBlocks({ archive }: WeekPlan): readonly Block[] {
  if (archive.offenseGames === 0) return [];
  const { offenses, offenseGames, snaps, level } = archive;
  const size = `${counted(offenseGames, 'game', 'games')} of ${counted(offenses.length, 'other offense', 'other offenses')}, ${counted(snaps, 'snap', 'snaps')}`;
  return [
    { kind: 'prose', html: html`<p>${`Other offenses: ${size}; ${levelWords(level)}.`}</p>\n` },
    foldedTables(
      'The other offenses, and what each question counts them for',
      archiveTable(archive),
      archiveUseTable(archive),
    ),
  ];
}

function problemBlocks({ film }: WeekPlan): readonly Block[] {
  if (film.problems.length === 0) return [];
  const items = film.problems.map((problem) => html`<li>${problem}</li>`);
  return [{ kind: 'prose', html: html`<p>What was wrong in the files:</p><ul>${items}</ul>\n` }];
}
