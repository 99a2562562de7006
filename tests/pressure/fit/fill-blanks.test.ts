import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_FIT_RULES } from '../../../src/game/default-fit-rules.ts';
import { FAMILIES, type Family } from '../../../src/game/families.ts';
import { FIT_FEATURES, type FitFeature } from '../../../src/game/fit-features.ts';
import { type BlankCells, blankCells } from '../../../src/pressure/fit/feature-guess.ts';
import type { SnapFeatures } from '../../../src/pressure/fit/snap-features.ts';
import {
  type ReadyRule,
  readyRules,
  rulesOf,
  type SnapWords,
  VERDICTS,
  verdictOf,
} from '../../../src/pressure/fit/verdict.ts';
import { verdictReader } from '../../../src/pressure/fit/verdict-shares.ts';

const [NO_WORD, NOT_KNOWN] = [254, 255];
const names = Object.keys(FIT_FEATURES) as FitFeature[];
const rules = readyRules(DEFAULT_FIT_RULES);
const SCORE: Readonly<Record<string, number>> = { right: 1, neutral: 0, wrong: -1 };

/** One word in every blank cell: what they are, how likely, and which of them are guesses that a rule listens to. */
interface Filling {
  readonly snap: SnapWords;
  readonly chance: number;
  readonly guesses: readonly FitFeature[];
  readonly heard: readonly FitFeature[];
}

/** Every way of filling the blank cells of a snap, one by one, the answer first. */
function everyFilling(snap: SnapWords, features: readonly FitFeature[], blanks: BlankCells): Filling[] {
  const start: Filling = { snap, chance: 1, guesses: [], heard: [] };
  return features
    .filter((feature) => snap[feature] === NOT_KNOWN)
    .reduce<Filling[]>(
      (fillings, feature) =>
        fillings.flatMap((one) =>
          blanks(feature, one.snap.answer).map(({ code, chance, guessed }) => ({
            snap: { ...one.snap, [feature]: code },
            chance: one.chance * chance,
            guesses: guessed ? [...one.guesses, feature] : one.guesses,
            heard: one.heard,
          })),
        ),
      [start],
    );
}

const heardBy = (own: readonly ReadyRule[], { snap, guesses }: Filling) =>
  guesses.filter((feature) =>
    own.some(({ features, wanted }) => wanted[features.indexOf(feature)]?.includes(snap[feature])),
  );

/** The verdict of a filling with its guesses, and without those that a rule listens to. */
function verdictsOf(own: readonly ReadyRule[], filling: Filling): [string, string] {
  const silenced = Object.fromEntries(heardBy(own, filling).map((feature) => [feature, NO_WORD]));
  return [verdictOf(own, filling.snap), verdictOf(own, { ...filling.snap, ...silenced })];
}

function shareWord([said, surely]: [string, string]): string {
  if (said === surely) return said;
  if (![said, surely].includes('neutral')) return 'open';
  return [said, surely].includes('right') ? 'may_be_right' : 'may_be_wrong';
}

function oneByOne(own: readonly ReadyRule[], fillings: readonly Filling[]) {
  const shares = VERDICTS.map(() => 0);
  const open = { chance: 0, change: 0 };
  let guessed = 0;
  for (const filling of fillings) {
    const pair = verdictsOf(own, filling);
    const at = (VERDICTS as readonly string[]).indexOf(shareWord(pair));
    shares[at] = (shares[at] ?? 0) + filling.chance;
    if (filling.guesses.length > 0) guessed += filling.chance;
    if (pair[0] === pair[1] || heardBy(own, filling).length !== 1) continue;
    open.chance += filling.chance;
    open.change += filling.chance * ((SCORE[pair[0]] ?? 0) - (SCORE[pair[1]] ?? 0));
  }
  return { shares, guessed, open };
}

/** A blank comes half of the time, on the answer too; a word that a snap cannot have now and then. */
const anyCode = (feature: FitFeature) =>
  fc.oneof(
    { weight: 6, arbitrary: fc.nat(FIT_FEATURES[feature].length - 1) },
    { weight: 3, arbitrary: fc.constant(NOT_KNOWN) },
    { weight: feature === 'answer' ? 0 : 1, arbitrary: fc.constant(NO_WORD) },
  );
const anySnap = fc
  .tuple(...names.map(anyCode))
  .map((codes) => Object.fromEntries(names.map((name, i) => [name, codes[i]])) as unknown as SnapWords);

const columnsOf = (film: readonly SnapWords[]) =>
  Object.fromEntries(names.map((name) => [name, Uint8Array.from(film, (snap) => snap[name])])) as SnapFeatures;

describe('filling what was not charted', () => {
  it('says of a snap what filling its blank cells one by one says, for every family', () => {
    const families = FAMILIES as readonly Family[];
    fc.assert(
      fc.property(fc.array(anySnap, { minLength: 1, maxLength: 8 }), fc.constantFrom(...families), (film, family) => {
        const blanks = blankCells(columnsOf(film));
        const own = rulesOf(family, rules);
        const features = names.filter((name) => own.some((ready) => ready.features.includes(name)));
        const read = verdictReader(own, blanks);
        for (const snap of film) {
          const fillings = everyFilling(snap, features, blanks);
          if (fillings.length > 20_000) continue;
          const [found, wanted] = [read(snap), oneByOne(own, fillings)];
          VERDICTS.forEach((_, v) => {
            expect(found.shares[v]).toBeCloseTo(wanted.shares[v] as number, 10);
          });
          expect(found.guessed).toBeCloseTo(wanted.guessed, 10);
          const sumOf = (what: 'chance' | 'change') => found.open().reduce((sum, word) => sum + word[what], 0);
          expect(sumOf('chance')).toBeCloseTo(wanted.open.chance, 10);
          expect(sumOf('change')).toBeCloseTo(wanted.open.change, 10);
        }
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('reads a snap of which nothing was charted in a moment, by every rule there is', () => {
    const nothing = Object.fromEntries(names.map((name) => [name, NOT_KNOWN])) as unknown as SnapWords;
    const read = verdictReader(rules, blankCells(columnsOf([nothing])));
    const { shares, guessed } = read(nothing);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 10);
    expect(guessed).toBeCloseTo(1, 10);
  });
});
