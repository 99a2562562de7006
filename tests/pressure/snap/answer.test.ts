import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { answerCodes, answerOf } from '../../../src/pressure/snap/answer.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

describe('answerOf', () => {
  it.each(ANSWERS)('lets a charted %s stand, however it ended and was timed', (playKind) => {
    expect(answerOf({ playKind, timeToThrow: 1.2, targetDepth: 40 }, cuts)).toBe(playKind);
  });

  const rule = 'our stated rules';
  it.each([
    { playKind: 'scramble', answer: 'dropback', rule },
    { playKind: 'pass', result: 'sack', answer: 'dropback', rule },
    { playKind: 'pass', result: 'scramble', answer: 'dropback', rule },
    { playKind: 'run', result: 'scramble', answer: 'dropback', rule },
    { result: 'sack', answer: 'dropback', rule },
    { playKind: 'screen', result: 'sack', answer: 'screen', rule },
    { playKind: 'pass', targetDepth: 20, timeToThrow: 1.9, answer: 'deep_shot', rule },
    { playKind: 'pass', targetDepth: 25, answer: 'deep_shot', rule },
    { playKind: 'pass', targetDepth: 19, timeToThrow: 2, answer: 'quick', rule },
    { playKind: 'pass', timeToThrow: 2.01, answer: 'dropback', rule },
    { playKind: 'play_action', timeToThrow: 1.5, targetDepth: 4, answer: 'dropback', rule },
    { playKind: 'play_action', targetDepth: 30, answer: 'deep_shot', rule },
    { playKind: 'play_action', answer: 'dropback', rule },
    { playKind: 'pass', answer: undefined, rule },
    { playKind: 'pass', targetDepth: 5, answer: undefined, rule },
    { timeToThrow: 1.5, answer: undefined, rule },
  ] as const)('$playKind $result, $timeToThrow s, $targetDepth yd is $answer', ({ answer, rule: _, ...evidence }) => {
    expect(answerOf(evidence, cuts)).toBe(answer);
  });

  it("follows the staff's quick time and deep yards", () => {
    expect(answerOf({ playKind: 'pass', timeToThrow: 2.4 }, { ...cuts, quick_seconds: 2.5 })).toBe('quick');
    expect(answerOf({ playKind: 'pass', targetDepth: 16 }, { ...cuts, deep_yards: 15 })).toBe('deep_shot');
  });
});

describe('answerCodes', () => {
  it('codes each snap; a bare pass is not known and is not guessed', () => {
    const codes = answerCodes(
      filmFromRecords([
        { play_kind: 'run', option_tag: 'read', concept: 'quarterback power' },
        { play_kind: 'pass' },
        { play_kind: 'pass', time_to_throw: 1.8 },
        {},
      ]),
      cuts,
    );
    expect([...codes]).toEqual([ANSWERS.indexOf('run'), NOT_KNOWN, ANSWERS.indexOf('quick'), NOT_KNOWN]);
  });
});
