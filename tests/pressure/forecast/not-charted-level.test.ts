import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { ChainFit } from '../../../src/pressure/forecast/chain-fit.ts';
import { sharesOnSnap } from '../../../src/pressure/forecast/chain-snap.ts';
import { tallyGame } from '../../../src/pressure/forecast/chain-tally.ts';
import { chainTree, nodeAt } from '../../../src/pressure/forecast/chain-tree.ts';
import { fitTarget, forecastFilm } from '../../../src/pressure/forecast/forecast-film.ts';
import { leftOutShares } from '../../../src/pressure/forecast/left-out-shares.ts';
import { TARGET_DEFINITIONS } from '../../../src/pressure/forecast/target.ts';
import { findTells } from '../../../src/pressure/forecast/tells.ts';
import { createRandom } from '../../../src/stats/random.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

/** Football by down alone: they run on first, seldom on third; the quarterback's depth says nothing. */
function byDown(seed: string, games: number, depthAt: (i: number) => string | undefined): SnapRecord[] {
  const random = createRandom(seed);
  const pick = <T>(list: readonly T[]) => list[random.integer(list.length)] as T;
  return Array.from({ length: games * 60 }, (_, i): SnapRecord => {
    const down = pick([1, 1, 2, 3]);
    const runs = random.uniform() < [0.75, 0.5, 0.15][down - 1]!;
    const depth = depthAt(i);
    return {
      game: `w${Math.floor(i / 60)}`,
      offense: seed,
      down,
      to_go: down === 1 ? 10 : pick([2, 5, 8]),
      ball_on: 20 + random.integer(60),
      ...(depth === undefined ? {} : { quarterback_depth: depth }),
      motion: pick(['none', 'none', 'across']),
      play_kind: runs ? 'run' : pick(['quick', 'dropback', 'screen']),
    };
  });
}

const tellsOf = (chart: Film, archive: Film | null = null) =>
  findTells(forecastFilm(chart, archive, cuts), chart, cuts).tells.map(({ id }) => id);
const depths = ['shotgun', 'under_center'];

describe('a look that was not charted', () => {
  const archive = filmFromRecords([1, 2, 3, 4].flatMap((n) => byDown(`other ${n}`, 4, (i) => depths[i % 2])));

  it.each([
    ['never', () => undefined],
    ['on two snaps of five', (i: number) => (i % 5 < 2 ? depths[i % 2] : undefined)],
    ['on three snaps of five', (i: number) => (i % 5 < 3 ? depths[i % 2] : undefined)],
    ['only where it is under center', (i: number) => (i % 5 === 0 ? 'under_center' : undefined)],
  ] as const)('%s: down and distance are no habit', (_, depthAt) => {
    const chart = filmFromRecords(byDown('blank look', 5, depthAt));
    expect(tellsOf(chart)).toEqual([]);
    expect(tellsOf(chart, archive)).toEqual([]);
  });

  it.each([null, archive])('leaves a share of every class on every snap, whatever is asked', (others) => {
    const chart = filmFromRecords(byDown('blank look', 5, (i) => (i % 5 === 0 ? 'under_center' : undefined)));
    const film = forecastFilm(chart, others, cuts);
    for (const definition of TARGET_DEFINITIONS.filter(({ target }) => ['motion', 'run_or_pass'].includes(target))) {
      const { shares } = leftOutShares(film, fitTarget(film, definition, 'line'));
      for (let i = 0; i < chart.size; i++) expect(shares[2 * i]! + shares[2 * i + 1]!).toBeCloseTo(1, 9);
    }
  });
});

describe('sharesOnSnap', () => {
  // Looks 0 and 1 by situations 0 and 1; situation 1 was seen three times under look 0 and once under look 1.
  const looks = Uint8Array.of(0, 0, 0, 1, 1, 255);
  const situations = Uint8Array.of(1, 1, 1, 1, 0, 1);
  const tree = chainTree([looks, situations], 6);
  const own = tallyGame(tree, { codes: Uint8Array.of(0, 0, 1, 1, 0, 1), classes: 2 }, [0, 1, 2, 3, 4]);
  const shares = new Float64Array(2 * tree.parent.length);
  const runsAt = (path: readonly number[], share: number) => {
    shares.set([share, 1 - share], 2 * nodeAt(tree, path));
  };
  runsAt([], 0.5);
  runsAt([0, 1], 0.8);
  runsAt([1, 1], 0.4);
  runsAt([1, 0], 0.1);
  const fit = { classes: 2, shares } as unknown as ChainFit;
  const chain = { tree, fit, own, archive: null };

  it('is the cell of a snap on which everything was charted, or everything down to some level', () => {
    expect([...sharesOnSnap(chain, [1, 0])]).toEqual([0.1, 0.9]);
    expect([...sharesOnSnap(chain, [255, 255])]).toEqual([0.5, 0.5]);
  });

  it('averages over a look that was not charted, each as often as they showed it in that situation', () => {
    expect(sharesOnSnap(chain, [255, 1])[0]).toBeCloseTo((3 * 0.8 + 1 * 0.4) / 4, 12);
    expect(sharesOnSnap(chain, [255, 0])[0]).toBeCloseTo(0.1, 12);
  });

  it('lets the others say a little of which look it was, as much as eight snaps', () => {
    const others = tallyGame(tree, { codes: Uint8Array.of(0, 0, 0, 0, 0, 0), classes: 2 }, [2, 3]);
    const share = sharesOnSnap({ ...chain, archive: { tally: others } }, [255, 1])[0];
    expect(share).toBeCloseTo(((3 + 4) * 0.8 + (1 + 4) * 0.4) / 12, 12);
  });

  it('is what is expected over all snaps in a situation nobody has film of', () =>
    expect([...sharesOnSnap(chain, [255, 7])]).toEqual([0.5, 0.5]));
});
