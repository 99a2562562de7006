import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { groupProblems } from '../../src/ingest/row-problem.ts';
import { rejectsCsv } from '../../src/season/rejects.ts';

/** Rows of an invented sheet of which every row has the same two faults, each in a few spellings. */
const ROWS = 40_000;

function faultySheet(): Uint8Array {
  const row = (i: number) => `g1,${(i % 9000) + 1},${i % 4 === 0 ? 7 : 9},1O${i % 5},own 35,run,Gun`;
  const rows = Array.from({ length: ROWS }, (_, i) => row(i));
  return Buffer.from(`game,snap,down,to_go,ball_on,play_kind,formation\n${rows.join('\n')}\n`);
}

describe('a sheet with a fault in every row', () => {
  const reading = readSheet({ file: 'opponent.csv', bytes: faultySheet() }, { kind: 'opponent' });

  it('loses no row and no fault', () => {
    expect(reading.chart.size).toBe(0);
    expect(reading.problems).toHaveLength(2 * ROWS);
    const csv = new TextDecoder().decode(rejectsCsv([{ file: 'opponent.csv', rows: reading.rejected }]));
    const { data } = Papa.parse<string[]>(csv.trimEnd());
    expect(data).toHaveLength(ROWS + 1);
    for (const [i, cells] of data.slice(1).entries()) {
      expect(cells.slice(3)).toEqual([
        'g1',
        `${(i % 9000) + 1}`,
        i % 4 === 0 ? '7' : '9',
        `1O${i % 5}`,
        'own 35',
        'run',
        'Gun',
      ]);
      expect(cells.slice(0, 2)).toEqual(['opponent.csv', `${i + 2}`]);
      expect(cells[2]).toContain(`column C ("down"): "${i % 4 === 0 ? 7 : 9}" `);
      expect(cells[2]).toContain(`column D ("to_go"): "1O${i % 5}" `);
    }
  });

  it('says each kind once, with its count', () => {
    const { groups, restGroups } = groupProblems(reading.problems, 20);
    const said = groups.map(({ problem, count }) => [problem.found, count]);
    expect(new Map(said as [string, number][])).toEqual(
      new Map([
        ['7', ROWS / 4],
        ['9', (3 * ROWS) / 4],
        ...[0, 1, 2, 3, 4].map((i): [string, number] => [`1O${i}`, ROWS / 5]),
      ]),
    );
    expect(restGroups).toBe(0);
  });
});
