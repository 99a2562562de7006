import { describe, expect, it } from 'vitest';
import { filmFromRecords, joinFilms, textAt } from '../../src/game/film.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { checkSpellingsAcross } from '../../src/ingest/spelling-checks.ts';

const COLUMNS = ['offense', 'game', 'formation', 'call', 'path', 'coverage'] as const;
const bytes = (text: string) => new TextEncoder().encode(text);
const sheet = (rows: readonly string[]) =>
  readSheet(
    {
      file: 'ours.csv',
      bytes: bytes(`snap,down,to_go,ball_on,${COLUMNS.join()}\n${rows.join('\n')}\n`),
    },
    { kind: 'own' },
  );

describe('free words that differ only in case or spaces', () => {
  const spelled = sheet([
    '1,1,10,own 30,Cinder Vale,Week 3,Trey Open,Stay Roof,Stay,Roof',
    '2,2,5,own 35,cinder vale,week3,TREY OPEN,stay roof,STAY,roof',
    '3,2,5,own 35,CinderVale,WEEK 3,trey  open,StayRoof,stay,ROOF',
  ]);

  it('are one word of a sheet, the way it is written first', () => {
    for (const column of COLUMNS) {
      expect(new Set([0, 1, 2].map((i) => textAt(spelled.chart, column, i))).size, column).toBe(1);
    }
    expect(textAt(spelled.chart, 'call', 2)).toBe('Stay Roof');
  });

  it('are said once each', () => {
    const lines = spelled.problems.map(describeProblem).filter((line) => line.includes('"call"'));
    expect(lines).toEqual([
      'ours.csv, column H ("call"): "stay roof" is written "Stay Roof" elsewhere; both count as "Stay Roof".',
      'ours.csv, column H ("call"): "StayRoof" is written "Stay Roof" elsewhere; both count as "Stay Roof".',
    ]);
  });

  it('are one game, so that a snap listed twice is found', () => {
    const twice = sheet(['1,1,10,own 30,a,Week 3,,Stay,,', '1,1,10,own 30,A,week 3,,Stay,,']);
    expect(twice.chart.size).toBe(1);
    expect(twice.rejected).toHaveLength(1);
  });

  it('are one word over several sheets', () => {
    const films = ['Roof', 'ROOF'].map((coverage, i) => filmFromRecords([{ coverage, note: coverage }], `${i}.csv`));
    const joined = joinFilms(films);
    expect([textAt(joined, 'coverage', 1), textAt(joined, 'note', 1)]).toEqual(['Roof', 'ROOF']);
    expect(checkSpellingsAcross(films).map(describeProblem)).toEqual([
      '1.csv, "coverage": "ROOF" is written "Roof" elsewhere; both count as "Roof".',
    ]);
  });
});
