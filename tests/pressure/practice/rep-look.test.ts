import { describe, expect, it } from 'vitest';
import { FAMILIES, familyFacts } from '../../../src/game/families.ts';
import { LOOK_KINDS, type LookKind } from '../../../src/game/look-kinds.ts';
import { requiredLooks } from '../../../src/pressure/practice/rep-look.ts';
import type { ScoreChapter } from '../../../src/pressure/score/score-result.ts';
import { repWatch } from '../../../src/report/practice/rep-watch.ts';

const points = { mean: 0, low: 0, high: 0 };
const scores = {
  calls: [
    {
      call: 'Latch',
      situation: 'third_long',
      points,
      byAnswer: [
        { answer: 'run', points: -2 },
        { answer: 'quick', points: -0.5 },
      ],
    },
    { call: 'Latch', situation: 'first_ten', points, byAnswer: [{ answer: 'quick', points: -4 }] },
  ],
} as unknown as ScoreChapter;
const shares = new Map<LookKind, number>([
  ['run', 0.5],
  ['quick', 0.3],
  ['wide_release', 0.2],
]);

describe('looks a call must be seen against', () => {
  it('are its likeliest, its worst where it is called, and what its rule was made for', () => {
    const input = { call: 'Latch', family: 'peel' as const, shares, scores };
    expect(requiredLooks({ ...input, situations: new Map([['third_long', 4]]) })).toEqual([
      { look: 'run', reasons: ['likeliest', 'worst'] },
      { look: 'wide_release', reasons: ['make_or_break'] },
      { look: 'inside_release', reasons: ['make_or_break'] },
    ]);
    const onFirst = requiredLooks({ ...input, situations: new Map([['first_ten', 4]]) });
    expect(onFirst.find(({ look }) => look === 'quick')).toEqual({ look: 'quick', reasons: ['worst'] });
  });

  it('a call without a score has no worst look', () => {
    const found = requiredLooks({ call: 'Unknown', family: 'hot', shares, scores, situations: new Map() });
    expect(found.flatMap(({ reasons }) => reasons)).toEqual(['likeliest', 'make_or_break', 'make_or_break']);
  });

  it.each([
    [
      'peel',
      ['wide_release', 'inside_release'],
      'common practice, no source: the peel rule is the back wide and the back inside',
    ],
    [
      'add_on',
      ['screen', 'max_protection'],
      'common practice, no source: strong against max protection, weak against the screen',
    ],
    ['four_under', ['trips_deep'], 'common practice, no source: weak against trips and four verticals'],
  ] as const)('%s is decided by %j (%s)', (family, looks, _source) => {
    expect(familyFacts(family).makeOrBreak).toEqual(looks);
  });

  it('every family has a make-or-break look and every pair something to watch', () => {
    for (const family of FAMILIES) {
      expect(familyFacts(family).makeOrBreak.length).toBeGreaterThan(0);
      for (const { id } of LOOK_KINDS) expect(repWatch(family, id)).toMatch(/\w{3}/);
    }
    expect(repWatch('add_on', 'screen')).toContain('stays in the deep middle');
  });
});
