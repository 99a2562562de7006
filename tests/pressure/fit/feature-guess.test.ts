import { describe, expect, it } from 'vitest';
import { FIT_FEATURES, type FitFeature } from '../../../src/game/fit-features.ts';
import { blankCells, typicalShare } from '../../../src/pressure/fit/feature-guess.ts';
import type { SnapFeatures } from '../../../src/pressure/fit/snap-features.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

const features = Object.keys(FIT_FEATURES) as FitFeature[];
const typical = (feature: FitFeature) => FIT_FEATURES[feature].map((_, code) => typicalShare(feature, code));
const codeOf = (feature: FitFeature, word: string) => (FIT_FEATURES[feature] as readonly string[]).indexOf(word);

/** Snaps with these words; everything else about them is blank. */
function snapsOf(column: FitFeature, snaps: readonly { readonly answer: string; readonly word: string | null }[]) {
  const blank = Uint8Array.from(snaps, () => NOT_KNOWN);
  const codes = Uint8Array.from(snaps, ({ word }) => (word === null ? NOT_KNOWN : codeOf(column, word)));
  const answer = Uint8Array.from(snaps, (snap) => codeOf('answer', snap.answer));
  const none = Object.fromEntries(features.map((feature) => [feature, blank]));
  return { ...none, answer, [column]: codes } as unknown as SnapFeatures;
}

describe('what an ordinary offense does', () => {
  it.each(features)('%s: shares of snaps, which together are no more than all of them', (feature) => {
    const shares = typical(feature);
    for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
  });

  // Common practice, no source: what a staff takes for granted of an offense it has not charted.
  it('holds for granted what every staff would', () => {
    const likelier = (feature: FitFeature, more: string, less: string) =>
      expect(typicalShare(feature, codeOf(feature, more))).toBeGreaterThan(
        typicalShare(feature, codeOf(feature, less)),
      );
    likelier('answer', 'dropback', 'screen');
    likelier('protectors', 'six', 'seven_or_more');
    likelier('back', 'blocks', 'releases_wide');
    likelier('motion', 'none', 'fast');
    likelier('tempo', 'huddle', 'no_huddle');
    likelier('receivers', 'balanced', 'empty');
    for (const feature of ['scramble', 'bunch', 'checked'] as const) likelier(feature, 'no', 'yes');
  });
});

describe('a blank cell', () => {
  const snaps = [
    ...Array.from({ length: 6 }, () => ({ answer: 'dropback', word: 'five' })),
    ...Array.from({ length: 2 }, () => ({ answer: 'dropback', word: 'six' })),
    ...Array.from({ length: 9 }, () => ({ answer: 'screen', word: 'seven_or_more' })),
    { answer: 'dropback', word: null },
  ];
  const cells = blankCells(snapsOf('protectors', snaps));
  const chanceOf = (answer: string, word: string, guessed: boolean) =>
    cells('protectors', codeOf('answer', answer)).find(
      (one) => one.code === codeOf('protectors', word) && one.guessed === guessed,
    )?.chance;

  it('reads what they did on the same answer, with eight snaps of what is typical against it', () => {
    expect(chanceOf('dropback', 'five', false)).toBeCloseTo(6 / 16, 12);
    expect(chanceOf('dropback', 'six', false)).toBeCloseTo(2 / 16, 12);
    expect(chanceOf('dropback', 'seven_or_more', false)).toBeUndefined();
    expect(chanceOf('dropback', 'six', true)).toBeCloseTo((8 * typicalShare('protectors', 1)) / 16, 12);
  });

  it('is a guess and nothing else on an answer they never showed', () => {
    const guesses = cells('protectors', codeOf('answer', 'play_action'));
    expect(guesses.every(({ guessed }) => guessed)).toBe(true);
    expect(guesses.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
  });
});
