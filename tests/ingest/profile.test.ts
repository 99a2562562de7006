import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ColumnName } from '../../src/game/columns.ts';
import { numberAt, type SnapRecord, textAt } from '../../src/game/film.ts';
import { type Profile, profileSchema } from '../../src/ingest/profile.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';

const profileOf = (text: string): Profile => {
  const reading = readYaml(text, profileSchema, 'profile.yaml');
  if (reading.kind === 'problems') throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value;
};
const faultsOf = (text: string): string[] => {
  const reading = readYaml(text, profileSchema, 'profile.yaml');
  return reading.kind === 'problems' ? reading.problems.map(describeProblem) : [];
};
const read = (sheet: string, profile: string) =>
  readSheet(
    { file: 'plays.csv', bytes: new TextEncoder().encode(sheet) },
    { kind: 'opponent', profile: profileOf(profile) },
  );
const cell = (reading: ReturnType<typeof read>, column: ColumnName, index = 0): SnapRecord[ColumnName] =>
  textAt(reading.chart, column, index) ?? numberAt(reading.chart, column, index);

const BASE = `
columns:
  game: { value: w1 }
  down: dn
  to_go: need
  ball_on: { header: spot, as: yards_to_goal }
  play_kind: { header: kind, words: { R: run, P: pass } }
`;
const SHEET = 'dn,need,spot,kind,extra\n1,10,65,R,?\n';
const withColumn = (line: string) => `${BASE}  ${line}\n`;
const sheetWith = (header: string, ...cells: string[]) =>
  `dn,need,spot,kind,${header}\n${cells.map((text) => `1,10,65,R,${text}\n`).join('')}`;

describe('reading a sheet through a profile', () => {
  it('maps headers, codes and constants, and lists what it does not read', () => {
    const reading = read(SHEET, BASE);
    expect(reading.problems).toEqual([]);
    expect([
      cell(reading, 'game'),
      cell(reading, 'down'),
      cell(reading, 'ball_on'),
      cell(reading, 'play_kind'),
    ]).toEqual(['w1', 1, 65, 'run']);
    expect(reading.unmapped).toEqual(['extra']);
  });

  it.each([
    { column: 'ball_on', as: 'yards_to_goal', text: '65', value: 65 },
    { column: 'ball_on', as: 'yards_to_goal', text: '50', value: 50 },
    { column: 'ball_on', as: 'yards_from_own_goal', text: '35', value: 65 },
    { column: 'ball_on', as: 'minus_is_own', text: '-35', value: 65 },
    { column: 'ball_on', as: 'minus_is_own', text: '20', value: 20 },
    { column: 'ball_on', as: 'minus_is_own', text: '+20', value: 20 },
    { column: 'ball_on', as: 'minus_is_own', text: '50', value: 50 },
    { column: 'ball_on', as: 'bare_is_opp', text: '20', value: 20 },
    { column: 'ball_on', as: 'bare_is_opp', text: 'O35', value: 65 },
    { column: 'ball_on', as: 'bare_is_own', text: '35', value: 65 },
    { column: 'ball_on', as: 'bare_is_own', text: '+20', value: 20 },
    { column: 'ball_on', as: 'bare_is_own', text: '50', value: 50 },
    { column: 'gain', as: 'figure', text: '(3)', value: -3 },
    { column: 'gain', as: 'figure', text: '+5', value: 5 },
    { column: 'gain', as: 'figure', text: '-3 yds', value: -3 },
    { column: 'gain', as: 'figure', text: 'loss of 4', value: -4 },
    { column: 'gain', as: 'figure', text: 'No gain', value: 0 },
    { column: 'gain', as: 'figure', text: '1 yd', value: 1 },
    { column: 'quarter', as: 'figure', text: 'Q2', value: 2 },
    { column: 'personnel', as: 'figure', text: '11 personnel', value: '11' },
    { column: 'personnel', as: 'figure', text: '21p', value: '21' },
    { column: 'checked', as: 'zero_one', text: '1', value: 'yes' },
    { column: 'checked', as: 'zero_one', text: '0', value: 'no' },
    { column: 'score_margin', as: 'plus', text: '+7', value: 7 },
    { column: 'score_margin', as: 'minus', text: '7', value: -7 },
    { column: 'score_margin', as: 'minus', text: '0', value: 0 },
    { column: 'clock', as: 'seconds', text: '462', value: 462 },
    { column: 'time_to_throw', as: 'seconds', text: '2.636', value: 2.636 },
  ] as const)('$column as $as reads $text as $value', ({ column, as, text, value }) => {
    const profile =
      column === 'ball_on'
        ? BASE.replace('as: yards_to_goal', `as: ${as}`)
        : withColumn(`${column}: { header: x, as: ${as} }`);
    const played = column === 'ball_on' ? SHEET.replace('65', text) : sheetWith('x', text);
    const sheet = column === 'time_to_throw' ? played.replace(',R,', ',P,') : played;
    const reading = read(sheet, profile);
    expect(reading.problems).toEqual([]);
    expect(cell(reading, column)).toBe(value);
  });

  it.each([
    ['yards_to_goal', '0'],
    ['yards_to_goal', '100'],
    ['yards_to_goal', '6.5'],
    ['minus_is_own', '51'],
    ['minus_is_own', 'own 5'],
  ])("refuses what %s cannot be: %j, with the sheet's own header", (as, text) => {
    const reading = read(SHEET.replace('65', text), BASE.replace('as: yards_to_goal', `as: ${as}`));
    expect(reading.chart.size).toBe(0);
    expect(reading.problems[0]).toMatchObject({ columnLetter: 'C', header: 'spot', found: text, severity: 'fault' });
  });

  it('takes a blank and the codes for nothing as not charted, never as no or 0', () => {
    const profile = `not_charted: [NA]\n${withColumn('checked: { header: x, as: zero_one, not_charted: ["9"] }')}`;
    const reading = read(sheetWith('x', '', '9', 'na', '0'), profile);
    expect(reading.problems).toEqual([]);
    expect([0, 1, 2, 3].map((i) => cell(reading, 'checked', i))).toEqual([undefined, undefined, undefined, 'no']);
  });

  it('takes a code outside the list as our word, or as not charted with a warning, or without one when told so', () => {
    const words = 'hash: { header: x, words: { 1: left, 3: not charted } }';
    const reading = read(sheetWith('x', '1', '3', 'right', '7'), withColumn(words));
    expect([0, 1, 2].map((i) => cell(reading, 'hash', i))).toEqual(['left', undefined, 'right']);
    expect(cell(reading, 'hash', 3)).toBeUndefined();
    expect([reading.rejected, reading.problems.map(describeProblem)]).toEqual([
      [],
      ['plays.csv, row 5, column E ("x"): "7" is not one of left, middle, right; the cell counts as not charted.'],
    ]);
    const lenient = read(sheetWith('x', '7'), withColumn(words.replace(' }', ' }, others: not charted')));
    expect(cell(lenient, 'hash')).toBeUndefined();
    expect(lenient.problems).toEqual([]);
  });

  it('keeps a personnel code as text', () => {
    const reading = read(sheetWith('x', '01', '1'), withColumn('personnel: { header: x, words: { 1: 01 } }'));
    expect([0, 1].map((i) => cell(reading, 'personnel', i))).toEqual(['01', '01']);
  });

  it('leaves rows out by keep_when and drop_when, and counts them', () => {
    const profile = `keep_when: { header: team, is: [HC, PLW] }\ndrop_when: [{ header: dn, is: 4 }, { header: need, at_least: 30 }]\n${BASE}`;
    const rows = ['1,10,65,R,HC', '4,1,65,R,HC', '1,10,65,R,VXY', '2,30,65,R,PLW', '2,3,65,R,plw'];
    const reading = read(`dn,need,spot,kind,team\n${rows.join('\n')}\n`, profile);
    expect([...reading.chart.rowOf]).toEqual([2, 6]);
    expect(reading.leftOut).toBe(3);
    expect(reading.rowsRead).toBe(5);
  });

  it('gives a column the word of the first rule that holds, and nothing when none does', () => {
    const rules = `
  concept: concept
  option_tag:
    rules:
      - { when: [{ header: concept, is: rpo pass }, { header: air, at_most: 5 }], use: run_pass }
      - { when: { header: concept, is_not: [rpo pass, x] }, use: none }
`;
    const sheet =
      'dn,need,spot,kind,concept,air\n1,10,65,R,RPO-Pass,5\n1,10,65,R,rpo pass,6\n1,10,65,R,rpo pass,\n1,10,65,R,mesh,\n1,10,65,R,,\n';
    const reading = read(sheet, BASE + rules.slice(1));
    expect([0, 1, 2, 3, 4].map((i) => cell(reading, 'option_tag', i))).toEqual([
      'run_pass',
      undefined,
      undefined,
      'none',
      undefined,
    ]);
  });

  it('names a header that the sheet does not have', () => {
    const optional = read(SHEET, withColumn('gain: gane'));
    expect(optional.problems).toMatchObject([{ severity: 'warning', found: 'gane' }]);
    expect(optional.chart.size).toBe(1);
    const required = read(SHEET.replace('need', 'needs'), BASE);
    expect(required.problems.map(({ suggestion }) => suggestion)).toContain('Did you mean "needs"?');
    expect(required.chart.size).toBe(0);
    const condition = read(SHEET, `keep_when: { header: tem, is: x }\n${BASE}`);
    expect(condition.problems).toMatchObject([{ severity: 'fault', found: 'tem' }]);
  });
});

describe('a profile file', () => {
  it.each([
    ['an unknown column', 'columns: { dwn: x }', /"dwn" is not a key here.*Did you mean "down"\?/],
    ['an unknown key', 'columns: { down: { hedder: x } }', /"hedder" is not a key here.*Did you mean "header"\?/],
    ['no source', 'columns: { down: {} }', /needs exactly one of header, value, rules or restarts/],
    ['two sources', 'columns: { down: { header: x, value: 1 } }', /needs exactly one of/],
    [
      'an unknown transform',
      'columns: { ball_on: { header: x, as: yards_to_gaol } }',
      /Did you mean "yards_to_goal"\?/,
    ],
    ['a transform that does not fit', 'columns: { down: { header: x, as: zero_one } }', /does not fit down/],
    ['a word we do not have', 'columns: { hash: { header: x, words: { 1: lft } } }', /is not one of left.*mean "left"/],
    ['a word of a rule we do not have', 'columns: { hash: { rules: [{ use: up }] } }', /is not one of left/],
    ['a condition that asks nothing', 'keep_when: { header: x }\ncolumns: {}', /asks nothing/],
    ['a bound that is no number', 'keep_when: { header: x, at_least: ten }\ncolumns: {}', /is not a number/],
  ])('says what is wrong with %s', (_, text, says) => {
    expect(faultsOf(text).join('\n')).toMatch(says);
  });

  it.each(['league-2022', 'own-2022'])('the example %s is sound', (name) => {
    const text = readFileSync(new URL(`profiles/${name}.yaml`, import.meta.url), 'utf8');
    expect(Object.keys(profileOf(text).columns)).toContain('ball_on');
  });
});

describe('one of our columns that stands in two of the sheet', () => {
  const joined = (line: string, cells: string) =>
    read(`dn,need,kind,a,b\n1,10,R,${cells}\n`, `${BASE.replace(/ {2}ball_on.*\n/, '')}  ${line}\n`);

  it.each([
    ['ball_on: { header: b, with: a }', 'OWN,35', 65],
    ['ball_on: { header: b, with: a }', '+,20', 20],
    ['ball_on: { header: b, with: a }', ',50', 50],
    ['ball_on: { header: b, with: a, sides: { HC: own, PLW: opp } }', 'HC,35', 65],
    ['ball_on: { header: b, with: a, sides: { HC: own, PLW: opp } }', 'plw,20', 20],
  ] as const)('%s reads %s as %d yards to the goal line', (line, cells, yards) => {
    const reading = joined(line, cells);
    expect(reading.problems).toEqual([]);
    expect(cell(reading, 'ball_on')).toBe(yards);
  });

  it.each([
    ['clock: { header: a, with: b }', '7,5', 425],
    ['clock: { header: a, with: b }', '7,', undefined],
    ['score_margin: { header: a, with: b }', '14,21', -7],
    ['score_margin: { header: a, with: b }', '14,', undefined],
  ] as const)('%s reads %s as %s', (line, cells, value) => {
    const reading = joined(`ball_on: { value: own 35 }\n  ${line}`, cells);
    expect(reading.problems).toEqual([]);
    expect(cell(reading, line.startsWith('clock') ? 'clock' : 'score_margin')).toBe(value);
  });

  it('names both headers, and what they hold, when they cannot be read', () => {
    const [problem] = joined('ball_on: { header: b, with: a }', 'PLW,35').problems;
    expect(problem).toMatchObject({ header: 'b with a', found: 'PLW 35', severity: 'fault' });
    expect(joined('ball_on: { header: b, with: zz }', 'OWN,35').problems.map(describeProblem).join('\n')).toContain(
      'zz',
    );
  });

  it('goes with columns that can be split, and with a header', () => {
    expect(faultsOf('columns:\n  hash: { header: x, with: y }\n').join()).toContain('ball_on, clock, score_margin');
    expect(faultsOf('columns:\n  ball_on: { value: own 35, with: y }\n').join()).toContain('goes with the header');
  });
});

describe('pairs that a spreadsheet took for dates', () => {
  const PAIRS = `
columns:
  game: { value: w1 }
  down: { header: dd, as: first_of_pair, dates: DATES }
  to_go: { header: dd, as: second_of_pair, dates: DATES }
  ball_on: { value: own 35 }
  play_kind: { header: kind, words: { R: run } }
`;
  it.each<readonly [string, string, readonly number[]]>([
    ['plain', '10-Mar', [3, 10]],
    ['plain', '2026-03-10', [3, 10]],
    ['plain', '3/10/2026', [3, 10]],
    ['plain', '1935-03-01', [3, 35]],
    ['plain', '46091', [3, 10]],
    // The manual of DATEVALUE at pensionsoft.com gives 42736 for 1 January 2017.
    ['plain', '42736', [1, 1]],
    ['plain', '3-10', [3, 10]],
    ['turned', '3-Oct', [3, 10]],
    ['turned', '2026-10-03', [3, 10]],
    ['turned', '10/3/2026', [3, 10]],
    ['turned', '3-15', [3, 15]],
  ])('%s: %s is %j', (dates, text, pair) => {
    const reading = read(`dd,kind\n${text},R\n`, PAIRS.replaceAll('DATES', dates));
    expect(reading.problems.filter(({ severity }) => severity === 'fault')).toEqual([]);
    expect([cell(reading, 'down'), cell(reading, 'to_go')]).toEqual(pair);
  });
});
