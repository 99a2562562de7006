import type { FitShares, RuleFired } from '../../pressure/fit/fit-result.ts';
import { plainWords } from './label.ts';
import { fixed } from './number-words.ts';

/**
 * On how many of ten snaps an idea is right and wrong.
 *
 * @example "right on 3.1, wrong on 0.8 of 10"
 */
export function fitWords({ right, wrong }: Pick<FitShares, 'right' | 'wrong'>): string {
  return `right on ${ofTen(right.mean)}, wrong on ${ofTen(wrong.mean)} of 10`;
}

/** From this share of snaps that cannot be judged on, fit is not shown. Judgment. */
export const MOSTLY_OPEN = 0.5;

/** A share as so many of ten, one decimal. */
export function ofTen(share: number): string {
  return fixed(10 * share, 1);
}

/**
 * A rule's trigger, read off its id without the family it speaks of.
 *
 * @example ruleWords('add_on_back_out', 'add_on') // "back out"
 */
export function ruleWords(rule: string, family: string): string {
  for (const prefix of [`${family}_`, 'any_', 'spy_', 'peel_'])
    if (rule.startsWith(prefix)) return plainWords(rule.slice(prefix.length)).toLowerCase();
  return plainWords(rule).toLowerCase();
}

/** The rules that fired most on one side, with their counts on film. */
export function firedWords(rules: readonly RuleFired[], says: RuleFired['says'], family: string): string {
  return rules
    .filter((rule) => rule.says === says && rule.count > 0)
    .slice(0, NAMED)
    .map(({ rule, count, trials }) => `${ruleWords(rule, family)} ${count} of ${trials}`)
    .join(', ');
}

/** Rules named on each side. */
const NAMED = 3;
