import type { GroupDue } from './due.ts';
import type { LeagueShift } from './league-shift.ts';
import { ownWeight, strengthChances } from './own-strength.ts';

/** How much of a shift is believed. */
export interface ShiftBelief {
  /** Part of the shift of all offenses, 0 to 1: the power its factors are raised to. */
  readonly leagueKept: number;
  /** Whether what the offense itself showed against the group counts, as far as its film says so. */
  readonly ownCounts: boolean;
}

/** Shares of the classes against one group. */
export interface GroupShares {
  /** What is due there whatever they face. */
  readonly due: readonly number[];
  /** Moved by the shift of all offenses and by their own, as far as they are believed; sums to 1. */
  readonly moved: readonly number[];
}

/** What the shares against a group are made from. */
export interface ShiftFilm {
  readonly due: GroupDue;
  readonly shift: LeagueShift;
  /** Part of a snap each snap of a group counts for, since those of one game are alike. */
  readonly say: readonly number[];
}

/**
 * The shares against every group: what is due, times the factors of all offenses, scaled to 1; then their own snaps and
 * that, weighed by a strength learned from their own film over all groups together.
 */
export function groupShares({ due, shift, say }: ShiftFilm, belief: ShiftBelief): readonly GroupShares[] {
  const groups = say.map((part, group) => groupPrior(due, shift, { group, part, leagueKept: belief.leagueKept }));
  const chances = strengthChances(groups.filter(({ snaps }) => snaps > 0));
  return groups.map(({ due: plain, prior, counts }) => {
    const seen = counts.reduce((sum, count) => sum + count, 0);
    const own = belief.ownCounts && seen > 0 ? ownWeight(seen, chances) : 0;
    const moved = prior.map((share, k) => (own > 0 ? (own * (counts[k] as number)) / seen : 0) + (1 - own) * share);
    return { due: plain, moved };
  });
}

interface GroupPart {
  readonly group: number;
  readonly part: number;
  readonly leagueKept: number;
}

function groupPrior(due: GroupDue, shift: LeagueShift, { group, part, leagueKept }: GroupPart) {
  const place = group * due.classes;
  const here = Array.from(due.due.subarray(place, place + due.classes));
  const snaps = here.reduce((sum, n) => sum + n, 0);
  const plain = snaps > 0 ? here.map((n) => n / snaps) : due.level;
  const raised = plain.map((share, k) => share * (shift.factors[place + k] as number) ** leagueKept);
  const total = raised.reduce((sum, share) => sum + share, 0);
  const prior = raised.map((share) => (total > 0 ? share / total : 0));
  const counts = Array.from(due.came.subarray(place, place + due.classes), (n) => n * part);
  return { snaps, due: plain, prior, counts };
}
