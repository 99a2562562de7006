import { benjaminiHochberg } from '../../stats/adjust.ts';
import { share } from '../../stats/share.ts';
import { type StratifiedAssociation, stratifiedAssociation } from '../../stats/stratified-association.ts';
import type { FeatureName, TellFeature } from '../forecast/tell-feature.ts';
import type { PressureRate, PressureSplit } from './result.ts';
import { codesOf, countWords, type OwnSnap } from './snaps.ts';

/** Splits that make up the situation; they are tested against our overall rate, all others against the situation's. */
const OF_SITUATION: readonly FeatureName[] = ['down', 'distance', 'situation'];

/** How often we send five or more by each split, and whether a split says more than chance would. */
export interface PressureRates {
  readonly rates: readonly PressureRate[];
  readonly splits: readonly PressureSplit[];
}

/**
 * How often we send five or more, by everything seen before the snap; snaps without a charted family are left out. Each
 * split is tested by shuffling our pressures, within the situation where the split is not part of it, and corrected over
 * all splits looked at (Benjamini-Hochberg).
 */
export function pressureRates(snaps: readonly OwnSnap[], seen: readonly TellFeature[], seed: number): PressureRates {
  const charted = snaps.filter(({ pressure }) => pressure !== undefined);
  const splits = [...seen.slice(0, 2), situationFeature(snaps), ...seen.slice(2)]
    .map(({ name, valueAt }) => ({ by: name, words: charted.map(({ index }) => valueAt(index)) }))
    .filter(({ words }) => words.some((word) => word !== undefined));
  const found = testSplits(charted, splits, seed);
  const adjusted = adjustedOver(splits, found);
  return {
    rates: splits.flatMap(({ by, words }, i) => ratesOf(charted, { by, words }, found[i])),
    splits: splits.map(({ by, words }, i) => ({
      by,
      snaps: words.filter((word) => word !== undefined).length,
      values: new Set(words.filter((word) => word !== undefined)).size,
      against: OF_SITUATION.includes(by) ? 'overall' : 'situation',
      p: adjusted[i] === null ? null : (found[i]?.p ?? null),
      adjusted: adjusted[i] ?? null,
    })),
  };
}

interface Split {
  readonly by: FeatureName;
  /** One per charted snap. */
  readonly words: readonly (string | undefined)[];
}

function situationFeature(snaps: readonly OwnSnap[]): TellFeature {
  return { name: 'situation', valueAt: (i) => snaps[i]?.situation };
}

function testSplits(charted: readonly OwnSnap[], splits: readonly Split[], seed: number) {
  const outcome = charted.map(({ pressure }) => Number(pressure));
  const situation = codesOf(
    charted.map((snap) => snap.situation ?? 'not charted'),
    0,
  ).codes;
  const test = (strata: readonly number[], chosen: readonly Split[]) =>
    stratifiedAssociation({
      outcome,
      strata,
      groupings: chosen.map(({ words }) => codesOf(words, -1).codes),
      seed: `pressure rate ${seed}`,
    });
  const pooled = charted.map(() => 0);
  const within = new Map(
    [false, true].map((ofSituation) => {
      const chosen = splits.filter(({ by }) => OF_SITUATION.includes(by) === ofSituation);
      const results = test(ofSituation ? pooled : situation, chosen);
      return [ofSituation, new Map(chosen.map((split, i) => [split, results[i]]))];
    }),
  );
  return splits.map((split) => within.get(OF_SITUATION.includes(split.by))?.get(split));
}

/** Corrected p of every split that has two values to compare; null for the others. */
function adjustedOver(splits: readonly Split[], found: readonly (StratifiedAssociation | undefined)[]) {
  const comparable = splits.map(({ words }) => new Set(words.filter((word) => word !== undefined)).size > 1);
  const places = comparable.flatMap((is, i) => (is ? [i] : []));
  const adjusted = benjaminiHochberg(places.map((i) => found[i]?.p ?? 1));
  return splits.map((_, i) => (comparable[i] ? (adjusted[places.indexOf(i)] ?? null) : null));
}

function ratesOf(charted: readonly OwnSnap[], { by, words }: Split, found?: StratifiedAssociation): PressureRate[] {
  const { words: values } = codesOf(words, -1);
  return countWords(words, (word) => word).map(([value, trials]) => ({
    by,
    value,
    share: share(charted.filter((snap, i) => words[i] === value && snap.pressure).length, trials),
    expected: OF_SITUATION.includes(by) ? null : (found?.expected[values.indexOf(value)] ?? 0) / trials,
  }));
}
