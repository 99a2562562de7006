import type { CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { FitFeature } from '../../game/fit-features.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { givenRules } from '../fit/given-rules.ts';
import { ruleTable } from '../fit/rule-table.ts';
import { snapFeatures } from '../fit/snap-features.ts';
import { type ReadyRule, readyRules, rulesOf, type SnapWords, type Verdict, verdictOf } from '../fit/verdict.ts';
import { situationCodes } from '../snap/situation.ts';
import { snapName } from '../snap/snap-name.ts';

/** What our calls would have been on one of tonight's snaps. */
export interface CallMark {
  /** The snap's number, or `row 12` of the sheet where it has none. */
  readonly name: string;
  /** Situation id; null where it is not known. */
  readonly situation: string | null;
  /** By call: 1 right, 0 neutral, -1 wrong; calls that cannot be judged on the snap are not in it. */
  readonly nets: ReadonlyMap<string, number>;
}

/** Marks every call of the library on every snap of tonight, by the rules of fit. */
export function firstHalfMarks(live: Film, library: CallLibrary, cuts: SituationCuts): readonly CallMark[] {
  const features = snapFeatures(live, cuts);
  const names = Object.keys(features) as FitFeature[];
  const situations = situationCodes(live, cuts);
  const rules = rulesByCall(library);
  return Array.from({ length: live.size }, (_, i) => {
    const words = Object.fromEntries(names.map((name) => [name, features[name][i]])) as unknown as SnapWords;
    return {
      name: snapName(live, i),
      situation: SITUATIONS[situations[i] as number]?.id ?? null,
      nets: netsOn(words, rules),
    };
  });
}

function rulesByCall({ rules, calls }: CallLibrary): ReadonlyMap<string, readonly ReadyRule[]> {
  const ready = readyRules(ruleTable(rules));
  return new Map(calls.map((call) => [call.name, [...rulesOf(call.family, ready), ...readyRules(givenRules(call))]]));
}

function netsOn(words: SnapWords, rules: ReadonlyMap<string, readonly ReadyRule[]>): ReadonlyMap<string, number> {
  const judged = [...rules].flatMap(([call, own]) => {
    const net = NETS[verdictOf(own, words)];
    return net === undefined ? [] : [[call, net] as const];
  });
  return new Map(judged);
}

const NETS: Readonly<Partial<Record<Verdict, number>>> = { right: 1, neutral: 0, wrong: -1 };
