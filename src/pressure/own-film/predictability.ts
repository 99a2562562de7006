import type { ContingencyTable } from '../../stats/contingency-table.ts';
import { mutualInformation, mutualInformationTest } from '../../stats/mutual-information.ts';
import { goodmanKruskalLambda, theilU } from '../../stats/predictability.ts';
import type { GuessRate, OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** A log that a shuffle would beat this often or more gives nothing away. Common practice, no source. */
const SURPRISING = 0.05;

/** How much the path of a pressure says about the coverage behind it, against what chance alone would show. */
export function predictabilityOf(
  snaps: readonly OwnSnap[],
  guesses: readonly GuessRate[],
  seed: number,
): OwnFilmChapter['predictability'] {
  const pressures = snaps.filter(
    ({ pressure, path, coverage }) => pressure && path !== undefined && coverage !== undefined,
  );
  const table = pairingTable(pressures);
  const u = pressures.length === 0 ? null : theilU(table, 'column-given-row');
  const test = u === null ? null : mutualInformationTest({ table, seed: `pairings ${seed}` });
  const bits = pressures.length === 0 ? null : (mutualInformation(table, 'bits')?.millerMadow ?? null);
  const chance = test === null || u === null || test.observed === 0 ? null : (u * test.nullMean) / test.observed;
  const lambda = pressures.length === 0 ? null : goodmanKruskalLambda(table, 'column-given-row');
  const found = { theilU: u, lambda, chance, p: test?.p ?? null, informationBits: bits };
  return { ...found, words: wordsFor(found, pressures.length, guesses) };
}

function pairingTable(snaps: readonly OwnSnap[]): ContingencyTable {
  const coverages = countWords(snaps, ({ coverage }) => coverage).map(([word]) => word);
  const paths = countWords(snaps, ({ path }) => path).map(([word]) => word);
  return paths.map((path) =>
    coverages.map((coverage) => snaps.filter((snap) => snap.path === path && snap.coverage === coverage).length),
  );
}

interface Found {
  readonly theilU: number | null;
  readonly chance: number | null;
  readonly p: number | null;
}

function wordsFor({ theilU: u, chance, p }: Found, snaps: number, guesses: readonly GuessRate[]): string {
  if (snaps === 0)
    return 'No pressure of ours was charted with path and coverage, so nothing can be said of our pairings.';
  if (u === null || p === null)
    return `We played one coverage behind all ${snaps} charted pressures: whoever sees the rush knows the coverage.`;
  const said = `On our film the path takes away ${percent(u)} of the doubt about the coverage (${snaps} pressures; a shuffled log shows ${percent(chance ?? 0)}, p ${p.toFixed(3)})`;
  return p >= SURPRISING ? `${said}: no more than chance.` : `${said}${readerWords(guesses)}.`;
}

/** What the reader makes of it, in games he has not seen. */
function readerWords(guesses: readonly GuessRate[]): string {
  const [blind, path] = ['nothing', 'the path'].map((knows) => guesses.find((guess) => guess.knows === knows)?.share);
  if (!blind || !path) return ': more than chance';
  const counts = `${path.count} of ${path.trials}, blind on ${blind.count}`;
  return path.count > blind.count
    ? `: who knows the path guesses the coverage on ${counts}`
    : `, yet who knows the path guesses no better than blind (${counts})`;
}

function percent(value: number): string {
  return `${Math.round(100 * value)}%`;
}
