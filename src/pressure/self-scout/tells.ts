import { benjaminiHochberg } from '../../stats/adjust.ts';
import { share } from '../../stats/share.ts';
import { type TellLiteral, tellCells, tellLiterals } from '../forecast/tell-cell.ts';
import type { SeenValue, TellFeature } from '../forecast/tell-feature.ts';
import { EXCESS_KEPT } from '../forecast/tell-kept.ts';
import { type TellGround, type TellTest, testCell } from '../forecast/tell-test.ts';
import { DISCOVERY_RATE } from '../forecast/tells.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { SnapCells } from '../snap/snap-cells.ts';
import { holds, type SnapSet, setSize, sharedCount, snapSet } from '../snap/snap-set.ts';
import { OWN_STRENGTHS, ownLeftOut, ownLineLevels } from './own-chain.ts';
import type { OwnFilmChapter, OwnTell } from './result.ts';
import { codesOf, countWords, type OwnSnap } from './snaps.ts';

/** What a search for our own tells found, and how many it looked at. */
export type OwnTellSearch = Pick<OwnFilmChapter, 'tells' | 'tellsLooked'>;

/** Most tells shown; more could not be mended in a week. Judgment, as for theirs. */
const MOST_TELLS = 12;

/**
 * Our tells as an opponent would find them, by the search we use on him: every conjunction of up to three things seen
 * before the snap with at least eight charted snaps, tested for pressure or not and for the coverage against what the
 * same chain expects there from the other games, corrected over everything looked at (Benjamini-Hochberg).
 */
export function ownTells(snaps: readonly OwnSnap[], cells: SnapCells, seen: readonly TellFeature[]): OwnTellSearch {
  const games = [...new Set(snaps.map(({ game }) => game))];
  if (games.length < 2) return { tells: [], tellsLooked: 0 };
  const rows = games.map((game) => snaps.filter((snap) => snap.game === game).map(({ index }) => index));
  const literals = tellLiterals(seen, cells.size);
  const searches = questions(snaps).map((question) => searchQuestion(question, { rows, cells, literals }));
  const looked = searches.reduce((sum, search) => sum + search.looked, 0);
  const found = searches.flatMap((search) => search.found);
  // Tests with a p of 1 come last whatever their number, so only how many they are counts.
  const adjusted = benjaminiHochberg(
    found.map(({ test }) => test.p),
    looked,
  );
  const passed = found
    .map((candidate, i) => ({ ...candidate, adjusted: adjusted[i] as number }))
    .filter((candidate) => candidate.adjusted <= DISCOVERY_RATE)
    .sort((a, b) => a.test.p - b.test.p);
  const shown = apart(passed).slice(0, MOST_TELLS);
  return { tellsLooked: looked, tells: shown.map((tell) => described(tell, { games, rows })) };
}

interface Ground {
  readonly rows: readonly (readonly number[])[];
  readonly cells: SnapCells;
  readonly literals: readonly TellLiteral[];
}

/** Every test of one question, and those of them that are anything at all. */
function searchQuestion({ asks, words, strengths }: Question, { rows, cells, literals }: Ground) {
  const { codes, words: classes } = codesOf(words, NOT_KNOWN);
  const target = { codes: Uint8Array.from(codes), classes: classes.length };
  const expected = ownLeftOut({ target, levels: ownLineLevels(cells), strengths }, rows, cells.size);
  const ground = { codes: target.codes, expected };
  const charted = snapSet(cells.size, (i) => target.codes[i] !== NOT_KNOWN);
  const found: Omit<Passed, 'adjusted'>[] = [];
  let looked = 0;
  for (const { seen, snaps } of tellCells(literals, charted)) {
    for (const test of testCell(ground, snaps)) {
      if (classes[test.k] === RARE_COVERAGE) continue;
      looked++;
      if (test.p < 1) found.push({ asks, seen, snaps, classes, test, ground });
    }
  }
  return { looked, found };
}

type Question = ReturnType<typeof questions>[number];

function questions(snaps: readonly OwnSnap[]) {
  const pressure = snaps.map((snap) => (snap.pressure === undefined ? undefined : PRESSURE[Number(snap.pressure)]));
  const usual = new Set(
    countWords(snaps, (snap) => snap.coverage)
      .filter(([, times]) => times >= LEAST_COVERAGE)
      .map(([word]) => word),
  );
  const coverage = snaps.map((snap) =>
    snap.coverage === undefined || usual.has(snap.coverage) ? snap.coverage : RARE_COVERAGE,
  );
  return [
    { asks: 'pressure', words: pressure, strengths: OWN_STRENGTHS.pressure },
    { asks: 'coverage', words: coverage, strengths: OWN_STRENGTHS.coverage },
  ] as const;
}

/** Coverages with fewer snaps are one class: the share expected of so rare a thing is too rough to test against. */
const LEAST_COVERAGE = 20;

/** Stands for every rare coverage; a habit of it would tell nobody what to expect, so none is looked for. */
const RARE_COVERAGE = '';

const PRESSURE = ['base', 'pressure'] as const;

interface Passed {
  readonly asks: OwnTell['asks'];
  readonly seen: readonly SeenValue[];
  readonly snaps: SnapSet;
  readonly classes: readonly string[];
  readonly test: TellTest;
  readonly ground: TellGround;
  readonly adjusted: number;
}

/** The tells in order of p without those that share more than half of their snaps with one before them. */
function apart(passed: readonly Passed[]): Passed[] {
  const kept: Passed[] = [];
  for (const tell of passed) {
    const repeats = kept.some((other) => {
      const smaller = Math.min(setSize(tell.snaps), setSize(other.snaps));
      return other.asks === tell.asks && sharedCount(tell.snaps, other.snaps) > smaller / 2;
    });
    if (!repeats) kept.push(tell);
  }
  return kept;
}

interface Games {
  readonly games: readonly string[];
  readonly rows: readonly (readonly number[])[];
}

function described({ asks, seen, classes, snaps, test, ground, adjusted }: Passed, { games, rows }: Games): OwnTell {
  const { k, count, trials, expected } = test;
  const byGame = games.flatMap((game, g) => {
    const inGame = (rows[g] ?? []).filter((row) => holds(snaps, row));
    const due = inGame.reduce((sum, row) => sum + expectedAt(ground, row, k), 0);
    const hits = inGame.filter((row) => ground.codes[row] === k).length;
    return inGame.length === 0 ? [] : [{ game, count: hits, trials: inGame.length, due }];
  });
  return {
    asks,
    seen,
    follows: classes[k] ?? '',
    share: share(count, trials),
    expected,
    planWith: expected + EXCESS_KEPT * (count / trials - expected),
    adjusted,
    games: byGame.map(({ due: _, ...game }) => game),
    oneGameOnly: byGame.filter((game) => game.count > game.due).length === 1,
  };
}

function expectedAt({ expected }: TellGround, row: number, k: number): number {
  return expected.shares[row * expected.classes + k] as number;
}
