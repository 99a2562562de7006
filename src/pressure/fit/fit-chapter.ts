import type { CallLibrary } from '../../game/call-library.ts';
import { FAMILIES, type Family } from '../../game/vocabulary.ts';
import { type ExpectedInput, type ExpectedPart, type ExpectedSnaps, expectedSnaps } from './expected-snaps.ts';
import type { CallFit, FamilyFit, FitChapter, RuleFired, UnknownFeature } from './fit-result.ts';
import { fitShares } from './fit-shares.ts';
import { givenRules } from './given-rules.ts';
import { ruleTable } from './rule-table.ts';
import { FEATURE_COLUMN, snapFeatures } from './snap-features.ts';
import {
  expectedMean,
  type ReadFilm,
  readFilm,
  ruleChance,
  type Theory,
  theoryReader,
  unseenSnap,
  verdictParts,
} from './theory.ts';
import { meets, type ReadyRule, readyRules, rulesOf, type SnapWords } from './verdict.ts';

/** What fit is worked out from. */
export interface FitInput extends ExpectedInput {
  readonly library: CallLibrary | null;
}

/** On how many of the expected snaps each family's and each call's theory is right, neutral or wrong. */
export function fitChapter(input: FitInput): FitChapter {
  const { chart, cuts, library } = input;
  const rules = ruleTable(library?.rules);
  const ready = readyRules(rules);
  const film = readFilm(snapFeatures(chart, cuts), chart.size);
  const situations = expectedSnaps(input);
  const asked = ready.map((one) => ({ ready: one, ...askedOn(one, film) }));
  const theoryOf = theoryReader(film);
  const families = FAMILIES.map((family) => ({ family, theory: theoryOf(rulesOf(family, ready)) }));
  const calls = (library?.calls ?? []).map((call) => ({
    call: call.name,
    family: call.family,
    theory: theoryOf([...rulesOf(call.family, ready), ...readyRules(givenRules(call))]),
  }));
  return {
    rules,
    families: situations.flatMap((expected) => families.map((one) => familyFit({ ...one, asked }, expected))),
    calls: situations.flatMap((expected) => calls.map((one) => callFit(one, expected))),
  };
}

/** One rule asked of every film snap. */
interface AskedRule {
  readonly ready: ReadyRule;
  readonly met: readonly (boolean | undefined)[];
  readonly chances: readonly number[];
  readonly unseen: (part: ExpectedPart) => number;
}

function askedOn(ready: ReadyRule, { snaps, blanks }: ReadFilm): Omit<AskedRule, 'ready'> {
  const chanceOf = (snap: SnapWords) => ruleChance(ready, snap, blanks);
  return {
    met: snaps.map((snap) => meets(ready, snap)),
    chances: snaps.map(chanceOf),
    unseen: (part) => chanceOf(unseenSnap(part)),
  };
}

interface FamilyTheory {
  readonly family: Family;
  readonly theory: Theory;
  readonly asked: readonly AskedRule[];
}

function familyFit({ family, theory, asked }: FamilyTheory, expected: ExpectedSnaps): FamilyFit {
  const own = asked.filter(({ ready }) => ready.rule.families.includes(family));
  return {
    family,
    situation: expected.situation,
    ...fitShares(verdictParts(theory, expected)),
    rules: own.map((one) => ruleFired(one, expected)).sort((a, b) => b.share - a.share),
    notCharted: notCharted(theory, expected),
  };
}

interface CallTheory {
  readonly call: string;
  readonly family: Family;
  readonly theory: Theory;
}

function callFit({ call, family, theory }: CallTheory, expected: ExpectedSnaps): CallFit {
  return { call, family, situation: expected.situation, ...fitShares(verdictParts(theory, expected)) };
}

function ruleFired({ ready, met, chances, unseen }: AskedRule, { parts, film }: ExpectedSnaps): RuleFired {
  const total = parts.reduce((sum, { alpha }) => sum + alpha, 0);
  const inside = (part: ExpectedPart) =>
    part.rows.length === 0
      ? unseen(part)
      : part.rows.reduce((sum, row, i) => sum + (part.weights[i] as number) * (chances[row] as number), 0);
  return {
    rule: ready.rule.id,
    says: ready.rule.says,
    share: total === 0 ? 0 : parts.reduce((sum, part) => sum + (part.alpha / total) * inside(part), 0),
    count: film.filter((row) => met[row] === true).length,
    trials: film.filter((row) => met[row] !== undefined).length,
  };
}

/** Features whose blank cells leave verdicts open, by how much. */
function notCharted(theory: Theory, expected: ExpectedSnaps): UnknownFeature[] {
  const features = [...new Set(theory.rules.flatMap((ready) => ready.features))];
  return features
    .map((feature) => ({
      feature,
      column: FEATURE_COLUMN[feature],
      share: expectedMean(theory, expected, ({ open }) =>
        open.reduce((sum, word) => (word.feature === feature ? sum + word.chance : sum), 0),
      ),
    }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}
