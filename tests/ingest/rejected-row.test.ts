import { describe, expect, it } from 'vitest';
import { RejectedRow } from '../../src/ingest/rejected-row.ts';
import type { RowProblem } from '../../src/ingest/row-problem.ts';

const fault: RowProblem = { severity: 'fault', file: 'a.csv', row: 3, header: 'down', found: '7', rule: 'is no down' };

describe('a rejected row', () => {
  it.each([[['']], [['a', '', 'b']], [['\u001f', 'a\u001fb', '"']], [['a,b\n', '\u0000']]])(
    'gives back %j',
    (cells) => {
      expect(new RejectedRow(3, cells, [fault]).cells).toEqual(cells);
    },
  );

  it('gives its faults as reasons, and no warning', () => {
    const row = new RejectedRow(3, ['7'], [{ ...fault, severity: 'warning', rule: 'is odd' }, fault]);
    expect(row.reasons).toEqual(['"down": "7" is no down.']);
  });
});
