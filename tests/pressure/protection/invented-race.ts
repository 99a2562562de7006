import type { Answer } from '../../../src/game/answers.ts';
import type { CallLibrary } from '../../../src/game/call-library.ts';
import type { Family } from '../../../src/game/families.ts';
import type { ProtectionChapter, RaceLine } from '../../../src/pressure/protection/protection-result.ts';
import { unraced } from '../invented-offense.ts';

/** A library of names and families alone, which is all the scores read of it. */
export function inventedCalls(calls: Readonly<Record<string, Family>>): CallLibrary {
  const named = Object.entries(calls).map(([name, family]) => ({ name, family }));
  return { calls: named } as unknown as CallLibrary;
}

/** A race line: home now, home against an average opponent, and the half width of its 80% interval. */
export function raceLine(call: string, answer: Answer, [home, typical, half = 0]: readonly number[]): RaceLine {
  const [now, usual] = [home ?? 0, typical ?? 0];
  return {
    call,
    answer,
    home: now,
    low: now - half,
    high: now + half,
    typical: usual,
    timedThrows: 10,
    firstArrival: 2.5,
  };
}

/** A protection chapter with the given race. */
export function raced(race: readonly RaceLine[]): ProtectionChapter {
  return { ...unraced(), race };
}
