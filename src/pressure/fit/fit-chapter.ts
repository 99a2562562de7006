import type { CallLibrary } from '../../game/call-library.ts';
import { FAMILIES, type Family, familyFacts } from '../../game/families.ts';
import type { PressuredChapter } from '../pressured/pressured-result.ts';
import { adjustments, type ReadCall } from './adjustments.ts';
import { callRushers, expectedAgainst } from './against-rush.ts';
import { type AskedRule, askRule, shareOf } from './asked-rule.ts';
import { breakEvens } from './break-even.ts';
import { chartingValues } from './charting.ts';
import { type ExpectedInput, type ExpectedSnaps, expectedSnaps } from './expected-snaps.ts';
import type { CallFit, FamilyFit, FitChapter, FitShares, RuleFired } from './fit-result.ts';
import { fitShares } from './fit-shares.ts';
import { givenRules } from './given-rules.ts';
import { holesMet } from './holes.ts';
import { ruleTable } from './rule-table.ts';
import { snapFeatures } from './snap-features.ts';
import { readFilm, type Theory, theoryReader, verdictParts } from './theory.ts';
import { readyRules, rulesOf } from './verdict.ts';

/** What fit is worked out from. */
export interface FitInput extends ExpectedInput {
  readonly library: CallLibrary | null;
  /** How their answers change with the rush. */
  readonly pressured: Pick<PressuredChapter, 'factors'>;
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
  const against = expectedAgainst({ situations, forecasts: input.forecast.forecasts, pressured: input.pressured });
  const sharesOf = sharesOnce();
  const facing = (family: Family, s: number) => against(familyFacts(family).men.rush)[s] as ExpectedSnaps;
  return {
    rules,
    families: situations.flatMap((_, s) =>
      [...theories].map(([family, theory]) => familyFit({ family, theory, asked, sharesOf }, facing(family, s))),
    ),
    calls: situations.flatMap((_, s) =>
      calls.map((one) => callFit(one, against(callRushers(one.call))[s] as ExpectedSnaps, sharesOf)),
    ),
    breakEvens: situations.flatMap((_, s) => breakEvens({ theories, asked, facing: (family) => facing(family, s) })),
    charting: chartingValues({ theories, facing: (family) => facing(family, 0), seed }),
    adjustments: adjustments({ film, calls, all: situations[0] as ExpectedSnaps }),
    holes: library ? holesMet(library, film, situations) : [],
  };
}

interface FamilyTheory {
  readonly family: Family;
  readonly theory: Theory;
  readonly asked: readonly AskedRule[];
  readonly sharesOf: SharesOf;
}

/** Works out the shares of a theory on expected snaps once: most calls of a family share its theory. */
type SharesOf = (theory: Theory, expected: ExpectedSnaps) => FitShares;

function sharesOnce(): SharesOf {
  const found = new Map<Theory, Map<ExpectedSnaps, FitShares>>();
  return (theory, expected) => {
    const known = found.get(theory) ?? new Map<ExpectedSnaps, FitShares>();
    const shares = known.get(expected) ?? fitShares(verdictParts(theory, expected));
    found.set(theory, known.set(expected, shares));
    return shares;
  };
}

function familyFit({ family, theory, asked, sharesOf }: FamilyTheory, expected: ExpectedSnaps): FamilyFit {
  const own = asked.filter(({ ready }) => ready.rule.families.includes(family));
  return {
    family,
    situation: expected.situation,
    ...sharesOf(theory, expected),
    rules: own.map((one) => ruleFired(one, expected)).sort((a, b) => b.share - a.share),
  };
}

function callFit({ call, theory }: ReadCall, expected: ExpectedSnaps, sharesOf: SharesOf): CallFit {
  const { name, family } = call;
  return { call: name, family, situation: expected.situation, ...sharesOf(theory, expected) };
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
