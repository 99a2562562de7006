import type { CallLibrary } from '../../src/game/call-library.ts';
import type { MenuResult } from '../../src/pressure/menu/result.ts';
import type { ScoreChapter } from '../../src/pressure/score/score-result.ts';
import { wobble } from './invented-numbers.ts';

/** An invented menu of eight of the library's calls, the base among them, whose mixes sum to one in every situation. */
export function inventedMenu(library: CallLibrary, scores: ScoreChapter): MenuResult {
  const carried = library.calls.filter((call) => call.name !== 'Torch Zero' && call.name !== 'Anvil Hold');
  const mixOf = (situation: string) => {
    const raw = carried.map((call) =>
      call.family === 'base' ? 0.8 : Math.max(0, wobble(call.name, situation, 'mix') - 0.55),
    );
    const total = raw.reduce((sum, value) => sum + value, 0);
    return raw.map((value) => value / total);
  };
  const mixes = new Map(scores.situations.map((situation) => [situation.id, mixOf(situation.id)]));
  const calls = carried.map((call, i) => {
    const mix = scores.situations
      .map((situation) => ({ situation: situation.id, share: mixes.get(situation.id)?.[i] ?? 0 }))
      .filter((entry) => entry.share > 0);
    const expectedCalls = scores.situations.reduce(
      (sum, situation) => sum + situation.expectedSnaps * (mixes.get(situation.id)?.[i] ?? 0),
      0,
    );
    return {
      call: call.name,
      family: call.family,
      path: call.path,
      coverage: call.coverage,
      mix,
      expectedCalls,
      reps: call.reps.weekly + (call.installed ? 0 : call.reps.first),
      why: `Their dropback holds the ball and ${call.path} comes from the side the back leaves.`,
    };
  });
  return {
    kind: 'menu',
    calls,
    situations: scores.situations.map((situation) => ({
      ...situation,
      baseShare: mixes.get(situation.id)?.[carried.findIndex((call) => call.family === 'base')] ?? 0,
    })),
    reps: 104,
    repsAllowed: 120,
    value: 2.4,
    worstValue: -0.8,
    nextBest: { value: 2.3, difference: 'Torch Zero instead of Latch Spy' },
    prices: [
      { limit: 'Calls carried', step: 'one more call', points: 0.4 },
      { limit: 'Practice repetitions', step: 'ten more', points: 0.1 },
      { limit: 'Pairing cap', step: 'five points more', points: 0 },
    ],
    leftOut: [
      { call: 'Torch Zero', why: 'Screens on 2nd and long cost it more than it earns.' },
      { call: 'Anvil Hold', why: 'Adds nothing that Rake does not already give.' },
    ],
    pairings: [
      { path: 'rake', coverage: 'three deep', share: 0.62 },
      { path: 'rake', coverage: 'man free', share: 0.38 },
      { path: 'torch', coverage: 'hot three deep', share: 0.7 },
      { path: 'torch', coverage: 'man free peel', share: 0.3 },
    ],
    explosives: 4.1,
  };
}
