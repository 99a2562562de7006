import type { Family } from '../../game/families.ts';
import { FIT_FEATURES, type FitFeature } from '../../game/fit-features.ts';
import type { FitRule, FitTrigger } from '../../game/fit-rules.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/** One snap's words by feature, as indices; 254 has no word, 255 was not charted. */
export type SnapWords = Readonly<Record<FitFeature, number>>;

/** What a theory is on one snap: `may_be_right` is right or neutral, `may_be_wrong` wrong or neutral, `open` anything. */
export const VERDICTS = ['right', 'neutral', 'wrong', 'may_be_right', 'may_be_wrong', 'open'] as const;
/** One word of {@link VERDICTS}. */
export type Verdict = (typeof VERDICTS)[number];

/** A rule made ready to be asked of many snaps. */
export interface ReadyRule {
  readonly rule: FitRule;
  readonly features: readonly FitFeature[];
  /** For each feature the indices of the words that meet the rule. */
  readonly wanted: readonly (readonly number[])[];
}

/** Makes rules ready to be asked of many snaps. */
export function readyRules(rules: readonly FitRule[]): readonly ReadyRule[] {
  return rules.map((rule) => {
    const features = askedFeatures(rule.when);
    const wanted = features.map((name) =>
      (rule.when[name] ?? []).map((word) => (FIT_FEATURES[name] as readonly string[]).indexOf(word)),
    );
    return { rule, features, wanted };
  });
}

/** The features a trigger asks for. */
export function askedFeatures(when: FitTrigger): readonly FitFeature[] {
  return (Object.keys(when) as FitFeature[]).filter((name) => when[name] !== undefined);
}

/** Rules that speak of a family. */
export function rulesOf(family: Family, rules: readonly ReadyRule[]): readonly ReadyRule[] {
  return rules.filter(({ rule }) => rule.families.includes(family));
}

/**
 * Whether a snap meets a rule; undefined where something that decides was not charted. One line of the trigger that is
 * known to fail decides against it, whatever else was not charted.
 */
export function meets({ features, wanted }: ReadyRule, snap: SnapWords): boolean | undefined {
  let open = false;
  for (let i = 0; i < features.length; i++) {
    const code = snap[features[i] as FitFeature];
    if (code === NOT_KNOWN) open = true;
    else if (!(wanted[i] as readonly number[]).includes(code)) return false;
  }
  return open ? undefined : true;
}

/**
 * What the rules of one family say of a snap. Wrong beats right, unless the right rule stands; a snap no rule speaks of
 * is neutral. Where a rule's trigger was not charted the verdict stays open as far as that rule could change it.
 */
export function verdictOf(rules: readonly ReadyRule[], snap: SnapWords): Verdict {
  const found = { stands: NO, wrong: NO, right: NO };
  for (const ready of rules) {
    const met = meets(ready, snap);
    if (met === false) continue;
    const kind = kindOf(ready.rule);
    found[kind] = Math.max(found[kind], met ? YES : MAYBE);
  }
  return verdictFrom(found);
}

/** Whether a snap is wrong, right, or right whatever else is said, by one rule. */
type Kind = 'stands' | 'wrong' | 'right';

const [NO, MAYBE, YES] = [0, 1, 2];

function kindOf({ says, stands }: FitRule): Kind {
  if (says === 'wrong') return 'wrong';
  return stands ? 'stands' : 'right';
}

function verdictFrom({ stands, wrong, right }: Readonly<Record<Kind, number>>): Verdict {
  if (stands === YES) return 'right';
  if (wrong === YES) return stands === MAYBE ? 'open' : 'wrong';
  const best = Math.max(stands, right);
  if (wrong === MAYBE) return best === NO ? 'may_be_wrong' : 'open';
  if (right === YES) return 'right';
  return best === MAYBE ? 'may_be_right' : 'neutral';
}
