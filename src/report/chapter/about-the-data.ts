import { OPEN_DATA_ATTRIBUTION } from '../../pressure/evidence/open-data.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import { archiveTable, archiveUseTable } from '../view/archive-table.ts';
import type { Block, Chapter } from '../view/block.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

/** About the data: games, charted shares, faults, absent parts, sources, seed and version. */
export function aboutTheDataChapter(plan: WeekPlan): Chapter {
  return {
    id: 'data',
    title: 'About the data',
    short: 'Data',
    blocks: [
      { kind: 'prose', html: html`<p>${originSentence(plan)}</p>\n` },
      { kind: 'table', table: gamesTable(plan) },
      { kind: 'table', table: columnsTable(plan) },
      { kind: 'table', table: absentTable(plan) },
      ...archiveBlocks(plan),
      ...problemBlocks(plan),
      { kind: 'prose', html: html`<p>${`Open play data behind the families: ${OPEN_DATA_ATTRIBUTION}`}</p>\n` },
    ],
  };
}

/** Below this share of snaps a column is said to be patchy. */
const WELL_CHARTED = 0.95;

function originSentence({ film, seed, version, date, settings }: WeekPlan): string {
  const faults = `${counted(film.faults, 'row', 'rows')} kept out for faults, ${counted(film.warnings, 'warning', 'warnings')}`;
  return `Read from ${film.sources.join(', ')}: ${counted(film.snaps, 'snap', 'snaps')}, ${faults}. Level of play: ${settings.level.replaceAll('_', ' ')}. Seed ${seed}, version ${version}, ${date}. The same files, seed and version give the same page.`;
}

function gamesTable({ film }: WeekPlan): TableView {
  return {
    id: 'games-table',
    caption: 'Games charted',
    columns: [words('Game'), numbers('Snaps')],
    rows: film.games.map((game) => ({ name: game.game, cells: [numberCell(String(game.snaps), game.snaps)] })),
    empty: 'no game was charted',
  };
}

function columnsTable({ film }: WeekPlan): TableView {
  return {
    id: 'columns-table',
    caption: 'How much of each column was charted',
    columns: [words('Column'), numbers('Charted'), words('Reading')],
    rows: film.columns.map(({ column, charted, snaps }) => ({
      name: column,
      cells: [
        numberCell(chartedWords(charted, snaps), snaps === 0 ? -1 : charted / snaps),
        textCell(chartedReading(charted, snaps)),
      ],
    })),
    empty: 'no column was charted',
  };
}

function chartedWords(charted: number, snaps: number): string {
  return snaps === 0 ? 'no snaps' : `${charted} of ${snaps} (${percent(charted / snaps)})`;
}

function chartedReading(charted: number, snaps: number): string {
  if (charted === 0) return 'not charted';
  return charted < WELL_CHARTED * snaps
    ? 'patchy: every number made from it rests on the charted snaps only'
    : 'well charted';
}

function absentTable({ film }: WeekPlan): TableView {
  return {
    id: 'absent-table',
    caption: 'Parts of the season folder that were not there',
    columns: [words('Part'), words('What it would have added')],
    rows: film.absent.map((part) => ({ name: part.part, cells: [textCell(part.wouldAdd)] })),
    empty: 'everything was there',
  };
}

/** Without other offenses' film the table of absent parts has said so. */
function archiveBlocks({ archive }: WeekPlan): readonly Block[] {
  if (!archive || archive.offenseGames === 0) return [];
  const { offenses, offenseGames, snaps, level } = archive;
  const size = `${counted(offenseGames, 'game', 'games')} of ${counted(offenses.length, 'other offense', 'other offenses')}, ${counted(snaps, 'snap', 'snaps')}`;
  return [
    { kind: 'prose', html: html`<p>${`Base rates: ${size}; ${level}.`}</p>\n` },
    { kind: 'folded', summary: 'Whose snaps the base rates are, and how alike', table: archiveTable(archive) },
    { kind: 'folded', summary: 'What each question counts them for', table: archiveUseTable(archive) },
  ];
}

function problemBlocks({ film }: WeekPlan): readonly Block[] {
  if (film.problems.length === 0) return [];
  const items = film.problems.map((problem) => html`<li>${problem}</li>`);
  return [{ kind: 'prose', html: html`<p>What was wrong in the files:</p><ul>${items}</ul>\n` }];
}
