import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { Tell } from '../../../src/pressure/forecast/forecast-result.ts';
import { gameGuesses } from '../../../src/pressure/review/guess.ts';
import { reviewTells } from '../../../src/pressure/review/tell.ts';
import { share } from '../../../src/stats/share.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Nobody' }).situations;
const tell: Tell = {
  id: 'run_or_pass: 3rd down, motion fast: run',
  seen: [
    { feature: 'down', value: '3' },
    { feature: 'motion', value: 'fast' },
  ],
  target: 'run_or_pass',
  follows: 'run',
  film: share(9, 10),
  expected: 0.4,
  planWith: 0.57,
  p: 0.001,
  adjusted: 0.05,
  games: [],
  standing: 'plan_with',
  gamesShown: 3,
  oneGameOnly: false,
  snaps: [],
};
const seen = (kinds: readonly string[]): SnapRecord[] =>
  kinds.map((play_kind) => ({ down: 3, to_go: 4, motion: 'fast', play_kind }));

describe('tells in the game', () => {
  it.each([
    [['run', 'run', 'quick'], 'held', 2],
    [['run', 'quick', 'quick'], 'died', 1],
    [['run', 'run'], 'too_few', 2],
    [[], 'not_seen', 0],
  ] as const)('%j: %s', (kinds, verdict, count) => {
    const others = [
      { down: 2, to_go: 4, motion: 'fast', play_kind: 'run' },
      { down: 3, to_go: 4, motion: 'none', play_kind: 'run' },
      { down: 3, to_go: 4, play_kind: 'run' },
    ];
    const [found] = reviewTells([tell], filmFromRecords([...seen(kinds), ...others]), cuts);
    expect(found).toMatchObject({ verdict, game: { count, trials: kinds.length } });
  });
});

describe('the guess rate of the game', () => {
  const called = (path: string, coverage: string): SnapRecord => ({ family: 'three_under', path, coverage });
  const earlier = filmFromRecords([
    ...Array(4).fill(called('rake', 'three deep')),
    ...Array(3).fill(called('torch', 'zero')),
    ...Array(2).fill(called('latch', 'zero')),
    { family: 'base', path: 'stay', coverage: 'three deep' },
  ]);

  it('is what a reader of our earlier film would have named, from the path and blind', () => {
    const game = filmFromRecords([
      called('rake', 'three deep'),
      called('rake', 'zero'),
      called('torch', 'zero'),
      called('latch', 'three deep'),
      { family: 'base', path: 'stay', coverage: 'three deep' },
      { family: 'hot', path: 'torch' },
    ]);
    expect(gameGuesses(earlier, game, cuts)).toMatchObject({
      read: 9,
      blind: { count: 2, trials: 4 },
      fromPath: { count: 2, trials: 4 },
    });
  });

  it('is nothing without earlier film, and 0 of 0 without pressures tonight', () => {
    expect(gameGuesses(null, earlier, cuts)).toBeNull();
    expect(gameGuesses(earlier, filmFromRecords([]), cuts)?.fromPath).toMatchObject({ trials: 0, estimate: null });
  });
});
