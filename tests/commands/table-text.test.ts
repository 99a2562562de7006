import { expect, it } from 'vitest';
import { tableText } from '../../src/commands/table-text.ts';

it('sets columns of numbers right and words left, without blanks at the end of a line', () => {
  const rows = [
    ['Rake', '3', '-0.5', 'quick 1, run 2'],
    ['Latch Roof', '12', '', 'run 12'],
  ];
  expect(tableText(['call', 'reps', 'saved', 'against'], rows)).toBe(
    [
      'call        reps  saved  against',
      '----------  ----  -----  --------------',
      'Rake           3   -0.5  quick 1, run 2',
      'Latch Roof    12         run 12',
      '',
    ].join('\n'),
  );
});

it('a table without rows is its header', () => {
  expect(tableText(['call', 'reps'], [])).toBe('call  reps\n----  ----\n');
});
