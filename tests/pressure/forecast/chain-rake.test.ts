import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { archiveFit } from '../../../src/pressure/forecast/chain.ts';
import { rake } from '../../../src/pressure/forecast/chain-rake.ts';
import { tallyGame } from '../../../src/pressure/forecast/chain-tally.ts';
import { chainTree } from '../../../src/pressure/forecast/chain-tree.ts';

const strengths = { own: [8], gameToGame: 36, offenseToOffense: 32 };

describe('rake', () => {
  it('moves the cells by one ratio a class until they add up to the cell above on the own snaps', () => {
    const snap = fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 2 }));
    const film = fc.array(snap, { minLength: 20, maxLength: 80 });
    const wanted = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0.05, max: 1, noNaN: true })));
    fc.assert(
      fc.property(film, wanted, fc.array(fc.nat({ max: 30 }), { minLength: 6, maxLength: 6 }), (snaps, parts, own) => {
        const tree = chainTree([Uint8Array.from(snaps, ([cell]) => cell)], snaps.length);
        const target = { codes: Uint8Array.from(snaps, ([, code]) => code), classes: 3 };
        const rows = snaps.map((_, i) => i);
        const base = archiveFit({ tree, archive: { tally: tallyGame(tree, target, rows), offenses: 1 }, strengths });
        const sum = parts.reduce((a, b) => a + b, 0);
        const shares = Float64Array.from(parts, (part) => part / sum);
        const snapsOf = Float64Array.from(tree.parent, (_, node) => (node === 0 ? 0 : own[node]!));
        const total = snapsOf.reduce((a, b) => a + b, 0);
        fc.pre(total > 0);
        const ratios = new Float64Array(3);
        const snapsBelow = { classes: 1, counts: snapsOf, ending: snapsOf, games: snapsOf.map(Math.sign) };
        rake({ tree, base, node: 0, target: shares, own: snapsBelow }, ratios);
        const added = [0, 0, 0];
        for (let node = 1; node < tree.parent.length; node++) {
          const moved = [...base.shares.subarray(3 * node, 3 * node + 3)].map((share, k) => share * ratios[k]!);
          const all = moved.reduce((a, b) => a + b, 0);
          for (const k of [0, 1, 2]) added[k]! += (snapsOf[node]! * moved[k]!) / all / total;
        }
        for (const k of [0, 1, 2]) expect(added[k]).toBeCloseTo(shares[k]!, 3);
      }),
      { numRuns: 60 },
    );
  });
});
