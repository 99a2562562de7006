import type { Call } from '../../game/call-library.ts';
import type { Family } from '../../game/vocabulary.ts';

/** Families that send five; every other pressure sends six or more. */
const FIVE_MAN: readonly Family[] = ['three_under', 'four_under', 'man_free'];

/** More coverages than this to choose from are no advice. Judgement. */
const MOST_NAMED = 2;

/**
 * Coverages that the library plays behind as many rushers on other paths, and not behind this one: what could be taught
 * as its second coverage. The most taught come first.
 */
export function otherCoverages(call: Pick<Call, 'path' | 'family'>, calls: readonly Call[]): string[] {
  const behind = new Set(calls.filter(({ path }) => path === call.path).map(({ coverage }) => coverage));
  const times = new Map<string, number>();
  for (const { path, family, coverage } of calls) {
    if (path === call.path || behind.has(coverage) || isFiveMan(family) !== isFiveMan(call.family)) continue;
    times.set(coverage, (times.get(coverage) ?? 0) + 1);
  }
  return [...times]
    .sort((a, b) => b[1] - a[1])
    .slice(0, MOST_NAMED)
    .map(([coverage]) => coverage);
}

function isFiveMan(family: Family): boolean {
  return FIVE_MAN.includes(family);
}
