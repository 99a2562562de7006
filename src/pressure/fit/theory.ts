import type { FitFeature } from '../../game/fit-features.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { ExpectedPart, ExpectedSnaps } from './expected-snaps.ts';
import { type BlankCells, blankCells } from './feature-guess.ts';
import type { VerdictPart } from './fit-shares.ts';
import { answerAlone, PASS_OF_ANY_KIND, type SnapFeatures } from './snap-features.ts';
import { meets, type ReadyRule, type SnapWords, VERDICTS } from './verdict.ts';
import { type SnapVerdict, verdictReader } from './verdict-shares.ts';

/** Their film as the rules read it. */
export interface ReadFilm {
  readonly snaps: readonly SnapWords[];
  readonly blanks: BlankCells;
}

/** One set of rules read on every film snap, and on a snap with an answer their film has not shown. */
export interface Theory {
  readonly verdicts: readonly SnapVerdict[];
  /** The verdict on a snap of a part that their film has not shown. */
  readonly unseen: (part: ExpectedPart) => SnapVerdict;
}

/** Turns columns of features into snaps. */
export function readFilm(features: SnapFeatures, size: number): ReadFilm {
  const names = Object.keys(features) as FitFeature[];
  const snaps = Array.from({ length: size }, (_, row) =>
    Object.fromEntries(names.map((name) => [name, features[name][row]])),
  );
  return { snaps: snaps as unknown as SnapWords[], blanks: blankCells(features) };
}

/** Reads sets of rules on a film, the same set once: most calls of a family have no rule of their own. */
export function theoryReader(film: ReadFilm): (rules: readonly ReadyRule[]) => Theory {
  const found = new Map<string, Theory>();
  return (rules) => {
    const key = rules.map(({ rule }) => `${rule.id} ${rule.families.join(' ')}`).join();
    const theory = found.get(key) ?? readTheory(rules, film);
    found.set(key, theory);
    return theory;
  };
}

function readTheory(rules: readonly ReadyRule[], { snaps, blanks }: ReadFilm): Theory {
  const read = verdictReader(rules, blanks);
  return { verdicts: snaps.map(read), unseen: (part) => read(unseenSnap(part)) };
}

/** A snap of which at most the answer is known. */
export function unseenSnap({ answer }: ExpectedPart): SnapWords {
  return answer === null ? PASS_OF_ANY_KIND : answerAlone(answer);
}

/** The verdicts of a theory among the expected snaps with each answer. */
export function verdictParts(theory: Theory, { parts }: ExpectedSnaps): VerdictPart[] {
  return parts.map((part) => {
    const shares = VERDICTS.map((_, v) => partMean(part, theory, (verdict) => verdict.shares[v] as number));
    const guessed = partMean(part, theory, (verdict) => verdict.guessed);
    const squares = part.weights.reduce((sum, weight) => sum + weight ** 2, 0);
    return { alpha: part.alpha, shares, guessed, worth: squares === 0 ? 0 : 1 / squares };
  });
}

/** Mean over the expected snaps of a figure of the theory's verdict. */
export function expectedMean(
  theory: Theory,
  { parts }: ExpectedSnaps,
  figure: (verdict: SnapVerdict) => number,
): number {
  const total = parts.reduce((sum, { alpha }) => sum + alpha, 0);
  if (total === 0) return 0;
  return parts.reduce((sum, part) => sum + (part.alpha / total) * partMean(part, theory, figure), 0);
}

/** Visits the theory's verdict on every film snap that expected snaps look like, with the share it stands for. */
export function eachExpected(
  theory: Theory,
  { parts }: ExpectedSnaps,
  visit: (verdict: SnapVerdict, share: number) => void,
): void {
  const total = parts.reduce((sum, { alpha }) => sum + alpha, 0);
  for (const part of parts.filter(({ alpha }) => alpha > 0)) {
    const share = part.alpha / total;
    if (part.rows.length === 0) visit(theory.unseen(part), share);
    part.rows.forEach((row, i) => {
      visit(theory.verdicts[row] as SnapVerdict, share * (part.weights[i] as number));
    });
  }
}

function partMean(part: ExpectedPart, theory: Theory, figure: (verdict: SnapVerdict) => number): number {
  if (part.rows.length === 0) return part.alpha === 0 ? 0 : figure(theory.unseen(part));
  let sum = 0;
  for (let i = 0; i < part.rows.length; i++) {
    sum += (part.weights[i] as number) * figure(theory.verdicts[part.rows[i] as number] as SnapVerdict);
  }
  return sum;
}

/** The chance that a snap meets a rule as far as their film knows: blank cells by their other snaps, guesses left out. */
export function ruleChance(ready: ReadyRule, snap: SnapWords, blanks: BlankCells): number {
  const met = meets(ready, snap);
  if (met !== undefined) return Number(met);
  return ready.features.reduce((product, feature, i) => {
    const wanted = ready.wanted[i] as readonly number[];
    if (snap[feature] !== NOT_KNOWN) return product;
    const seen = blanks(feature, snap.answer).filter(({ code, guessed }) => !guessed && wanted.includes(code));
    return product * seen.reduce((sum, { chance }) => sum + chance, 0);
  }, 1);
}
