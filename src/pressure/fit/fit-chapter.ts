import type { Call, CallLibrary } from '../../game/call-library.ts';
import type { FitFeature } from '../../game/fit-rules.ts';
import { FAMILIES, type Family } from '../../game/vocabulary.ts';
import { type ExpectedInput, type ExpectedPart, type ExpectedSnaps, expectedSnaps } from './expected-snaps.ts';
import type { CallFit, FamilyFit, FitChapter, RuleFired, UnknownFeature } from './fit-result.ts';
import { fitShares, type VerdictPart } from './fit-shares.ts';
import { givenRules } from './given-rules.ts';
import { ruleTable } from './rule-table.ts';
import { answerAlone, FEATURE_COLUMN, type SnapFeatures, snapFeatures } from './snap-features.ts';
import { meets, type ReadyRule, readyRules, rulesOf, type SnapWords, VERDICTS, verdictOf } from './verdict.ts';

/** What fit is worked out from. */
export interface FitInput extends ExpectedInput {
  readonly library: CallLibrary | null;
}

/** On how many of the expected snaps each family's and each call's theory is right, neutral or wrong. */
export function fitChapter(input: FitInput): FitChapter {
  const rules = ruleTable(input.library?.rules);
  const ready = readyRules(rules);
  const features = snapFeatures(input.chart, input.cuts);
  const situations = expectedSnaps(input);
  const snap = snapReader(features, input.chart.size);
  const families = FAMILIES.map((family) => theory(family, rulesOf(family, ready), snap));
  const calls = (input.library?.calls ?? []).map((call) => ({ call, theory: callTheory(call, ready, snap) }));
  return {
    rules,
    families: situations.flatMap((expected) => families.map((one) => familyFit(one, expected, snap))),
    calls: situations.flatMap((expected) => calls.map((one) => callFit(one.call, one.theory, expected))),
  };
}

/** The rules of one family or call, and what they say of every film snap. */
interface Theory {
  readonly family: Family;
  readonly rules: readonly ReadyRule[];
  /** Index of the verdict of every film snap. */
  readonly verdicts: Uint8Array;
}

interface SnapReader {
  readonly size: number;
  readonly at: (row: number) => SnapWords;
}

function snapReader(features: SnapFeatures, size: number): SnapReader {
  const names = Object.keys(features) as FitFeature[];
  const snaps = Array.from({ length: size }, (_, row) =>
    Object.fromEntries(names.map((name) => [name, features[name][row]])),
  ) as unknown as SnapWords[];
  return { size, at: (row) => snaps[row] as SnapWords };
}

function theory(family: Family, rules: readonly ReadyRule[], snap: SnapReader): Theory {
  const verdicts = Uint8Array.from({ length: snap.size }, (_, row) => VERDICTS.indexOf(verdictOf(rules, snap.at(row))));
  return { family, rules, verdicts };
}

function callTheory(call: Call, ready: readonly ReadyRule[], snap: SnapReader): Theory {
  const rules = [...rulesOf(call.family, ready), ...readyRules(givenRules(call))];
  return theory(call.family, rules, snap);
}

function familyFit(one: Theory, expected: ExpectedSnaps, snap: SnapReader): FamilyFit {
  return {
    family: one.family,
    situation: expected.situation,
    ...fitShares(verdictParts(one, expected)),
    rules: one.rules.map((ready) => ruleFired(ready, expected, snap)).sort((a, b) => b.share - a.share),
    notCharted: notCharted(one, expected, snap),
  };
}

function callFit(call: Call, one: Theory, expected: ExpectedSnaps): CallFit {
  return {
    call: call.name,
    family: call.family,
    situation: expected.situation,
    ...fitShares(verdictParts(one, expected)),
  };
}

function verdictParts({ rules, verdicts }: Theory, { parts }: ExpectedSnaps): VerdictPart[] {
  return parts.map(({ alpha, answer, rows, weights }) => {
    const shares = new Array<number>(VERDICTS.length).fill(0);
    rows.forEach((row, i) => {
      const verdict = verdicts[row] as number;
      shares[verdict] = (shares[verdict] as number) + (weights[i] as number);
    });
    if (rows.length === 0) shares[unseen(rules, answer)] = 1;
    const squares = weights.reduce((sum, weight) => sum + weight ** 2, 0);
    return { alpha, shares, worth: squares === 0 ? 0 : 1 / squares };
  });
}

/** The verdict on a snap of which at most the answer is known. */
function unseen(rules: readonly ReadyRule[], answer: ExpectedPart['answer']): number {
  return answer === null ? VERDICTS.indexOf('open') : VERDICTS.indexOf(verdictOf(rules, answerAlone(answer)));
}

/** Sum over the expected snaps of what `valueAt` says of a film snap, and `unseenAt` of an answer not seen on film. */
function expectedSum(
  { parts }: ExpectedSnaps,
  valueAt: (row: number) => number,
  unseenAt: (part: ExpectedPart) => number,
): number {
  const total = parts.reduce((sum, { alpha }) => sum + alpha, 0);
  if (total === 0) return 0;
  return parts.reduce((sum, part) => {
    const inner =
      part.rows.length === 0
        ? unseenAt(part)
        : part.rows.reduce((inside, row, i) => inside + (part.weights[i] as number) * valueAt(row), 0);
    return sum + (part.alpha / total) * inner;
  }, 0);
}

function ruleFired(ready: ReadyRule, expected: ExpectedSnaps, snap: SnapReader): RuleFired {
  const met = expected.film.map((row) => meets(ready, snap.at(row)));
  return {
    rule: ready.rule.id,
    says: ready.rule.says,
    share: expectedSum(
      expected,
      (row) => Number(meets(ready, snap.at(row)) === true),
      ({ answer }) => Number(answer !== null && meets(ready, answerAlone(answer)) === true),
    ),
    count: met.filter((one) => one === true).length,
    trials: met.filter((one) => one !== undefined).length,
  };
}

const KNOWN_VERDICTS: readonly number[] = [0, 1, 2];

/** Features whose blank cells leave a verdict open. */
function notCharted({ rules, verdicts }: Theory, expected: ExpectedSnaps, snap: SnapReader): UnknownFeature[] {
  const features = [...new Set(rules.flatMap((ready) => ready.features))];
  return features
    .map((feature) => ({
      feature,
      column: FEATURE_COLUMN[feature],
      share: expectedSum(
        expected,
        (row) => Number(!KNOWN_VERDICTS.includes(verdicts[row] as number) && leavesOpen(feature, rules, snap.at(row))),
        () => 0,
      ),
    }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}

/** Whether a rule of the family is open on the snap and asks for the feature, which was not charted on it. */
function leavesOpen(feature: FitFeature, rules: readonly ReadyRule[], snap: SnapWords): boolean {
  return rules.some((ready) => {
    const at = ready.features.indexOf(feature);
    return at >= 0 && snap[feature] === NOT_CHARTED && meets(ready, snap) === undefined;
  });
}

const NOT_CHARTED = 255;
