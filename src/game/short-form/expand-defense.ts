import type * as z from 'zod';
import { type CallLibrary, fullCalls } from '../call-library.ts';
import { type LibraryProblem, libraryProblems } from '../call-library-checks.ts';
import { layCover } from './lay-cover.ts';
import { type Alike, followLike, type LikeBook } from './like-chain.ts';
import { inListedOrder } from './listed-order.ts';
import { putTogether } from './put-together.ts';
import { tradeSides } from './trade-sides.ts';
import type { WrittenCall, WrittenCoverage, WrittenDefense, WrittenPath } from './written-defense.ts';
import { wordProblems } from './written-men.ts';

/** The library in full, or null and everything that is wrong. */
export interface ExpandedDefense {
  readonly library: CallLibrary | null;
  readonly problems: readonly LibraryProblem[];
  /** What the schema of a call in full says of calls put together. */
  readonly issues?: readonly z.core.$ZodIssue[];
}

/**
 * Every call in full: its path and its coverage put together, what it is like filled in, the lanes of a standard path by
 * where the men line up. Pure; a library written in full comes out as it is, its men in one fixed order.
 */
export function expandDefense(written: WrittenDefense): ExpandedDefense {
  const words = wordProblems(written);
  if (words.length > 0) return { library: null, problems: words };
  const paths = resolve(pathBook(written));
  const coverages = resolve(coverageBook(written));
  const calls = resolve(callBook(written, paths.resolved));
  const likes = [...paths.problems, ...coverages.problems, ...calls.problems];
  if (likes.length > 0) return { library: null, problems: likes };
  const built = written.calls.map((call, at) => {
    const whole = calls.resolved.get(keyOf(written.calls, at)) ?? call;
    const path = paths.resolved.get(whole.path ?? '');
    return putTogether({
      call: whole,
      at,
      path,
      coverage: coverages.resolved.get(whole.coverage ?? ''),
      defense: written,
    });
  });
  const problems = built.flatMap((one) => one.problems);
  return problems.length > 0
    ? { library: null, problems }
    : checked(
        written,
        built.map(({ call }) => call),
      );
}

function checked(written: WrittenDefense, built: readonly unknown[]): ExpandedDefense {
  const { level, roles, rules } = written;
  const read = fullCalls.safeParse(built);
  if (!read.success) {
    // A part that neither the call nor its path or coverage says; the schema names it.
    const issues = read.error.issues.map((issue) => ({ ...issue, path: ['calls', ...issue.path] }));
    return { library: null, problems: [], issues };
  }
  const library = { level, roles, calls: read.data.map(inListedOrder), rules };
  const problems = libraryProblems({ roles, calls: read.data });
  return problems.length > 0 ? { library: null, problems } : { library, problems };
}

function resolve<Entry extends Alike>(book: LikeBook<Entry>) {
  const results = [...book.entries.keys()].map((name) => [name, followLike(name, book)] as const);
  const found = results.flatMap(([, { problem }]) => problem ?? []);
  // Everything that is like a faulty entry has its fault: it is named once.
  const problems = [...new Map(found.map((problem) => [problem.path.join('.'), problem])).values()];
  return { resolved: new Map(results.map(([name, { entry }]) => [name, entry])), problems };
}

function pathBook({ paths, trade }: WrittenDefense): LikeBook<WrittenPath> {
  return {
    entries: new Map(Object.entries(paths)),
    kind: 'path',
    placeOf: (name) => ['paths', name],
    over: (base, path) => {
      const turned = isBoundary({ ...base, ...path }) !== isBoundary(base);
      const men = turned ? { ...base, ...tradeSides(base, trade) } : base;
      return { ...(saysRush(path) ? withoutRush(men) : men), ...path };
    },
  };
}

function coverageBook({ coverages }: WrittenDefense): LikeBook<WrittenCoverage> {
  return {
    entries: new Map(Object.entries(coverages)),
    kind: 'coverage',
    placeOf: (name) => ['coverages', name],
    over: (base, coverage) => layOver(base, coverage),
  };
}

/** Calls by name; a second call of a name is kept apart here and refused later. */
function callBook({ calls, trade }: WrittenDefense, paths: ReadonlyMap<string, WrittenPath>): LikeBook<WrittenCall> {
  const sideOf = (call: WrittenCall) =>
    isBoundary({ sent_from: call.sent_from ?? paths.get(call.path ?? '')?.sent_from });
  const keys = calls.map((_, at) => keyOf(calls, at));
  return {
    entries: new Map(calls.map((call, at) => [keys[at] ?? call.name, call])),
    kind: 'call',
    placeOf: (name) => ['calls', keys.indexOf(name)],
    over: (base, call) => {
      const kept = keptOf(base, call);
      const turned = sideOf({ ...kept, ...call }) !== sideOf(base);
      const men = turned ? { ...kept, ...tradeSides(kept, trade) } : kept;
      return layOver(saysRush(call) ? withoutRush(men) : men, call);
    },
  };
}

/** What is said replaces what was; jobs and answers do so one by one. */
function layOver<Entry extends WrittenCoverage>(base: Omit<Entry, 'name'>, own: Entry): Entry {
  const cover = layCover(base.cover, own.cover);
  return { ...base, ...own, ...(cover && { cover }), adjust: { ...base.adjust, ...own.adjust } };
}

function keyOf(calls: readonly WrittenCall[], at: number): string {
  const name = calls[at]?.name ?? '';
  return calls.findIndex((call) => call.name === name) === at ? name : `${at} ${name}`;
}

/** A call that names its own path or coverage takes nothing of the other's from the one it is like. */
function keptOf(base: WrittenCall, call: WrittenCall): WrittenCall {
  const { sent_from, send, drop, rush, edges_peel, rotation, ...behind } = base;
  const ofPath = { sent_from, send, drop, rush, edges_peel, rotation };
  const kept = call.path === undefined ? { ...behind, ...said(ofPath) } : behind;
  if (call.coverage === undefined) return kept;
  const { family: _f, shell_shown: _s, cover: _c, late: _l, given: _g, adjust: _a, reps: _r, ...rest } = kept;
  return rest;
}

/** Without the keys that have no value, which would cover what lies below them. */
function said<Parts extends object>(parts: Parts): Partial<Parts> {
  return Object.fromEntries(Object.entries(parts).filter(([, value]) => value !== undefined)) as Partial<Parts>;
}

function saysRush({ send, rush }: Pick<WrittenPath, 'send' | 'rush'>): boolean {
  return send !== undefined || rush !== undefined;
}

function withoutRush<Parts extends Pick<WrittenPath, 'send' | 'drop' | 'rush'>>(parts: Parts) {
  const { send: _s, drop: _d, rush: _r, ...rest } = parts;
  return rest;
}

function isBoundary({ sent_from }: Pick<WrittenPath, 'sent_from'>): boolean {
  return sent_from === 'boundary';
}
