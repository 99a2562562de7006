import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { adopt } from '../../src/commands/adopt.ts';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { numberAt, textAt } from '../../src/game/film.ts';
import { readWeek } from '../../src/season/read-week.ts';
import { readSeasonFolder } from '../../src/season/season-folder.ts';
import { coachSheets } from '../ingest/adopt/coach-sheets.ts';
import { INVENTED_COLUMNS, type InventedSnap, inventSnaps, sheetOf } from '../ingest/adopt/invented-sheet.ts';
import { makeWorkbook, type WorkbookCell } from '../ingest/make-workbook.ts';

let season = '';
beforeAll(() => {
  season = mkdtempSync(join(tmpdir(), 'adopt-kinds-'));
});
afterAll(() => rmSync(season, { recursive: true }));

/** A week that holds nothing but this sheet, adopted with these answers, and read as check and report read it. */
async function adoptedWeek(sheet: string | Uint8Array, { name = 'opponent.csv', answers = {} } = {}) {
  const week = join(mkdtempSync(join(season, 'season-')), 'week-01');
  mkdirSync(week);
  writeFileSync(join(week, name), sheet);
  const out: string[] = [];
  const terminal = { out: (text: string) => void out.push(text), note: () => undefined, progress: () => undefined };
  const answer = Object.entries(answers).map(([key, value]) => `${key}=${value}`);
  const code = await adopt(join(week, name), { answer }, { ...terminal, today: '2026-11-25' });
  return { code, text: out.join(''), week: (await readWeek(await readSeasonFolder(diskWeek(week)))).week };
}

type AdoptedWeek = Awaited<ReturnType<typeof adoptedWeek>>;

const SNAPS = inventSnaps({ games: 3 });
const PLAIN = sheetOf(SNAPS);
const [HEADER = '', ...ROWS] = PLAIN.trimEnd().split('\n');
const BLANKS = ','.repeat(INVENTED_COLUMNS.length - 1);
const NO_SPOT = INVENTED_COLUMNS.filter(([header]) => !['Dn', 'Dist', 'Spot'].includes(header));

/** Two snaps in one row; a third column of games would be the same, so the game stands once. */
function twoInARow(): string {
  const [game, ...others] = INVENTED_COLUMNS;
  const lines = SNAPS.filter((_, i) => i % 2 === 0).map((snap, i) => {
    const pair = [snap, SNAPS[2 * i + 1] ?? snap];
    return [game?.[1](snap, 0), ...pair.flatMap((one) => others.map(([, cell]) => cell(one, 0)))].join(',');
  });
  const heads = [game, ...others, ...others].map((column) => column?.[0]).join(',');
  return `${[heads, ...lines].join('\n')}\n`;
}

/** A workbook with a title across all columns, as merged cells are kept: a text, then nothing. */
function mergedWorkbook(): Uint8Array {
  const cells = [HEADER, ...ROWS].map((line, i) =>
    line.split(',').map((text): WorkbookCell => (i > 0 && /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text)),
  );
  const merged = INVENTED_COLUMNS.map((_, i): WorkbookCell => (i === 0 ? 'Harrow Creek, an invented school' : null));
  const groups = INVENTED_COLUMNS.map((_, i): WorkbookCell => ({ 1: 'Situation', 8: 'Play' })[i] ?? null);
  return makeWorkbook([[merged, [], groups, ...cells, ['Total', 180]]]);
}

/** Down and distance as a workbook keeps 3-10 that became 10 March: the number of a day. */
function datedWorkbook(): Uint8Array {
  const dayOf = ({ down, toGo }: InventedSnap) => Date.UTC(2026, down - 1, toGo) / 86_400_000 + 25_569;
  const rows = SNAPS.map((snap, i): WorkbookCell[] => [
    snap.toGo > 28 ? `${snap.down}-${snap.toGo}` : { date: dayOf(snap) },
    snap.yards,
    ...NO_SPOT.map(([, cell]) => cell(snap, i)),
  ]);
  return makeWorkbook([[['Sit', 'YTG', ...NO_SPOT.map(([header]) => header)], ...rows]]);
}

const KINDS: readonly (readonly [string, string | Uint8Array, string?])[] = [
  ['merged title rows', `Scouting (invented)${BLANKS}\n${BLANKS}\nSITUATION,,,,,PLAY${BLANKS.slice(5)}\n${PLAIN}`],
  ['totals at the bottom', `${PLAIN}Total,,,${'2,'.repeat(11)}2\nAverage,,,2.1${BLANKS.slice(3)}\n`],
  ['headers on every page', `${[HEADER, ...ROWS.slice(0, 70), HEADER, ...ROWS.slice(70)].join('\n')}\n`],
  ['two snaps in one row', twoInARow()],
  ['decimal commas', sheetOf(SNAPS, INVENTED_COLUMNS, ';').replaceAll(/(\d)\.(\d)/g, '$1,$2')],
  [
    'notes between snaps and beside them',
    `${[HEADER, ...ROWS.slice(0, 70), `rain from here on${BLANKS}`, ...ROWS.slice(70)].join('\n')}\n`,
  ],
  ['tabs', sheetOf(SNAPS, INVENTED_COLUMNS, '\t'), 'opponent.tsv'],
  ['a workbook with merged titles and a total', mergedWorkbook(), 'opponent.xlsx'],
  ['a workbook with downs that became dates', datedWorkbook(), 'opponent.xlsx'],
];

const seen = ({ week }: AdoptedWeek) =>
  Array.from({ length: week.chart.size }, (_, i) => [
    ...(['down', 'to_go', 'ball_on', 'gain', 'time_to_throw'] as const).map((name) => numberAt(week.chart, name, i)),
    textAt(week.chart, 'play_kind', i),
  ]);

describe('an invented sheet that is adopted goes straight through', () => {
  it.each(KINDS.map(([kind, sheet, name]) => ({ kind, sheet, name })))('$kind', async ({ sheet, name }) => {
    const adopted = await adoptedWeek(sheet, name === undefined ? {} : { name });
    expect(adopted.code).toBe(0);
    expect(adopted.text).toContain('No questions are left');
    expect([adopted.week.faults, adopted.week.fileFaults]).toEqual([0, 0]);
    expect(seen(adopted)).toEqual(
      SNAPS.map(({ down, toGo, yards, gain, time, kind }) => [
        ...[down, toGo, yards, gain, time === '' ? undefined : Number(time)],
        kind === 'R' ? 'run' : 'pass',
      ]),
    );
  });

  it.each(coachSheets().map((sheet) => [sheet.name, sheet] as const))('%s', async (_, { text, answers, snaps }) => {
    const adopted = await adoptedWeek(text, { answers: { ...answers, 'all/game': 'week 1' } });
    expect([adopted.code, adopted.week.faults, adopted.week.fileFaults]).toEqual([0, 0, 0]);
    expect(adopted.week.chart.size).toBe(snaps.length);
  });
});
