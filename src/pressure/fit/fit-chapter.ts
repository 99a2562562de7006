import type { CallLibrary } from '../../game/call-library.ts';
import { FAMILIES, type Family } from '../../game/vocabulary.ts';
import { adjustments } from './adjustments.ts';
import { type AskedRule, askRule, shareOf } from './asked-rule.ts';
import { breakEvens } from './break-even.ts';
import { chartingValues } from './charting.ts';
import { type ExpectedInput, type ExpectedSnaps, expectedSnaps } from './expected-snaps.ts';
import type { CallFit, FamilyFit, FitChapter, RuleFired, UnknownFeature } from './fit-result.ts';
import { fitShares } from './fit-shares.ts';
import { givenRules } from './given-rules.ts';
import { ruleTable } from './rule-table.ts';
import { FEATURE_COLUMN, snapFeatures } from './snap-features.ts';
import { expectedMean, readFilm, type Theory, theoryReader, verdictParts } from './theory.ts';
import { readyRules, rulesOf } from './verdict.ts';

/** What fit is worked out from. */
export interface FitInput extends ExpectedInput {
  readonly library: CallLibrary | null;
  readonly seed: number;
}

/** On how many of the expected snaps each family's and each call's theory is right, neutral or wrong. */
export function fitChapter(input: FitInput): FitChapter {
  const { chart, cuts, library, seed } = input;
  const rules = ruleTable(library?.rules);
  const ready = readyRules(rules);
  const film = readFilm(snapFeatures(chart, cuts), chart.size);
  const situations = expectedSnaps(input);
  const asked = ready.map((one) => askRule(one, film));
  const theoryOf = theoryReader(film);
  const theories = new Map(FAMILIES.map((family) => [family, theoryOf(rulesOf(family, ready))] as const));
  const calls = (library?.calls ?? []).map((call) => ({
    call,
    theory: theoryOf([...rulesOf(call.family, ready), ...readyRules(givenRules(call))]),
  }));
  const families = [...theories].map(([family, theory]) => ({ family, theory, asked }));
  const [all] = situations;
  return {
    rules,
    families: situations.flatMap((expected) => families.map((one) => familyFit(one, expected))),
    calls: situations.flatMap((expected) =>
      calls.map(({ call, theory }) => callFit({ call: call.name, family: call.family, theory }, expected)),
    ),
    breakEvens: situations.flatMap((expected) => breakEvens({ theories, asked }, expected)),
    charting: all ? chartingValues({ theories, expected: all, seed }) : [],
    adjustments: adjustments({ film, theories, calls, situations }),
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

function ruleFired(asked: AskedRule, expected: ExpectedSnaps): RuleFired {
  const { ready, met } = asked;
  return {
    rule: ready.rule.id,
    says: ready.rule.says,
    share: shareOf([asked], expected),
    count: expected.film.filter((row) => met[row] === true).length,
    trials: expected.film.filter((row) => met[row] !== undefined).length,
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
