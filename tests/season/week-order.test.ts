import { describe, expect, it } from 'vitest';
import { earlierWeeks } from '../../src/season/week-order.ts';

describe('earlierWeeks', () => {
  it('puts week 9 before week 10, and leaves out the week itself, later ones and what is no week', () => {
    const names = ['week-10', 'archive', 'week-2', 'ours.csv', 'week-9', 'week-11'];
    expect(earlierWeeks(names, 'week-10')).toEqual(['week-2', 'week-9']);
    expect(earlierWeeks(names, 'week-2')).toEqual([]);
  });
});
