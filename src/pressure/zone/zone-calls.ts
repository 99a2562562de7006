import type { Call, CallLibrary } from '../../game/call-library.ts';
import type { ExpectedSnaps } from '../fit/expected-snaps.ts';
import { fitShares } from '../fit/fit-shares.ts';
import { givenRules } from '../fit/given-rules.ts';
import { ruleTable } from '../fit/rule-table.ts';
import { snapFeatures } from '../fit/snap-features.ts';
import { readFilm, type Theory, theoryReader, verdictParts } from '../fit/theory.ts';
import { readyRules, rulesOf } from '../fit/verdict.ts';
import type { MenuResult } from '../menu/result.ts';
import type { ZoneCall, ZoneCalls } from './zone-result.ts';
import { type ZoneFilm, type ZoneSnaps, zoneSnaps } from './zone-snaps.ts';

/** What the calls of the zones are worked out from. */
export interface ZoneInput extends ZoneFilm {
  readonly library: CallLibrary | null;
  readonly menu: MenuResult | null;
}

/** The carried pressures in every field zone, by the rules of fit on the snaps to expect there; empty without a menu. */
export function zoneCalls(input: ZoneInput): readonly ZoneCalls[] {
  const { chart, cuts, library, menu } = input;
  if (library === null || menu?.kind !== 'menu') return [];
  const names = new Set(menu.calls.map(({ call }) => call));
  const rules = readyRules(ruleTable(library.rules));
  const theoryOf = theoryReader(readFilm(snapFeatures(chart, cuts), chart.size));
  const carried = library.calls
    .filter(({ name, family }) => names.has(name) && family !== 'base')
    .map((call) => ({ call, theory: theoryOf([...rulesOf(call.family, rules), ...readyRules(givenRules(call))]) }));
  return zoneSnaps(input).map((one) => ({
    zone: one.zone,
    snaps: one.snaps,
    calls: one.snaps === 0 ? [] : fitted(carried, one),
  }));
}

interface CarriedCall {
  readonly call: Call;
  readonly theory: Theory;
}

function fitted(carried: readonly CarriedCall[], { zone, parts }: ZoneSnaps): ZoneCall[] {
  const expected: ExpectedSnaps = { situation: zone, parts, film: [] };
  return carried
    .map(({ call, theory }) => {
      const { net } = fitShares(verdictParts(theory, expected));
      return { call: call.name, family: call.family, net, does: doesWith(net.mean) };
    })
    .sort((a, b) => b.net.mean - a.net.mean);
}

/** A call fits where it is right on half a snap in ten more than wrong. Judgment. */
const BEST_FROM = 0.05;

/** A call is left out where it is wrong on a quarter more of the snaps than right, as against a look. Judgment. */
const OUT_BELOW = -0.25;

function doesWith(net: number): ZoneCall['does'] {
  if (net >= BEST_FROM) return 'best';
  return net < OUT_BELOW ? 'out' : 'carry';
}
