import { describe, expect, it } from 'vitest';
import { type CountedTest, correctTells, type LookedTests } from '../../../src/pressure/forecast/tell-correction.ts';
import { benjaminiHochberg } from '../../../src/stats/adjust.ts';
import { createRandom } from '../../../src/stats/random.ts';

/** The smallest K with at most K tests that could come below rate / K, by trying every K. */
function bruteCounted(tests: readonly CountedTest[], rate: number): CountedTest[] {
  for (let k = 1; k <= tests.length; k++) {
    const able = tests.filter(({ leastLog }) => leastLog <= Math.log(rate / k));
    if (able.length <= k) return able;
  }
  return [...tests];
}

const QUESTIONS = ['run_or_pass', 'motion'];

/** Run or pass has two thirds of the error, motion one third. */
const partOf = (question: string) => (question === 'run_or_pass' ? 1 : 1 / 2);

function byKind(tests: readonly CountedTest[]): LookedTests[] {
  return QUESTIONS.flatMap((question) =>
    [true, false].map((simple) => {
      const alike = tests.filter((test) => test.question === question && test.simple === simple);
      return { question, simple, part: partOf(question), leastLogs: alike.map(({ leastLog }) => leastLog) };
    }),
  );
}

describe('correctTells', () => {
  const random = createRandom('tell correction');
  const tests = Array.from({ length: 300 }, (_, i): CountedTest => {
    const leastLog = -12 * random.uniform();
    return {
      question: QUESTIONS[i % 2]!,
      simple: i % 3 < 2,
      leastLog,
      p: Math.max(Math.exp(leastLog), random.uniform() ** 3),
    };
  });

  it('counts only tests that could pass, as trying every number does, and weighs them as said', () => {
    const counted = bruteCounted(tests, 0.1);
    // Of either question's part, simple cells have four fifths.
    const weightOf = ({ question, simple }: CountedTest) => {
      const alike = counted.filter((one) => one.question === question && one.simple === simple).length;
      const part = (partOf(question) / 1.5) * (simple ? 0.8 : 0.2);
      return (part * counted.length) / alike;
    };
    const by = benjaminiHochberg(
      counted.map((test) => Math.min(1, test.p / weightOf(test))),
      counted.length,
    );
    const got = correctTells(counted, byKind(tests), 0.1);
    expect(counted.length).toBeLessThan(tests.length);
    got.forEach((value, i) => {
      expect(value).toBeCloseTo(by[i]!, 12);
    });
  });

  it('calls nothing where only cells of few snaps were looked at', () => {
    const few = Array.from(
      { length: 50 },
      (): CountedTest => ({ question: 'run_or_pass', simple: true, leastLog: -3, p: Math.exp(-3) }),
    );
    expect(correctTells(few, byKind(few), 0.1).every((value) => value > 0.1)).toBe(true);
    expect(correctTells([], [], 0.1)).toEqual([]);
  });
});
