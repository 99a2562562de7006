import type { OwnFilmChapter } from '../../src/pressure/self-scout/result.ts';
import { share } from '../../src/stats/share.ts';

/** An invented chapter on our own film. */
export function inventedOwnFilm(): OwnFilmChapter {
  return {
    snaps: 164,
    games: 5,
    pressures: share(74, 164),
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
    clues: [
      {
        by: 'rotation',
        snaps: 90,
        values: [
          {
            value: 'to_rush',
            snaps: 47,
            coverages: [
              { coverage: 'three deep', share: share(41, 47) },
              { coverage: 'man free', share: share(6, 47) },
            ],
          },
        ],
        theilU: 0.3,
        lambda: 0.2,
        chance: 0.04,
        p: 0.001,
        adjusted: 0.003,
      },
    ],
    predictability: {
      theilU: 0.61,
      lambda: 0.55,
      chance: 0.09,
      p: 0.001,
      informationBits: 1.02,
    },
    guesses: [
      { knows: 'nothing', share: share(43, 90), byGame: { low: 0.39, high: 0.57 }, gain: null, doubtBits: 1.9 },
      {
        knows: 'situation',
        share: share(47, 90),
        byGame: { low: 0.41, high: 0.62 },
        gain: gain(0.04, -0.05, 0.13),
        doubtBits: 1.8,
      },
      {
        knows: 'path',
        share: share(74, 90),
        byGame: { low: 0.71, high: 0.91 },
        gain: gain(0.34, 0.22, 0.46),
        doubtBits: 0.9,
      },
      {
        knows: 'path_and_situation',
        share: share(71, 90),
        byGame: { low: 0.68, high: 0.88 },
        gain: gain(0.31, 0.18, 0.44),
        doubtBits: 1,
      },
    ],
    pressureRates: [
      { by: 'down', value: '1', share: share(21, 66), expected: null },
      { by: 'down', value: '3', share: share(33, 40), expected: null },
      { by: 'hash', value: 'left', share: share(30, 60), expected: 0.5 },
      { by: 'hash', value: 'middle', share: share(0, 0), expected: 0.5 },
      { by: 'after_big_play', value: 'yes', share: share(9, 11), expected: 0.5 },
    ],
    pressureSplits: [
      { by: 'down', snaps: 106, values: 2, against: 'overall', p: 0.0005, adjusted: 0.001 },
      { by: 'hash', snaps: 60, values: 2, against: 'situation', p: 0.6, adjusted: 0.6 },
    ],
    runsTest: [
      { situation: 'third_long', p: 0.03, snaps: 24, adjusted: 0.06 },
      { situation: 'first_ten', p: 0.41, snaps: 66, adjusted: 0.41 },
      { situation: 'fourth_long', p: null, snaps: 2, adjusted: null },
    ],
    rotation: [
      { path: 'rake', rotation: 'to_rush', share: share(44, 47) },
      { path: 'torch', rotation: 'none', share: share(20, 25) },
    ],
    shownEarly: share(14, 90),
    changedAfterLook: share(6, 14),
    lookChanges: {
      shown: 14,
      notCharted: 2,
      changed: { success: share(4, 5), explosive: share(1, 5) },
      left: { success: share(3, 7), explosive: share(0, 7) },
      difference: { estimate: 0.37, low: -0.18, high: 0.69 },
    },
    earlyShows: [{ by: 'path', adjusted: 0.4, values: [{ value: 'rake', share: share(9, 47) }] }],
    tellsLooked: 812,
    tells: [
      {
        asks: 'coverage',
        seen: [{ feature: 'shown_early', value: 'yes' }],
        follows: 'three deep',
        share: share(22, 24),
        expected: 0.6,
        planWith: 0.71,
        adjusted: 0.02,
        games: [{ game: 'week 1', count: 22, trials: 24 }],
        oneGameOnly: true,
      },
    ],
    remedy: {
      cap: 0.7,
      guessRate: 0.82,
      blindRate: 0.51,
      givesAway: true,
      library: true,
      readable: 9,
      swaps: [
        {
          situation: 'first_ten',
          path: 'rake',
          instead: 'three deep',
          coverage: 'man free',
          snaps: 5,
          costPoints: 0.2,
        },
        {
          situation: 'third_long',
          path: 'latch',
          instead: 'man free peel',
          coverage: 'three deep',
          snaps: 2,
          costPoints: 0.1,
        },
      ],
      reaches: 0.69,
      costPoints: 0.3,
      games: 3,
      coming: 54,
      earliest: 2,
      byGames: [
        { games: 1, needed: 9, done: 6, costPoints: 0.2, reaches: 0.73, coming: 18 },
        { games: 2, needed: 7, done: 7, costPoints: 0.3, reaches: 0.7, coming: 36 },
        { games: 3, needed: 7, done: 7, costPoints: 0.3, reaches: 0.69, coming: 54 },
      ],
      tooRare: [{ path: 'anvil', snaps: 7 }],
      oneCoverage: ['latch'],
      habits: [{ path: 'rake', snaps: 47, changeUp: { usual: 'three deep', calls: 2 } }],
    },
    onPlan: {
      paths: [{ path: 'rake', known: true, guess: 'three deep', right: 0.62, calls: 9 }],
      calls: 9,
      rate: 0.62,
    },
  };
}

function gain(difference: number, low: number, high: number) {
  return { difference, low, high };
}

function pairing(path: string, coverages: readonly (readonly [string, number])[]) {
  const snaps = coverages.reduce((sum, [, count]) => sum + count, 0);
  return { path, snaps, coverages: coverages.map(([coverage, count]) => ({ coverage, share: share(count, snaps) })) };
}
