import { DEFAULT_FIT_RULES } from '../../game/default-fit-rules.ts';
import type { FitRule, FitRuleChanges } from '../../game/fit-rules.ts';

/** The rules of a week: the defaults with the coach's changes; a changed rule keeps its place, a new one comes last. */
export function ruleTable(changes: FitRuleChanges | undefined): readonly FitRule[] {
  if (!changes) return DEFAULT_FIT_RULES;
  const set = new Map(changes.set.map((rule) => [rule.id, rule]));
  const known = new Set(DEFAULT_FIT_RULES.map(({ id }) => id));
  return [
    ...DEFAULT_FIT_RULES.map((rule) => set.get(rule.id) ?? rule),
    ...changes.set.filter(({ id }) => !known.has(id)),
  ].filter(({ id }) => !changes.off.includes(id));
}
