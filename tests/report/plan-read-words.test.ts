import { describe, expect, it } from 'vitest';
import { planReadWords, secondWordSentences } from '../../src/report/words/menu-words.ts';

const trap = { path: 'funnel', coverage: 'two deep trap', calls: 10.1 };
const roof = {
  coverage: 'three deep',
  family: 'three_under',
  net: -0.09,
  men: [{ role: 'will', job: 'hook_middle' }],
} as const;

describe('how far the plan can be read', () => {
  it('says the share, the cap and the blind guess', () => {
    expect(planReadWords({ share: 0.62, blind: 0.42, most: 0.7, lone: [] })).toBe(
      'On this week’s mix our path names the coverage on 62% of our pressures (cap 70%), a blind guess on 42%.',
    );
  });

  it('names the paths that give it away, and what could be taught behind them', () => {
    const words = planReadWords({ share: 0.9, blind: 0.5, most: 0.7, lone: [{ ...trap, others: [roof] }] });
    expect(words).toContain('funnel is always two deep trap (10 a game).');
    expect(words).toContain('Sound, and worth teaching: three deep behind funnel.');
  });

  it('leaves out a path that is hardly called', () => {
    const lone = [{ ...trap, calls: 1.2, others: [roof] }];
    expect(planReadWords({ share: 0.9, blind: 0.5, most: 0.7, lone })).not.toContain('funnel');
    expect(secondWordSentences({ share: 0.9, blind: 0.5, most: 0.7, lone }, (role) => role)).toEqual([]);
  });

  it('says when the path adds nothing to what we play anyway', () => {
    expect(planReadWords({ share: 0.9, blind: 0.9, most: 0.7, lone: [] })).toContain('the path adds nothing');
  });

  it('says who would play what', () => {
    const lone = [{ ...trap, others: [roof] }];
    const [words] = secondWordSentences({ share: 0.9, blind: 0.5, most: 0.7, lone }, () => 'Will');
    expect(words).toContain('Will hook middle');
    expect(words).toContain('path: funnel and coverage: three deep');
  });
});
