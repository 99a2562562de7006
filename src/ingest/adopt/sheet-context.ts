import type { SheetKind } from '../sheet-kind.ts';
import type { ColumnFacts } from './column-facts.ts';
import { shareWhere } from './column-facts.ts';
import type { SheetContext } from './evidence.ts';
import { climbs } from './game-runs.ts';
import { joinedColumns } from './joined-columns.ts';
import { findChain } from './snap-chain.ts';
import { guessWord } from './value-words.ts';

/** What several columns together say of a sheet, before each is looked at. */
export function sheetContext(columns: readonly ColumnFacts[], kind: SheetKind): SheetContext {
  const chain = findChain(columns);
  const quarter = findQuarter(columns.filter((facts) => facts !== chain?.down && facts !== chain?.toGo));
  return {
    kind,
    columns,
    joined: joinedColumns(columns),
    chain,
    quarter,
    gameStarts: quarter ? fallsOf(quarter) : new Set(),
    passes: findPasses(columns),
  };
}

/** The share of rows of one kind on which a column is filled; undefined when runs and passes cannot be separated. */
export function filledBy({ cells }: ColumnFacts, { passes }: SheetContext): { run: number; pass: number } | undefined {
  if (passes === undefined) return undefined;
  const rows = [0, 0];
  const filled = [0, 0];
  cells.forEach((cell, i) => {
    const kind = passes[i] ?? 2;
    if (kind > 1) return;
    rows[kind] = (rows[kind] ?? 0) + 1;
    if (cell !== '') filled[kind] = (filled[kind] ?? 0) + 1;
  });
  const share = (kind: number) => (filled[kind] ?? 0) / Math.max(1, rows[kind] ?? 0);
  return { run: share(0), pass: share(1) };
}

/** Whether a column is charted on passes and hardly on runs. */
export function isPassOnly(facts: ColumnFacts, context: SheetContext): boolean {
  const filled = filledBy(facts, context);
  return filled !== undefined && filled.pass >= 0.5 && filled.run <= 0.1;
}

/** The column that climbs from 1 to 4 and falls back to 1, as quarters do; the one that falls least often. */
function findQuarter(columns: readonly ColumnFacts[]): ColumnFacts | undefined {
  const fitting = columns.filter((facts) => isQuarterLike(facts) && climbs(facts).share >= 0.97);
  return fitting.sort(
    (left, right) => climbs(left).falls - climbs(right).falls || (left.header < right.header ? -1 : 1),
  )[0];
}

function isQuarterLike(facts: ColumnFacts): boolean {
  const values = new Set([...facts.numbers].filter((value) => !Number.isNaN(value)));
  return facts.wholeShare >= 0.95 && values.size >= 3 && [...values].every((value) => value >= 1 && value <= 7);
}

function fallsOf({ numbers }: ColumnFacts): ReadonlySet<number> {
  const starts = new Set<number>();
  let before = Number.NaN;
  numbers.forEach((value, i) => {
    if (value < before) starts.add(i);
    if (!Number.isNaN(value)) before = value;
  });
  return starts;
}

/** Runs and passes by the column of words that tells them apart on most rows. */
function findPasses(columns: readonly ColumnFacts[]): Uint8Array | undefined {
  const scored = columns
    .map((facts) => ({
      facts,
      share: shareWhere(facts, (text) => kindOf(text) !== 2) * (facts.filled / Math.max(1, facts.cells.length)),
    }))
    .filter(({ facts, share }) => share >= 0.6 && saysBoth(facts));
  scored.sort((left, right) => right.share - left.share || (left.facts.header < right.facts.header ? -1 : 1));
  const best = scored[0]?.facts;
  if (best === undefined) return undefined;
  const known = new Map([...best.counts.keys()].map((text) => [text, kindOf(text)]));
  return Uint8Array.from(best.cells, (cell) => known.get(cell) ?? 2);
}

function saysBoth(facts: ColumnFacts): boolean {
  const kinds = new Set([...facts.counts.keys()].map(kindOf));
  return kinds.has(0) && kinds.has(1);
}

function kindOf(text: string): 0 | 1 | 2 {
  if (/^[\d.,+-]+$/.test(text)) return 2;
  const word = guessWord('play_kind', text)?.word;
  if (word === undefined) return 2;
  return word === 'run' || word === 'quarterback_run' ? 0 : 1;
}
