import { describe, expect, it } from 'vitest';
import type { SeasonFit, SeasonRule } from '../../../src/pressure/review/season-rule.ts';
import {
  contradictedWords,
  gameRuleTable,
  markSentence,
  seasonRuleTable,
} from '../../../src/report/review/rule-table.ts';
import { share } from '../../../src/stats/share.ts';

const rule = (name: string, standing: SeasonRule['standing']): SeasonRule => ({
  rule: name,
  says: 'right',
  held: share(7, 30),
  other: share(41, 60),
  expected: 19.6,
  against: 0.001,
  inFavor: 0.999,
  standing,
});
const season: SeasonFit = {
  games: 3,
  right: share(14, 20),
  neutral: share(8, 15),
  wrong: share(5, 15),
  open: 4,
  rules: [rule('peel_back_wide', 'contradicted'), rule('zero_screen', 'no_difference')],
};

describe('the record of our rules', () => {
  it('says how calls held where the rules said right, neither and wrong', () => {
    expect(markSentence(season)).toBe(
      'When the rules said right: held 14 of 20 (70%); neither: 8 of 15 (53%); wrong: 5 of 15 (33%). Not marked for want of charting: 4.',
    );
    expect(markSentence({ ...season, open: 0 })).not.toContain('Not marked');
  });

  it('names the rules the record contradicts, and no other', () => {
    expect(contradictedWords(season)).toEqual([
      'The rule “back wide” says right; its calls held 7 of 30, our other calls there 41 of 60.',
    ]);
  });

  it('has a row a rule with both counts', () => {
    const { rows } = seasonRuleTable(season);
    expect(rows.map(({ name, cells }) => [name, ...cells.map(({ text }) => text)])).toEqual([
      [
        'back wide',
        'right',
        '7 of 30 (23%), long run 12-41%',
        '41 of 60 (68%), long run 56-79%',
        '19.6',
        expect.stringMatching(/contradicts it/),
      ],
      [
        'zero screen',
        'right',
        '7 of 30 (23%), long run 12-41%',
        '41 of 60 (68%), long run 56-79%',
        '19.6',
        'no difference from our other calls',
      ],
    ]);
  });

  it('adds a game’s answers up, leaves out rules without a call, and marks thin rows', () => {
    const answer = { held: 2, snaps: 3, otherHeld: 1, otherSnaps: 4 };
    const answers = [
      { answer: 'quick' as const, ...answer },
      { answer: 'screen' as const, ...answer },
    ];
    const game = {
      ...season,
      snaps: [],
      notAsked: [],
      rules: [
        { rule: 'add_on_screen', says: 'wrong' as const, answers },
        { rule: 'zero_wide', says: 'wrong' as const, answers: [{ ...answers[0]!, snaps: 0, held: 0 }] },
      ],
    };
    const { rows } = gameRuleTable(game);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      thin: true,
      cells: [{ text: 'wrong' }, { text: '4 of 6 (67%)' }, { text: '2 of 8 (25%)' }],
    });
  });
});
