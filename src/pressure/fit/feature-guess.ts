import { FIT_FEATURES, type FitFeature } from '../../game/fit-features.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { SnapFeatures } from './snap-features.ts';

/** Worth of what is typical against their own charted snaps of an answer, in snaps; judgment. */
export const GUESS_WORTH = 8;

/**
 * How often each word comes at an ordinary offense, in the order of the feature's words; what is left to 1 has no word
 * that a rule asks for. Judgment: it stands only where a column is blank, and what hangs on it is called unknown.
 */
const TYPICAL: Readonly<Record<FitFeature, readonly number[]>> = {
  answer: [0, 0, 0.14, 0.27, 0.38, 0.1, 0.11],
  back: [0.4, 0.15, 0.17, 0.2, 0.08],
  ball: [0.35, 0.65],
  protectors: [0.4, 0.5, 0.1],
  thrown_to: [0.12, 0.2, 0.25, 0.25, 0.08, 0.1],
  scramble: [0.06, 0.94],
  routes: [0.12, 0.05, 0.83],
  receivers: [0.4, 0.32, 0.08, 0.2],
  bunch: [0.06, 0.94],
  backs: [0.2, 0.8],
  tight_ends: [0.18, 0.82],
  motion: [0.6, 0.08, 0.1, 0.1, 0.1, 0.02],
  tempo: [0.6, 0.25, 0.1, 0.05],
  checked: [0.08, 0.92],
  option_tag: [0.75, 0.1, 0.12, 0.03],
};

/** One word a blank cell may stand for. */
export interface WordChance {
  /** Index into the feature's words. */
  readonly code: number;
  readonly chance: number;
  /** True where it is typical of offenses and not seen of this one. */
  readonly guessed: boolean;
}

/** What a blank cell may stand for, by feature, on a snap with an answer (its index, or 255). */
export type BlankCells = (feature: FitFeature, answer: number) => readonly WordChance[];

/**
 * What a blank cell stands for: the words charted on their other snaps with the same answer, against eight snaps' worth
 * of what is typical. What their own film says is known; the typical part is a guess, all of it where nobody charted the
 * column.
 */
export function blankCells(features: SnapFeatures): BlankCells {
  const found = new Map<string, readonly WordChance[]>();
  return (feature, answer) => {
    const key = `${feature} ${answer}`;
    const chances = found.get(key) ?? chancesOf(features, feature, answer);
    found.set(key, chances);
    return chances;
  };
}

/** How often a word of a feature comes at an ordinary offense. */
export function typicalShare(feature: FitFeature, code: number): number {
  return TYPICAL[feature][code] ?? 0;
}

function chancesOf(features: SnapFeatures, feature: FitFeature, answer: number): readonly WordChance[] {
  const counts = new Map<number, number>();
  let charted = 0;
  features[feature].forEach((code, row) => {
    if (code === NOT_KNOWN || features.answer[row] !== answer) return;
    counts.set(code, (counts.get(code) ?? 0) + 1);
    charted++;
  });
  const total = charted + GUESS_WORTH;
  const seen = [...counts].map(([code, count]) => ({ code, chance: count / total, guessed: false }));
  const guesses = FIT_FEATURES[feature].map((_, code) => ({
    code,
    chance: (typicalShare(feature, code) * GUESS_WORTH) / total,
    guessed: true,
  }));
  return [...seen, ...guesses].filter(({ chance }) => chance > 0);
}
