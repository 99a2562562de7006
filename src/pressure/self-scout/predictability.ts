import type { ContingencyTable } from '../../stats/contingency-table.ts';
import { mutualInformation, mutualInformationTest } from '../../stats/mutual-information.ts';
import { goodmanKruskalLambda, theilU } from '../../stats/predictability.ts';
import type { GuessRate, OwnFilmChapter } from './result.ts';
import { codesOf, countWords, type OwnSnap, pairedPressures } from './snaps.ts';

/** A log that a shuffle would beat this often or more gives nothing away. Common practice, no source. */
const SURPRISING = 0.05;

/** How much the path of a pressure says about the coverage behind it, against what chance alone would show. */
export function predictabilityOf(
  snaps: readonly OwnSnap[],
  guesses: readonly GuessRate[],
  seed: number,
): OwnFilmChapter['predictability'] {
  const pressures = pairedPressures(snaps);
  const table = pairingTable(pressures, ({ path }) => path);
  const taken = doubtTaken(table, { seed: `pairings ${seed}` });
  const bits = pressures.length === 0 ? null : (mutualInformation(table, 'bits')?.millerMadow ?? null);
  return { ...taken, informationBits: bits, words: wordsFor(taken, pressures, guesses) };
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

function wordsFor(
  { theilU: u, chance, p }: DoubtTaken,
  pressures: readonly OwnSnap[],
  guesses: readonly GuessRate[],
): string {
  const snaps = pressures.length;
  if (snaps === 0)
    return 'None of our pressures was charted with path and coverage, so nothing can be said of our pairings.';
  if (u === null || p === null)
    return `We played one coverage behind all ${snaps} charted pressures: whoever sees the rush knows the coverage.`;
  const said = `On our film the path takes away ${percent(u)} of the doubt about the coverage (${snaps} pressures; a shuffled log shows ${percent(chance ?? 0)}, p ${p.toFixed(3)})`;
  return p >= SURPRISING ? `${said}: no more than chance.` : `${said}${readerWords(guesses, pressures)}.`;
}

/** What the reader makes of it, in games he has not seen. */
function readerWords(guesses: readonly GuessRate[], pressures: readonly OwnSnap[]): string {
  const [blind, path] = ['nothing', 'the path'].map((knows) => guesses.find((guess) => guess.knows === knows));
  if (!blind || !path) return ': more than chance';
  const counts = `${path.share.count} of ${path.share.trials}, blind on ${blind.share.count}`;
  if (path.share.count <= blind.share.count)
    return `, yet who knows the path guesses no better than blind (${counts})${oneBehindMost(pressures)}`;
  const sure = path.gain && path.gain.low > 0 ? '' : ', a gain that may be chance from game to game';
  return `: who knows the path guesses the coverage on ${counts}${sure}`;
}

/** Names the coverage that is behind more than half of the pressures: it is what a blind guess lives off. */
function oneBehindMost(pressures: readonly OwnSnap[]): string {
  const [coverage, times] = countWords(pressures, (snap) => snap.coverage)[0] ?? ['', 0];
  return 2 * times > pressures.length ? `: ${coverage} is behind ${times} of them, whatever the path` : '';
}

function percent(value: number): string {
  return `${Math.round(100 * value)}%`;
}
