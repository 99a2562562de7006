import { describe, expect, it } from 'vitest';
import {
  describeGroup,
  describeProblem,
  describeProblems,
  groupProblems,
  type RowProblem,
} from '../../src/ingest/row-problem.ts';

const slip: RowProblem = {
  severity: 'fault',
  file: 'plays.csv',
  row: 14,
  columnLetter: 'F',
  header: 'to_go',
  found: '1O',
  rule: 'is not a whole number of yards',
  suggestion: 'Did you mean "10"?',
};

describe('describeProblem', () => {
  it('names file, row, column letter, header, value, rule and suggestion', () => {
    expect(describeProblem(slip)).toBe(
      'plays.csv, row 14, column F ("to_go"): "1O" is not a whole number of yards. Did you mean "10"?',
    );
  });

  it('leaves out the row of a problem with the whole file, and empty quotation marks', () => {
    expect(describeProblem({ severity: 'fault', file: 'plays.csv', row: 0, found: '', rule: 'is empty' })).toBe(
      'plays.csv: is empty.',
    );
  });

  it('speaks of lines in a YAML file', () => {
    const problem: RowProblem = { ...slip, file: 'week.yaml', unit: 'line', row: 4, header: 'menu.size' };
    const { columnLetter: _, ...rest } = problem;
    expect(describeProblem(rest)).toMatch(/^week\.yaml, line 4, "menu\.size": /);
  });

  it('writes out characters that cannot be seen, and cuts a very long value', () => {
    const text = describeProblem({ ...slip, found: `a\u0007${'b'.repeat(500)}` });
    expect(text).toContain('"a\\u0007bbb');
    expect(text.length).toBeLessThan(200);
  });
});

describe('groupProblems', () => {
  const warning: RowProblem = { ...slip, severity: 'warning', found: '9', rule: 'looks large', row: 2 };
  const many = [warning, slip, { ...slip, row: 15 }, { ...slip, found: '2O' }];

  it('counts equal problems as one and puts faults first', () => {
    const { groups, restGroups } = groupProblems(many, 10);
    expect(groups.map(({ problem, count, rows }) => [problem.found, count, rows])).toEqual([
      ['1O', 2, [14, 15]],
      ['2O', 1, [14]],
      ['9', 1, [2]],
    ]);
    expect(restGroups).toBe(0);
  });

  it('keeps apart what differs in its column or in what is suggested', () => {
    const { suggestion: _, ...plain } = slip;
    const { groups } = groupProblems([slip, { ...slip, columnLetter: 'G' }, plain, { ...plain, row: 15 }], 10);
    expect(groups.map(({ count }) => count)).toEqual([1, 1, 2]);
  });

  it('counts what the cap leaves out', () => {
    expect(groupProblems(many, 1)).toMatchObject({ restGroups: 2, restProblems: 2 });
    expect(groupProblems([], 5)).toEqual({ groups: [], restGroups: 0, restProblems: 0 });
  });

  it('never loses a problem: shown and left out add up', () => {
    const { groups, restProblems } = groupProblems(many, 2);
    expect(groups.reduce((sum, { count }) => sum + count, 0) + restProblems).toBe(many.length);
  });

  it('names at most five rows of a group', () => {
    const rows = Array.from({ length: 8 }, (_, i) => ({ ...slip, row: i + 2 }));
    const [group] = groupProblems(rows, 1).groups;
    expect(group && describeGroup(group)).toMatch(/8 rows \(2, 3, 4, 5, 6 and 3 more\), column F/);
  });
});

it('writes out control characters wherever they stand: in the rule, the header or the name of the file', () => {
  const text = describeProblem({
    severity: 'fault',
    file: 'a\u001b[2Jb.csv',
    row: 2,
    header: 'x\ny',
    found: '',
    rule: 'is not one of \ttab, \ud800',
  });
  expect(text).toBe('a\\u001b[2Jb.csv, row 2, "x\\u000ay": is not one of \\u0009tab, \\ud800.');
});

describe('describeProblems', () => {
  const kinds = (count: number) => Array.from({ length: count }, (_, i): RowProblem => ({ ...slip, found: `${i}O` }));

  it('names as many kinds as asked for and counts the problems of the rest, be it one', () => {
    expect(describeProblems(kinds(3), 3)).toEqual(kinds(3).map(describeProblem));
    expect(describeProblems(kinds(4), 3)).toEqual([...kinds(3).map(describeProblem), '… and 1 more']);
    expect(describeProblems([...kinds(4), ...kinds(4)], 3).at(-1)).toBe('… and 2 more');
    expect(describeProblems([], 3)).toEqual([]);
  });
});
