import type { Call, CallLibrary, GivenUp } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { givenRules } from '../fit/given-rules.ts';
import { snapFeatures } from '../fit/snap-features.ts';
import { meets, type ReadyRule, readyRules, type SnapWords } from '../fit/verdict.ts';

/** How often this opponent meets something a call gives up on purpose. */
export interface CallHole {
  readonly call: string;
  readonly hole: GivenUp;
  /** Of their snaps on which it could be told. */
  readonly met: Share;
}

/** Every call's holes with the snaps of this opponent that meet them; a hole that no chart tells is left out. */
export function callHoles(library: CallLibrary, chart: Film, cuts: SituationCuts): CallHole[] {
  const features = snapFeatures(chart, cuts);
  const names = Object.keys(features) as (keyof typeof features)[];
  const snaps = Array.from(
    { length: chart.size },
    (_, i) => Object.fromEntries(names.map((name) => [name, features[name][i]])) as SnapWords,
  );
  const known = new Map<GivenUp, Share>();
  return library.calls.flatMap((call) =>
    call.given.flatMap((hole): CallHole[] => {
      const rules = readyRules(givenRules({ ...call, given: [hole] } as Call));
      if (rules.length === 0) return [];
      const met = known.get(hole) ?? sharesMet(rules, snaps);
      known.set(hole, met);
      return [{ call: call.name, hole, met }];
    }),
  );
}

/** A snap meets a hole when it meets any of its rules, and does not when it is known to meet none. */
function sharesMet(rules: readonly ReadyRule[], snaps: readonly SnapWords[]): Share {
  let [count, trials] = [0, 0];
  for (const snap of snaps) {
    const met = rules.map((rule) => meets(rule, snap));
    if (met.some((is) => is === true)) count += 1;
    if (met.some((is) => is === true) || met.every((is) => is === false)) trials += 1;
  }
  return share(count, trials);
}
