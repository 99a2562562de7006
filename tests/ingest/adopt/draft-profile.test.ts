import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ColumnName } from '../../../src/game/columns.ts';
import { chartedCount, numberAt, textAt } from '../../../src/game/film.ts';
import { draftProfile } from '../../../src/ingest/adopt/draft-profile.ts';
import { findTable } from '../../../src/ingest/adopt/found-table.ts';
import { profileText } from '../../../src/ingest/adopt/profile-text.ts';
import { answerKey } from '../../../src/ingest/adopt/question.ts';
import { profileSchema } from '../../../src/ingest/profile.ts';
import { readSheet } from '../../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../../src/ingest/row-problem.ts';
import { readYaml } from '../../../src/ingest/yaml-file.ts';
import { INVENTED_COLUMNS, type InventedColumn, type InventedSnap, inventSnaps, sheetOf } from './invented-sheet.ts';

const draftOf = (text: string, answers: Readonly<Record<string, string>> = {}) =>
  draftProfile({
    table: findTable(text),
    kind: 'opponent',
    gameName: 'sheet',
    answers: new Map(Object.entries(answers).map(([key, value]) => [answerKey(key), value])),
  });

/** The sheet read through its drafted profile, as it stands in the coach's file. */
const adopt = (text: string, answers: Readonly<Record<string, string>> = {}) => {
  const draft = draftOf(text, answers);
  const profile = readYaml(profileText(draft, 'sheet.csv'), profileSchema, 'profile.yaml');
  if (profile.kind === 'problems') throw new Error(profile.problems.map(describeProblem).join('\n'));
  const bytes = new TextEncoder().encode(text);
  return { draft, reading: readSheet({ file: 'sheet.csv', bytes }, { kind: 'opponent', profile: profile.value }) };
};

const headersOf = (draft: ReturnType<typeof draftOf>) =>
  Object.fromEntries(draft.columns.map(({ column, header }) => [column, header]));

const SNAPS = inventSnaps();

/** What the invented columns hold, by their header. */
const MEANT: Readonly<Record<string, string>> = {
  game: 'Opp game',
  quarter: 'Qtr',
  clock: 'Time left',
  down: 'Dn',
  to_go: 'Dist',
  ball_on: 'Spot',
  hash: 'Hash mark',
  personnel: 'Pers',
  formation: 'Form',
  play_kind: 'R/P',
  concept: 'Play name',
  rushers_faced: 'Rush men',
  time_to_throw: 'Ball out',
  gain: 'Yds',
  result: 'Outcome',
};

/** Columns that their values alone give away. */
const EVIDENT = [
  'game',
  'quarter',
  'clock',
  'down',
  'to_go',
  'ball_on',
  'hash',
  'personnel',
  'gain',
  'time_to_throw',
  'result',
];

/** Whether a reading holds the very snaps that were written, as far as down, distance, place, gain and kind go. */
const holds = (reading: ReturnType<typeof adopt>['reading'], snaps: readonly InventedSnap[]) => {
  expect(reading.rejected.map(({ reasons }) => reasons)).toEqual([]);
  const at = (column: ColumnName, i: number) => numberAt(reading.chart, column, i) ?? textAt(reading.chart, column, i);
  const read = snaps.map((_, i) => [
    at('down', i),
    at('to_go', i),
    at('ball_on', i),
    at('gain', i),
    at('play_kind', i),
  ]);
  const meant = snaps.map((snap) => [snap.down, snap.toGo, snap.yards, snap.gain, snap.kind === 'R' ? 'run' : 'pass']);
  expect(read).toEqual(meant);
  expect(reading.chart.size).toBe(snaps.length);
};

const withColumn = (header: string, cell: InventedColumn[1], columns = INVENTED_COLUMNS) =>
  columns.map((column): InventedColumn => (column[0] === header ? [header, cell] : column));

describe('a profile drafted from an invented sheet', () => {
  it('finds every column and asks nothing', () => {
    const { draft, reading } = adopt(sheetOf(SNAPS));
    expect(headersOf(draft)).toEqual(MEANT);
    expect(draft.questions).toEqual([]);
    holds(reading, SNAPS);
    expect(chartedCount(reading.chart, 'result')).toBe(SNAPS.length);
  });

  it('gives the same bytes for the same sheet', () => {
    const text = sheetOf(SNAPS);
    expect(profileText(draftOf(text), 'a.csv')).toBe(profileText(draftOf(text), 'a.csv'));
  });

  it('does not depend on the order of the columns', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...INVENTED_COLUMNS], { minLength: INVENTED_COLUMNS.length }), (columns) => {
        expect(headersOf(draftOf(sheetOf(SNAPS, columns)))).toEqual(MEANT);
      }),
      { numRuns: 8 },
    );
  });

  it('finds what the values give away under headers that mean nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), (seed) => {
        const snaps = inventSnaps({ seed });
        const columns = INVENTED_COLUMNS.map(
          ([, cell], i): InventedColumn => [`zq${String.fromCharCode(97 + i)}`, cell],
        );
        const found = headersOf(draftOf(sheetOf(snaps, columns)));
        const meant = INVENTED_COLUMNS.map(([header], i) => [header, `zq${String.fromCharCode(97 + i)}`]);
        const byHeader = new Map(meant.map(([header = '', name = '']) => [header, name]));
        for (const column of EVIDENT) expect(found[column], column).toBe(byHeader.get(MEANT[column] ?? ''));
      }),
      { numRuns: 8 },
    );
  });
});

describe('a drafted profile survives', () => {
  const plain = sheetOf(SNAPS);
  const [header = '', ...rows] = plain.trimEnd().split('\n');
  const blanks = ','.repeat(INVENTED_COLUMNS.length - 1);

  it('merged title rows above the header', () => {
    const { reading } = adopt(
      `Scouting of Harrow Creek (invented)${blanks}\n${blanks}\nSITUATION,,,,,PLAY${blanks.slice(5)}\n${plain}`,
    );
    holds(reading, SNAPS);
  });

  it('totals at the bottom, with numbers in them', () => {
    const cells = Array.from({ length: INVENTED_COLUMNS.length }, (_, i) => (i === 0 ? 'Total' : '2'));
    const { draft, reading } = adopt(`${plain}${cells.join(',')}\nAverage,,,2.1,7.3${blanks.slice(4)}\n`);
    expect(draft.profile.drop_when).toEqual([{ header: 'Opp game', is: ['Average', 'Total'] }]);
    holds(reading, SNAPS);
  });

  it('headers repeated on every printed page, and notes between snaps', () => {
    const pages = [rows.slice(0, 40), rows.slice(40, 80), rows.slice(80)].map((page) => [header, ...page].join('\n'));
    const { reading } = adopt(`${pages.join(`\nsecond half${blanks}\n`)}\n`);
    holds(reading, SNAPS);
  });

  it('two plays in one row', () => {
    const game = INVENTED_COLUMNS.slice(0, 1);
    const others = INVENTED_COLUMNS.slice(1);
    const heads = [...game, ...others, ...others].map(([name]) => name);
    const lines = SNAPS.filter((_, i) => i % 2 === 0).map((snap, i) => {
      const next = SNAPS[2 * i + 1] ?? snap;
      return [
        ...game.map(([, cell]) => cell(snap, 0)),
        ...others.map(([, cell]) => cell(snap, 0)),
        ...others.map(([, cell]) => cell(next, 0)),
      ].join(',');
    });
    const { draft, reading } = adopt(`${[heads.join(','), ...lines].join('\n')}\n`);
    expect(draft.profile.side_by_side).toEqual({ first: 'B', width: '14', snaps: '2' });
    holds(reading, SNAPS);
  });

  it('decimal commas in a sheet with semicolons', () => {
    const columns = withColumn('Ball out', ({ time }) => time.replace('.', ','));
    const { reading } = adopt(sheetOf(SNAPS, columns, ';'));
    holds(reading, SNAPS);
    const timed = SNAPS.findIndex(({ time }) => time !== '');
    expect(numberAt(reading.chart, 'time_to_throw', timed)).toBe(Number(SNAPS[timed]?.time));
  });

  it.each([
    ['3-10', ({ down, toGo }: InventedSnap) => `${down}-${toGo}`],
    ['3rd & 10', ({ down, toGo }: InventedSnap) => `${down}${['st', 'nd', 'rd', 'th'][down - 1]} & ${toGo}`],
    // A distance over 31 is no day; the spreadsheet leaves it as it is.
    [
      '10-Mar',
      ({ down, toGo }: InventedSnap) =>
        toGo > 28 ? `${down}-${toGo}` : `${toGo}-${['Jan', 'Feb', 'Mar', 'Apr'][down - 1]}`,
    ],
    [
      '2026-03-10',
      ({ down, toGo }: InventedSnap) =>
        toGo > 28 ? `${down}-${toGo}` : `2026-0${down}-${String(toGo).padStart(2, '0')}`,
    ],
  ])('down and distance in one cell, as in %s', (_, cell) => {
    const columns = [...INVENTED_COLUMNS.filter(([name]) => name !== 'Dn' && name !== 'Dist'), ['Sit', cell] as const];
    const { draft, reading } = adopt(sheetOf(SNAPS, columns));
    expect([headersOf(draft)['down'], headersOf(draft)['to_go']]).toEqual(['Sit', 'Sit']);
    holds(reading, SNAPS);
  });

  it.each([
    ['own 35', (yards: number) => (yards > 50 ? `own ${100 - yards}` : yards === 50 ? '50' : `opp ${yards}`)],
    ['yards to the goal line', (yards: number) => String(yards)],
    ['yards from the own goal line', (yards: number) => String(100 - yards)],
    ['-35', (yards: number) => String(yards > 50 ? -(100 - yards) : yards)],
    ['PLW 35', (yards: number) => (yards > 50 ? `HC ${100 - yards}` : yards === 50 ? '50' : `PLW ${yards}`)],
    [
      'a team with a month for a short name: Mar-10',
      (yards: number) => (yards > 50 ? `${100 - yards}-Mar` : yards === 50 ? '50' : `PLW ${yards}`),
    ],
  ])('ball positions written as %s', (_, write) => {
    const columns = withColumn('Spot', ({ yards }) => write(yards));
    holds(adopt(sheetOf(SNAPS, columns)).reading, SNAPS);
  });

  it('a column of notes, and one of dates', () => {
    const columns = [
      ...INVENTED_COLUMNS,
      ['Remark', (_: InventedSnap, i: number) => (i % 9 === 0 ? `watch the left side here ${i}` : '')] as const,
      ['Day', ({ game }: InventedSnap) => (game.endsWith('1') ? '2026-09-04' : '2026-09-11')] as const,
    ];
    const { draft, reading } = adopt(sheetOf(SNAPS, columns));
    expect(headersOf(draft)).toEqual({ ...MEANT, note: 'Remark' });
    expect(draft.unread).toEqual(['Day']);
    holds(reading, SNAPS);
  });

  it('kicks and codes for nothing', () => {
    const kick = 'Harrow Creek 2,4,0:05,4,8,-30,M,?,Anvil,Punt,,,,0,';
    const { draft, reading } = adopt(`${plain}${kick}\n`);
    expect(draft.profile.drop_when).toEqual([{ header: 'R/P', is: ['Punt'] }]);
    expect(draft.profile.not_charted).toEqual(['?']);
    holds(reading, SNAPS);
  });

  it('tabs, and no header row at all', () => {
    holds(adopt(sheetOf(SNAPS, INVENTED_COLUMNS, '\t')).reading, SNAPS);
    holds(adopt(`${rows.join('\n')}\n`).reading, SNAPS);
  });
});

describe('what the values do not tell is asked', () => {
  it('an unknown code, with our words as choices, and the answer settles it', () => {
    const columns = withColumn('R/P', ({ kind, concept }) => (concept === 'slip' ? 'Z' : kind));
    const text = sheetOf(SNAPS, columns);
    const { draft } = adopt(text);
    const question = draft.questions.find(({ key }) => key === 'play_kind/Z');
    expect(question).toMatchObject({ guess: undefined });
    expect(question?.choices).toContain('screen');
    const answered = adopt(text, { 'play_kind/z': 'screen' });
    expect(answered.draft.questions).toEqual([]);
    const slip = SNAPS.findIndex(({ concept }) => concept === 'slip');
    expect(textAt(answered.reading.chart, 'play_kind', slip)).toBe('screen');
  });

  it('a code again when its answer is not one of our words', () => {
    const text = sheetOf(
      SNAPS,
      withColumn('R/P', ({ kind, concept }) => (concept === 'slip' ? 'Z' : kind)),
    );
    expect(draftOf(text, { 'play_kind/Z': 'somersault' }).questions.map(({ key }) => key)).toEqual(['play_kind/Z']);
  });

  it('a needed column that nothing looks like, and the answer names it', () => {
    const columns = withColumn('R/P', ({ kind }) => (kind === 'R' ? 'hob' : 'nix')).map(
      ([name, cell]): InventedColumn => (name === 'R/P' ? ['zz', cell] : [name, cell]),
    );
    const text = sheetOf(
      SNAPS,
      columns.filter(([name]) => name !== 'Outcome'),
    );
    const draft = draftOf(text);
    expect(draft.questions.map(({ key }) => key)).toContain('find/play_kind');
    const next = draftOf(text, { 'find/play_kind': 'zz' });
    expect(next.questions.map(({ key }) => key)).toEqual(expect.arrayContaining(['play_kind/hob', 'play_kind/nix']));
    const { reading } = adopt(text, { zz: 'play_kind', 'play_kind/hob': 'run', 'play_kind/nix': 'pass' });
    holds(reading, SNAPS);
  });

  it('a game when no column names one, with the name of the file as a guess', () => {
    const snaps = inventSnaps({ games: 1 });
    const { draft, reading } = adopt(sheetOf(snaps, INVENTED_COLUMNS.slice(1)), { 'all/game': 'week 3' });
    expect(draft.questions).toEqual([]);
    expect(textAt(reading.chart, 'game', 0)).toBe('week 3');
    expect(draftOf(sheetOf(snaps, INVENTED_COLUMNS.slice(1))).questions).toMatchObject([
      { key: 'all/game', guess: 'sheet' },
    ]);
  });

  it('what a yes under motion means, and a column may be left out', () => {
    const columns = [
      ...INVENTED_COLUMNS,
      ['Motion', (_: InventedSnap, i: number) => (i % 3 === 0 ? 'Y' : 'N')] as const,
    ];
    const text = sheetOf(SNAPS, columns);
    const open = draftOf(text);
    expect(open.questions).toMatchObject([{ key: 'motion/Y', guess: undefined }]);
    expect(open.questions[0]?.text).toContain('Until you say, motion is left out: no share of it could be right.');
    for (const profile of [open.profile, draftOf(text, { 'motion/Y': 'not charted' }).profile]) {
      expect(profile.columns?.motion).toEqual({ header: 'Motion', words: { N: 'not charted', Y: 'not charted' } });
    }
    expect(draftOf(text, { 'motion/Y': 'fast' }).profile.columns?.motion).toEqual({
      header: 'Motion',
      words: { N: 'none', Y: 'fast' },
    });
    expect(headersOf(draftOf(text, { Motion: 'not read' }))['motion']).toBeUndefined();
  });

  it('answers that fit nothing are named', () => {
    expect(draftOf(sheetOf(SNAPS), { nonsense: 'down', Dn: 'no such column' }).strayAnswers).toEqual([
      'nonsense',
      'dn',
    ]);
  });
});
