import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberAt, textAt } from '../../src/game/film.ts';
import { columnIndex, columnLetter } from '../../src/ingest/column-letter.ts';
import { profileSchema } from '../../src/ingest/profile.ts';
import { isDate, readPair } from '../../src/ingest/read-pair.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { unfoldRow } from '../../src/ingest/side-by-side.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';
import { splitYardLine } from '../../src/ingest/yard-line-side.ts';

const read = (sheet: string, profile: string) => {
  const reading = readYaml(profile, profileSchema, 'profile.yaml');
  if (reading.kind === 'problems') throw new Error(reading.problems.map(describeProblem).join('\n'));
  const bytes = new TextEncoder().encode(sheet);
  return readSheet({ file: 'plays.csv', bytes }, { kind: 'opponent', profile: reading.value });
};

const COLUMNS = `columns:
  game: { value: w1 }
  down: dn
  to_go: need
  ball_on: { header: spot, as: yards_to_goal }
  play_kind: { header: kind, words: { R: run, P: pass } }
`;
const warnings = (reading: ReturnType<typeof read>) =>
  reading.problems.map(({ severity, rule }) => `${severity} ${rule}`);

describe('a foreign sheet with dirt around its rows', () => {
  it('finds the header below titles, whatever delimiter the titles suggest', () => {
    const sheet = 'Scouting, week 3, invented\n;;;\nSITUATION;;PLAY;\ndn;need;spot;kind\n1;10;65;R\n2;3;58;P\n';
    const reading = read(sheet, COLUMNS);
    expect(reading.problems).toEqual([]);
    expect([...reading.chart.rowOf]).toEqual([5, 6]);
    expect(reading.delimiter).toBe(';');
  });

  it('leaves out headers repeated further down, and names titles and notes between snaps', () => {
    const sheet =
      'dn,need,spot,kind,n,m\n1,10,65,R,,\nsecond half,,,,,\n,,,,rain,8\ndn,need,spot,kind,n,m\n2,3,58,P,,\n';
    const reading = read(sheet, COLUMNS);
    expect(reading.chart.size).toBe(2);
    expect(reading.leftOut).toBe(3);
    expect(reading.rowsRead).toBe(5);
    expect(warnings(reading)).toEqual([
      'warning is all that the row holds, which was left out as no snap',
      'warning charts none of "dn", "need", "kind", and was left out as no snap',
    ]);
  });

  it('still refuses a snap that leaves only some of the needed cells blank', () => {
    const reading = read('dn,need,spot,kind\n1,10,65,R\n2,,58,P\n', COLUMNS);
    expect(reading.rejected.map(({ row }) => row)).toEqual([3]);
  });

  it('reads several snaps beside one another, with what they share', () => {
    const profile = `side_by_side: { first: B, width: 4, snaps: 2 }\n${COLUMNS.replace('game: { value: w1 }', 'game: g')}`;
    const sheet = 'g,dn,need,spot,kind,dn,need,spot,kind\nw1,1,10,65,R,2,3,58,P\nw2,1,10,40,P,,,,\n';
    const { chart, problems } = read(sheet, profile);
    expect(problems).toEqual([]);
    expect([0, 1, 2].map((i) => [textAt(chart, 'game', i), numberAt(chart, 'ball_on', i)])).toEqual([
      ['w1', 65],
      ['w1', 58],
      ['w2', 40],
    ]);
    expect([...chart.rowOf]).toEqual([2, 2, 3]);
  });

  it('reads a sheet without headers by its letters, the first row too', () => {
    const profile = `headers: none\n${COLUMNS.replace('dn', 'column A').replace('need', 'column B').replace('header: spot', 'header: column C').replace('header: kind', 'header: column D')}`;
    const reading = read('1,10,65,R\n2,3,58,P\n', profile);
    expect(reading.problems).toEqual([]);
    expect([...reading.chart.rowOf]).toEqual([1, 2]);
  });

  it('tells columns with the same header apart by their letters', () => {
    const profile = `${COLUMNS}  hash: { header: column E }\n  concept: { header: column F }\n`;
    const reading = read('dn,need,spot,kind,x,x\n1,10,65,R,left,power\n', profile);
    expect(reading.problems.filter(({ severity }) => severity === 'fault')).toEqual([]);
    expect([textAt(reading.chart, 'hash', 0), textAt(reading.chart, 'concept', 0)]).toEqual(['left', 'power']);
  });

  it('reads a side of the field from his own words', () => {
    const profile = COLUMNS.replace('as: yards_to_goal', 'sides: { PLW: own, HC: opp }');
    const { chart, problems } = read('dn,need,spot,kind\n1,10,PLW 35,R\n2,3,hc 20,P\n3,3,50,P\n', profile);
    expect(problems).toEqual([]);
    expect([0, 1, 2].map((i) => numberAt(chart, 'ball_on', i))).toEqual([65, 20, 50]);
  });

  it('reads down and distance out of one cell', () => {
    const profile = `${COLUMNS.replace('down: dn', 'down: { header: dd, as: first_of_pair }').replace('to_go: need', 'to_go: { header: dd, as: second_of_pair }')}`;
    const { chart, problems } = read('dd,spot,kind\n1-10,65,R\n3-Mar,58,P\n3rd & 12,58,P\n', profile);
    expect(problems).toEqual([]);
    expect([0, 1, 2].map((i) => [numberAt(chart, 'down', i), numberAt(chart, 'to_go', i)])).toEqual([
      [1, 10],
      [3, 3],
      [3, 12],
    ]);
  });
});

describe('two numbers in one cell', () => {
  it.each([
    ['3-10', '3', '10'],
    ['3 & 10', '3', '10'],
    ['3rd and 10', '3', '10'],
    ['1\u201310', '1', '10'],
    ['10-Mar', '3', '10'],
    ['Mar-10', '3', '10'],
    ['10. March', '3', '10'],
    ['2026-03-10', '3', '10'],
    ['2026-03-10T00:00:00', '3', '10'],
    ['3/10/2026', '3', '10'],
    ['03/04/26', '3', '4'],
  ])('%s is %s and %s', (text, first, second) => {
    expect(readPair(text)).toEqual({ first, second });
  });

  it.each(['', '10', 'own 35', 'trips 3', '3-', '-3', '1-2-3', 'maybe 10x'])('%j holds no pair', (text) => {
    expect(readPair(text)).toBeUndefined();
  });

  it.each([
    ['2026-03-10', true],
    ['10-Mar', true],
    ['9/4/2026', true],
    ['4.9.2026', true],
    ['3-10', false],
    ['trips 3', false],
  ])('%s is a date: %s', (text, date) => {
    expect(isDate(text)).toBe(date);
  });
});

describe('a yard line with a word for its side', () => {
  it.each([
    ['PLW 35', { word: 'plw', line: 35 }],
    ['35 Plw', { word: 'plw', line: 35 }],
    ['Mar-10', { word: 'mar', line: 10 }],
    ['10-Mar', { word: 'mar', line: 10 }],
    ['35', undefined],
    ['PLW 51', undefined],
    ['PLW', undefined],
  ])('%s', (text, split) => {
    expect(splitYardLine(text)).toEqual(split);
  });
});

describe('the letters of columns', () => {
  it('go there and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), (index) => {
        expect(columnIndex(columnLetter(index))).toBe(index);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a row of snaps side by side', () => {
  it('unfolds into rows of equal width that hold every charted cell once', () => {
    const cell = fc.constantFrom('', 'a', 'b', 'c');
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: 2, max: 3 }),
        fc.array(cell, { minLength: 14, maxLength: 14 }),
        (width, snaps, cells) => {
          const rows = unfoldRow({ first: 'B', width, snaps }, cells);
          const rest = cells.length - width * (snaps - 1);
          expect(rows.every((row) => row.length === rest)).toBe(true);
          const charted = (row: readonly string[]) => row.slice(1, 1 + width).filter((text) => text !== '').length;
          const inside = cells.slice(1, 1 + width * snaps).filter((text) => text !== '').length;
          expect(rows.reduce((sum, row) => sum + charted(row), 0)).toBe(inside);
        },
      ),
      { numRuns: 50 },
    );
  });
});
