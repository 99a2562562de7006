import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { archiveFit, fitChain } from '../../../src/pressure/forecast/chain.ts';
import type { ChainData, ChainStrengths } from '../../../src/pressure/forecast/chain-data.ts';
import { sharesOnSnaps } from '../../../src/pressure/forecast/chain-fit.ts';
import { nodesOfFirst } from '../../../src/pressure/forecast/chain-nodes.ts';
import {
  nodeTotal,
  subtractTally,
  sumTallies,
  tallyGame,
  tallyGames,
} from '../../../src/pressure/forecast/chain-tally.ts';
import { chainTree, nodeAt } from '../../../src/pressure/forecast/chain-tree.ts';

const strengths: ChainStrengths = { own: [4, 8], fixed: true, gameToGame: 30, offenseToOffense: 32 };

/** Snaps as [first level, second level, class]; 255 is not charted. */
type Snap = readonly [number, number, number];

function data(own: readonly (readonly Snap[])[], archive: readonly Snap[] | null = null, classes = 2): ChainData {
  const games = [...own, ...(archive === null ? [] : [archive])];
  const snaps = games.flat();
  const column = (at: number) => Uint8Array.from(snaps, (snap) => snap[at] as number);
  const tree = chainTree([column(0), column(1)], snaps.length);
  const target = { codes: column(2), classes };
  let at = 0;
  const tallies = games.map((game) =>
    tallyGame(
      tree,
      target,
      game.map(() => at++),
    ),
  );
  return {
    tree,
    own: sumTallies(tree, classes, tallies.slice(0, own.length)),
    archive: archive === null ? null : { tally: tallies.at(-1)!, offenses: 1 },
    strengths,
  };
}

const snapOf = (classes: number) =>
  fc.tuple(fc.constantFrom(0, 1, 255), fc.constantFrom(0, 1, 2, 255), fc.nat({ max: classes - 1 }));
const games = (classes: number) =>
  fc.array(fc.array(snapOf(classes), { maxLength: 12 }), { minLength: 1, maxLength: 4 });
const repeat = (snap: Snap, times: number): Snap[] => Array.from({ length: times }, () => snap);

describe('fitChain without an archive', () => {
  it('is the recursion mean_k = (x_k + M_k mean_(k-1)) / (n_k + M_k)', () => {
    // Worked by hand: 3 of 10 at the root with half a count each way, then 2 of 4 with strength 4, 2 of 2 with 8.
    const film = [[...repeat([0, 0, 0], 2), ...repeat([0, 1, 1], 2), ...repeat([1, 0, 0], 1), ...repeat([1, 0, 1], 5)]];
    const chain = data(film);
    const fit = fitChain(chain);
    const root = (3 + 0.5) / (10 + 1);
    const first = (2 + 4 * root) / (4 + 4);
    const second = (2 + 8 * first) / (2 + 8);
    const shareAt = (path: number[]) => fit.shares[nodeAt(chain.tree, path) * 2];
    expect(shareAt([])).toBeCloseTo(root, 12);
    expect(shareAt([0])).toBeCloseTo(first, 12);
    expect(shareAt([0, 0])).toBeCloseTo(second, 12);
    expect(fit.ownWeight[nodeAt(chain.tree, [0])]).toBeCloseTo(0.5, 12);
  });

  it('pools a level of infinite strength with the level above', () => {
    const chain = { ...data([repeat([0, 0, 0], 6).concat(repeat([1, 0, 1], 6))]) };
    const fit = fitChain({ ...chain, strengths: { ...strengths, own: [Number.POSITIVE_INFINITY, 8] } });
    expect(fit.shares[nodeAt(chain.tree, [0]) * 2]).toBeCloseTo(fit.shares[0]!, 12);
    expect(fit.ownWeight[nodeAt(chain.tree, [0])]).toBe(0);
  });

  it('is less sure of a pooled cell than of all snaps, by as much as cells differ', () => {
    const chain = data([repeat([0, 0, 0], 40).concat(repeat([1, 0, 1], 40))]);
    const pooled = { ...strengths, own: [Number.POSITIVE_INFINITY, 8] };
    const worthOf = (cellToCell?: number) => {
      const fit = fitChain({ ...chain, strengths: cellToCell === undefined ? pooled : { ...pooled, cellToCell } });
      return [fit.concentration[0]!, fit.concentration[nodeAt(chain.tree, [0])]!];
    };
    const [all, cell] = worthOf() as [number, number];
    expect(cell).toBeCloseTo(all, 12);
    // Variances add: 1 / worth = 1 / cellToCell + 1 / worth of the cell above.
    expect(worthOf(20)[1]).toBeCloseTo(1 / (1 / 20 + 1 / all), 12);
    expect(worthOf(20)[0]).toBe(all);
  });

  it('says every class is as likely as another when nothing was charted', () => {
    const fit = fitChain(data([[]], null, 4));
    expect([...fit.shares]).toEqual([0.25, 0.25, 0.25, 0.25]);
  });
});

describe('fitChain', () => {
  it('gives shares that sum to 1 in every cell, with and without an archive', () => {
    fc.assert(
      fc.property(games(3), fc.option(fc.array(snapOf(3), { minLength: 1, maxLength: 30 })), (own, archive) => {
        const fit = fitChain(data(own, archive, 3));
        for (let node = 0; node < fit.concentration.length; node++) {
          const shares = [...fit.shares.subarray(node * 3, node * 3 + 3)];
          expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
          expect(Math.min(...shares)).toBeGreaterThan(0);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('gives relabeled answers for relabeled classes', () => {
    fc.assert(
      fc.property(games(3), fc.option(fc.array(snapOf(3), { minLength: 1, maxLength: 30 })), (own, archive) => {
        const turn = (list: readonly Snap[]) => list.map(([a, b, k]): Snap => [a, b, (k + 1) % 3]);
        const fit = fitChain(data(own, archive, 3));
        const turned = fitChain(data(own.map(turn), archive === null ? null : turn(archive), 3));
        fit.shares.forEach((share, i) => {
          expect(turned.shares[i - (i % 3) + ((i + 1) % 3)]).toBeCloseTo(share, 9);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('lies between the film and the archive over all snaps, exactly by the weight of the film', () => {
    fc.assert(
      fc.property(games(3), fc.array(snapOf(3), { minLength: 1, maxLength: 30 }), (own, archive) => {
        const joined = data(own, [...archive, [0, 0, 0], [0, 0, 1], [0, 0, 2]], 3);
        const snaps = nodeTotal(joined.own, 0);
        fc.pre(snaps > 0);
        const fit = fitChain(joined);
        const base = archiveFit({ ...joined, archive: joined.archive! });
        const weight = fit.ownWeight[0]!;
        expect(weight).toBeGreaterThan(0);
        expect(weight).toBeLessThan(1);
        const league = sharesOnSnaps(base, joined.own);
        for (let k = 0; k < 3; k++) {
          const film = (joined.own.counts[k]! + 0.5) / (snaps + 1.5); // half a snap a class, as without an archive
          expect(fit.shares[k]).toBeCloseTo(weight * film + (1 - weight) * (league[k]! / snaps), 12);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is hardly moved by an archive that is the opponent itself, and is surer with it', () => {
    const own = [
      [...repeat([0, 0, 0], 30), ...repeat([0, 1, 1], 20), ...repeat([1, 0, 0], 10), ...repeat([1, 0, 1], 40)],
      [...repeat([0, 0, 0], 30), ...repeat([0, 1, 1], 20), ...repeat([1, 0, 0], 10), ...repeat([1, 0, 1], 40)],
    ];
    const [plain, same] = [fitChain(data(own)), fitChain(data(own, own.flat()))];
    expect(same.concentration[0]).toBeGreaterThan(plain.concentration[0]!);
    for (const node of [0, 1, 2]) expect(Math.abs(same.shares[2 * node]! - plain.shares[2 * node]!)).toBeLessThan(0.02);
  });

  it('is worth more with more film of the same kind, in every cell', () => {
    fc.assert(
      fc.property(games(2), (own) => {
        const [once, twice] = [fitChain(data(own)), fitChain(data([...own, ...own]))];
        twice.concentration.forEach((worth, node) => {
          expect(worth).toBeGreaterThanOrEqual(once.concentration[node]! - 1e-9);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('says the same, to the bit, of the cells of the own film when only these are fitted', () => {
    fc.assert(
      fc.property(games(3), fc.option(fc.array(snapOf(3), { minLength: 1, maxLength: 30 })), (own, archive) => {
        const chain = data(own, archive, 3);
        const nodes = nodesOfFirst(chain.tree, own.flat().length);
        const base = chain.archive && archiveFit({ ...chain, archive: chain.archive });
        const [whole, part] = [fitChain(chain), fitChain({ ...chain, nodes, ...(base && { base }) })];
        for (const node of nodes) {
          expect(part.shares.slice(3 * node, 3 * node + 3)).toEqual(whole.shares.slice(3 * node, 3 * node + 3));
          expect(part.concentration[node]).toBe(whole.concentration[node]);
          expect(part.ownWeight[node]).toBe(whole.ownWeight[node]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('counts several games at once as the sum of the games', () => {
    fc.assert(
      fc.property(games(3), fc.array(fc.nat({ max: 3 }), { minLength: 48, maxLength: 48 }), (film, weights) => {
        const snaps = film.flat();
        const column = (at: number) => Uint8Array.from(snaps, (snap) => snap[at] as number);
        const tree = chainTree([column(0), column(1)], snaps.length);
        const target = { codes: column(2), classes: 3, weights: Float64Array.from(weights) };
        let at = 0;
        const rows = film.map((game) => game.map(() => at++));
        const each = rows.map((game) => tallyGame(tree, target, game));
        expect(tallyGames(tree, target, rows)).toEqual(sumTallies(tree, 3, each));
        each.forEach((tally) => {
          tally.games.forEach((count, node) => {
            expect(count).toBe(nodeTotal(tally, node) > 0 ? 1 : 0);
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  it('finds the cells of the first snaps and all above them, parents first', () => {
    const levels = [Uint8Array.of(0, 1, 255, 1, 2), Uint8Array.of(3, 255, 3, 4, 0)];
    const tree = chainTree(levels, 5);
    const paths = [[], [0], [1], [0, 3]];
    expect([...nodesOfFirst(tree, 3)]).toEqual(paths.map((path) => nodeAt(tree, path)).sort((a, b) => a - b));
    expect([...nodesOfFirst(tree, 0)]).toEqual([0]);
    expect(nodesOfFirst(tree, 5)).toHaveLength(tree.parent.length);
  });

  it('keeps a class the archive never shows at what the offense itself shows', () => {
    const own = [repeat([0, 0, 0], 30).concat(repeat([0, 0, 2], 30))];
    const fit = fitChain(data(own, repeat([0, 0, 0], 300).concat(repeat([0, 0, 1], 300)), 3));
    expect(fit.shares[2]).toBeGreaterThan(0.45);
    expect(fit.shares[2]).toBeLessThan(0.55);
  });

  it('lets a level not charted end the path, never form a cell', () => {
    const chain = data([[...repeat([255, 0, 0], 5), ...repeat([0, 255, 1], 5)]]);
    expect(chain.tree.parent).toHaveLength(2);
    expect(nodeTotal(chain.own, 0)).toBe(10);
    expect(nodeTotal(chain.own, 1)).toBe(5);
  });
});

describe('subtractTally', () => {
  it('leaves what a count of the other games alone would give', () => {
    fc.assert(
      fc.property(games(2), (own) => {
        const { tree } = data(own);
        const snaps = own.flat();
        const target = { codes: Uint8Array.from(snaps, (snap) => snap[2]), classes: 2 };
        let at = 0;
        const tallies = own.map((game) =>
          tallyGame(
            tree,
            target,
            game.map(() => at++),
          ),
        );
        const whole = sumTallies(tree, 2, tallies);
        expect(subtractTally(whole, tallies[0]!)).toEqual(sumTallies(tree, 2, tallies.slice(1)));
      }),
      { numRuns: 40 },
    );
  });
});
