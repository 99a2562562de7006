import type { OwnFilmChapter } from '../../src/pressure/own-film/result.ts';
import { share } from '../../src/stats/share.ts';

/** An invented chapter on our own film. */
export function inventedOwnFilm(): OwnFilmChapter {
  return {
    snaps: 164,
    games: 5,
    pairings: [
      pairing('rake', [
        ['three deep', 41],
        ['man free', 6],
      ]),
      pairing('torch', [
        ['hot three deep', 18],
        ['zero', 4],
        ['man free peel', 3],
      ]),
      pairing('latch', [['man free peel', 11]]),
      pairing('anvil', [
        ['two deep', 5],
        ['three deep', 2],
      ]),
    ],
    predictability: {
      theilU: 0.61,
      lambda: 0.55,
      chance: 0.09,
      p: 0.001,
      informationBits: 1.02,
      words: 'The path gives the coverage away: a reader of our film is right far more often than a blind guess.',
    },
    guesses: [
      { knows: 'nothing', share: share(43, 90), byGame: { low: 0.39, high: 0.57 } },
      { knows: 'the situation', share: share(47, 90), byGame: { low: 0.41, high: 0.62 } },
      { knows: 'the path', share: share(74, 90), byGame: { low: 0.71, high: 0.91 } },
      { knows: 'the path and the situation', share: share(71, 90), byGame: { low: 0.68, high: 0.88 } },
    ],
    pressureRates: [
      { by: 'down', value: '1st', share: share(21, 66) },
      { by: 'down', value: '3rd', share: share(33, 40) },
      { by: 'hash', value: 'left', share: share(30, 60) },
      { by: 'hash', value: 'middle', share: share(0, 0) },
      { by: 'after a big play', value: 'yes', share: share(9, 11) },
    ],
    runsTest: [
      { situation: 'third_long', p: 0.03, snaps: 24 },
      { situation: 'first_ten', p: 0.41, snaps: 66 },
      { situation: 'fourth_long', p: null, snaps: 2 },
    ],
    rotation: [
      { path: 'rake', rotation: 'to_rush', share: share(44, 47) },
      { path: 'torch', rotation: 'none', share: share(20, 25) },
    ],
    shownEarly: share(14, 90),
    changedAfterLook: share(6, 14),
    tells: [
      { description: 'Nickel walks up before the snap', follows: 'three deep', share: share(22, 24), adjusted: 0.02 },
    ],
    remedy: {
      cap: 0.7,
      guessRate: 0.82,
      swaps: [
        { situation: 'first_ten', path: 'rake', instead: 'three deep', coverage: 'man free', snaps: 5 },
        { situation: 'third_long', path: 'latch', instead: 'man free peel', coverage: 'three deep', snaps: 2 },
      ],
      reaches: 0.69,
      costPoints: 0.3,
      words: 'Seven snaps in another pairing bring a reader of our film from 82% right to 69%, for 0.3 points a game.',
    },
  };
}

function pairing(path: string, coverages: readonly (readonly [string, number])[]) {
  const snaps = coverages.reduce((sum, [, count]) => sum + count, 0);
  return { path, snaps, coverages: coverages.map(([coverage, count]) => ({ coverage, share: share(count, snaps) })) };
}
