import type { ContingencyTable } from '../../stats/contingency-table.ts';
import { mutualInformation, mutualInformationTest } from '../../stats/mutual-information.ts';
import { goodmanKruskalLambda, theilU } from '../../stats/predictability.ts';
import type { OwnFilmChapter } from './result.ts';
import { codesOf, type OwnSnap, pairedPressures } from './snaps.ts';

/** How much the path of a pressure says about the coverage behind it, against what chance alone would show. */
export function predictabilityOf(snaps: readonly OwnSnap[], seed: number): OwnFilmChapter['predictability'] {
  const pressures = pairedPressures(snaps);
  const table = pairingTable(pressures, ({ path }) => path);
  const taken = doubtTaken(table, { seed: `pairings ${seed}` });
  const bits = pressures.length === 0 ? null : (mutualInformation(table, 'bits')?.millerMadow ?? null);
  return { ...taken, informationBits: bits };
}

/** How much the rows of a table say about its columns, and what shuffled logs show. */
export interface DoubtTaken {
  /** Share of the doubt about the column that the row takes away; null when there is no doubt. */
  readonly theilU: number | null;
  /** Share of wrong guesses it takes away. */
  readonly lambda: number | null;
  /** Mean of Theil's U over shuffled logs, and the share of them at least as high. */
  readonly chance: number | null;
  readonly p: number | null;
}

/** Theil's U, lambda and the permutation test of a table. */
export function doubtTaken(
  table: ContingencyTable,
  shuffles: { readonly seed: string; readonly permutations?: number },
): DoubtTaken {
  const u = table.length === 0 ? null : theilU(table, 'column-given-row');
  if (u === null) return { theilU: null, lambda: null, chance: null, p: null };
  const lambda = goodmanKruskalLambda(table, 'column-given-row');
  const test = table.length < 2 ? null : mutualInformationTest({ table, ...shuffles });
  if (test === null || test.observed === 0) return { theilU: u, lambda, chance: null, p: test?.p ?? null };
  return { theilU: u, lambda, chance: (u * test.nullMean) / test.observed, p: test.p };
}

/** Coverages counted under each word: a row for every word, a column for every coverage. */
export function pairingTable(
  snaps: readonly OwnSnap[],
  wordOf: (snap: OwnSnap) => string | undefined,
): ContingencyTable {
  const rows = codesOf(snaps.map(wordOf), -1);
  const columns = codesOf(
    snaps.map(({ coverage }) => coverage),
    -1,
  );
  const table = rows.words.map(() => columns.words.map(() => 0));
  snaps.forEach((_, i) => {
    const cells = table[rows.codes[i] as number];
    const column = columns.codes[i] as number;
    if (cells && column >= 0) cells[column] = (cells[column] as number) + 1;
  });
  return table;
}
