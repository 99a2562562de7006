import type { CallLibrary } from '../../src/game/call-library.ts';
import type { MenuResult } from '../../src/pressure/menu/result.ts';
import type { ScoreChapter } from '../../src/pressure/score/score-result.ts';
import { wobble } from './invented-numbers.ts';

/** An invented menu of eight of the library's calls, the base among them, with mixes that sum to one in every situation. */
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
  const unsorted = carried.map((call, i) => {
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
      isNew: !call.installed,
      right: 0.3 + 0.3 * wobble(call.name, 'right'),
      wrong: 0.2 * wobble(call.name, 'wrong'),
    };
  });
  return {
    kind: 'menu',
    calls: [...unsorted].sort((a, b) => b.expectedCalls - a.expectedCalls),
    situations: scores.situations.map((situation) => ({
      ...situation,
      baseShare: mixes.get(situation.id)?.[carried.findIndex((call) => call.family === 'base')] ?? 0,
      rate: 1 - (mixes.get(situation.id)?.[carried.findIndex((call) => call.family === 'base')] ?? 0),
      worst: { answer: 'screen', points: -0.4 },
    })),
    reps: 104,
    repsAllowed: 120,
    ownRate: 0.42,
    right: 9.1,
    wrong: 5.2,
    value: 2.4,
    worstValue: -0.8,
    regret: { points: 0.12, allowed: 0.2, forced: 0 },
    nextBest: { added: ['Torch Zero'], dropped: ['Latch Spy'], less: 0.1, points: 0.02, proved: true },
    prices: [
      { limit: 'size', step: { kind: 'more', by: 1 }, gain: 0.4, added: ['Torch Zero'], dropped: [] },
      { limit: 'reps', step: { kind: 'more', by: 10 }, gain: 0.1, added: [], dropped: [] },
      { limit: 'pairing', step: { kind: 'lift' }, gain: 0, added: [], dropped: [] },
    ],
    leftOut: [
      { call: 'Torch Zero', why: { kind: 'nowhere_better', fit: 0.1, situation: '2nd and long' } },
      { call: 'Anvil Hold', why: { kind: 'costs_reps', reps: 30, fit: 0.05 } },
    ],
    pairings: [
      { path: 'rake', coverage: 'three deep', share: 0.62, calls: 5, most: 0.7, uncounted: 0 },
      { path: 'rake', coverage: 'man free', share: 0.38, calls: 5, most: 0.7, uncounted: 0 },
      { path: 'torch', coverage: 'hot three deep', share: 0.7, calls: 5, most: 0.7, uncounted: 0 },
      { path: 'torch', coverage: 'man free peel', share: 0.3, calls: 5, most: 0.7, uncounted: 0 },
    ],
    read: { share: 0.6, blind: 0.5, most: 1, lone: [] },
    paths: [
      { path: 'rake', share: 0.45, calls: 9 },
      { path: 'torch', share: 0.3, calls: 6 },
    ],
    explosives: 4.1,
    proof: { proved: true },
    notes: [],
  };
}
