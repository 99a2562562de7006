import { benjaminiHochberg } from '../../../src/stats/adjust.ts';
import { fisherExact } from '../../../src/stats/fisher.ts';
import { mutualInformation, mutualInformationTest } from '../../../src/stats/mutual-information.ts';
import { permutationP } from '../../../src/stats/permutation.ts';
import { goodmanKruskalLambda, theilU } from '../../../src/stats/predictability.ts';
import type { Adapter } from '../check.ts';

/** Tests, information and predictability in tables, and adjustment for many tests. */
export const TABLE_ADAPTERS: Record<string, Adapter> = {
  'padjust.bh': ({ p, m }) => {
    const values = benjaminiHochberg(p, m);
    const rejected = [0.01, 0.05, 0.1, 0.2].map((q) => [`rejected_at_${q}`, values.filter((v) => v <= q).length]);
    return { adjusted: values, ...Object.fromEntries(rejected) };
  },
  'fisher.rxc': ({ table, seed = 1 }) => ({ p_two_sided: fisherExact({ table, seed }).p }),
  mi: ({ table, unit }) => {
    const got = mutualInformation(table, unit);
    return {
      H_row: got?.row,
      H_col: got?.column,
      H_joint: got?.joint,
      mi: got?.value,
      mi_miller_madow: got?.millerMadow,
    };
  },
  'mi.permutation_p': ({ table, B, seed }) => {
    const p = mutualInformationTest({ table, permutations: B, seed })?.p;
    const again = mutualInformationTest({ table, permutations: B, seed })?.p;
    // The same seed must give the same p; a second answer would be none.
    return p === again ? { p_exact: p, p } : {};
  },
  'permutation.mc_p': ({ b, B }) => ({ p: permutationP(b, B) }),
  'assoc.predictability': ({ table }) => ({
    lambda_col_given_row: goodmanKruskalLambda(table, 'column-given-row'),
    lambda_row_given_col: goodmanKruskalLambda(table, 'row-given-column'),
    u_col_given_row: theilU(table, 'column-given-row'),
    u_row_given_col: theilU(table, 'row-given-column'),
  }),
};
