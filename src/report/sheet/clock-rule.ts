import type { MenuResult } from '../../pressure/menu/result.ts';
import { largestRemainder } from '../../stats/apportion.ts';
import { mixShare } from '../view/menu-table.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** Name under which the four-man calls stand together in the rule. */
export const BASE = 'Base';

/** A call in one situation: its planned share, and the seconds of the game clock on which it is called. */
export interface ClockCall {
  readonly call: string;
  readonly share: number;
  /** How many of the sixty seconds. */
  readonly seconds: number;
  /** First and last of them; `last` below `first` where there is none. */
  readonly first: number;
  readonly last: number;
}

/** The rule of one situation, base first, then the pressures most called. */
export interface ClockRow {
  readonly situation: string;
  readonly calls: readonly ClockCall[];
}

/**
 * The mix as seconds of the game clock, so that a caller keeps it without thinking and nobody reads it: sixty seconds
 * are shared out in each situation by largest remainder, then mended until every carried call can come and no path is
 * followed by one coverage more often than planned or allowed.
 *
 * @returns null when no sharing out of sixty seconds keeps every share within {@link CLOSE}
 */
export function clockRule(menu: Menu): readonly ClockRow[] | null {
  const table = menu.situations.map(({ id, expectedSnaps }) => startRow(menu, { situation: id, snaps: expectedSnaps }));
  reachEveryCall(menu, table);
  if (!keepPairings(menu, table)) return null;
  return isClose(table) ? table.map(finished) : null;
}

/** How far a situation's share may be from the plan. */
export const CLOSE = 0.05;
const SECONDS = 60;

interface Entry {
  readonly call: string;
  readonly path: string;
  readonly coverage: string;
  readonly share: number;
  seconds: number;
}

interface OpenRow {
  readonly situation: string;
  readonly snaps: number;
  readonly base: Entry;
  readonly entries: Entry[];
}

function startRow(menu: Menu, { situation, snaps }: Pick<OpenRow, 'situation' | 'snaps'>): OpenRow {
  const pressures = menu.calls
    .filter(({ family }) => family !== 'base')
    .map(({ call, path, coverage, ...rest }) => ({
      call,
      path,
      coverage,
      share: mixShare({ call, path, coverage, ...rest }, situation),
      seconds: 0,
    }))
    .filter(({ share }) => share > ROUNDING)
    .sort((a, b) => b.share - a.share);
  const sent = pressures.reduce((sum, { share }) => sum + share, 0);
  const base = { call: BASE, path: '', coverage: '', share: Math.max(0, 1 - sent), seconds: 0 };
  const entries = [base, ...pressures];
  const shared = largestRemainder(
    entries.map(({ share }) => share),
    SECONDS,
  );
  entries.forEach((entry, i) => {
    entry.seconds = shared[i] as number;
  });
  return { situation, snaps, base, entries };
}

/** Shares below this are arithmetic, not calls. */
const ROUNDING = 1e-6;

/** A carried call that rounds to no second anywhere gets one where it is called most. */
function reachEveryCall(menu: Menu, table: readonly OpenRow[]): void {
  for (const { call } of menu.calls) {
    const places = table.flatMap((row) =>
      row.entries.filter((entry) => entry.call === call).map((entry) => ({ row, entry })),
    );
    if (places.length === 0 || places.some(({ entry }) => entry.seconds > 0)) continue;
    const [best] = places.sort((a, b) => b.entry.share * b.row.snaps - a.entry.share * a.row.snaps);
    const most = best?.row.entries.reduce((a, b) => (b.seconds > a.seconds ? b : a));
    if (best && most) give(most, best.entry);
  }
}

function give(from: Entry, to: Entry): void {
  from.seconds -= 1;
  to.seconds += 1;
}

/** Moves single seconds to the base where a coverage follows its path too often; false where none is left to move. */
function keepPairings(menu: Menu, table: readonly OpenRow[]): boolean {
  const isBroken = (pairing: Pairing) => pairing.share < 1 && shareBehind(table, pairing) > limitOf(pairing);
  let broken = menu.pairings.find(isBroken);
  while (broken !== undefined) {
    if (!moveSecond(table, broken)) return false;
    broken = menu.pairings.find(isBroken);
  }
  return true;
}

/** Takes a second from the call of a pairing that runs furthest ahead of its share; every call keeps one. */
function moveSecond(table: readonly OpenRow[], { path, coverage }: Pairing): boolean {
  const places = table.flatMap((row) =>
    row.entries
      .filter((entry) => entry.path === path && entry.coverage === coverage && entry.seconds > 1)
      .map((entry) => ({ row, entry })),
  );
  const [loosest] = places.sort((a, b) => excess(b.entry) - excess(a.entry));
  if (loosest !== undefined) give(loosest.entry, loosest.row.base);
  return loosest !== undefined;
}

/** How far the seconds run ahead of the planned share. */
function excess({ seconds, share }: Entry): number {
  return seconds / SECONDS - share;
}

type Pairing = Menu['pairings'][number];

/** The menu's own share or its cap, whichever is larger: an uncounted path may be beyond the cap on purpose. */
function limitOf({ share, most }: Pairing): number {
  return Math.max(share, most ?? 1) + ROUNDING;
}

function shareBehind(table: readonly OpenRow[], { path, coverage }: Pairing): number {
  const callsOf = (fits: (entry: Entry) => boolean) =>
    table.reduce(
      (sum, { snaps, entries }) => sum + snaps * entries.filter(fits).reduce((all, { seconds }) => all + seconds, 0),
      0,
    );
  const all = callsOf((entry) => entry.path === path);
  return all === 0 ? 0 : callsOf((entry) => entry.path === path && entry.coverage === coverage) / all;
}

function isClose(table: readonly OpenRow[]): boolean {
  return table.every(({ entries }) => entries.every((entry) => Math.abs(excess(entry)) <= CLOSE));
}

function finished({ situation, entries }: OpenRow): ClockRow {
  let next = 0;
  const calls = entries.map(({ call, share, seconds }) => {
    const first = next;
    next += seconds;
    return { call, share, seconds, first, last: next - 1 };
  });
  return { situation, calls };
}
