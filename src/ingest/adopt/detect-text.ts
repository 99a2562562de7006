import type { ColumnFacts } from './column-facts.ts';
import type { Detectors, Evidence, SheetContext } from './evidence.ts';
import { isInRuns } from './game-runs.ts';
import { isPassOnly } from './sheet-context.ts';

/** Columns of the staff's own words. */
export const TEXT_DETECTORS: Detectors = {
  offense: detectTeam,
  defense: detectTeam,
  formation: detectFormation,
  concept: detectConcept,
  note: detectNote,
  call: detectOurWord,
  path: detectOurWord,
  coverage: detectOurWord,
};

function detectTeam(facts: ColumnFacts): Evidence | undefined {
  if (!isWording(facts) || facts.counts.size > 64 || facts.filled < 0.5 * facts.cells.length) return undefined;
  const inRuns = facts.counts.size > 1 && isInRuns(facts, 8);
  return { score: inRuns ? 0.2 : 0.12, why: 'holds a few names' };
}

function detectFormation(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (!isRepeatedWording(facts)) return undefined;
  const score = 0.45 - 0.35 * purityLift(facts, context) - (isInRuns(facts, 8) ? 0.4 : 0);
  return { score: Math.max(0.02, isPassOnly(facts, context) ? score / 3 : score), why: 'holds names that come again' };
}

function detectConcept(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (!isRepeatedWording(facts)) return undefined;
  const score = 0.2 + 0.35 * purityLift(facts, context) - (isInRuns(facts, 8) ? 0.4 : 0);
  return {
    score: Math.max(0.02, isPassOnly(facts, context) ? score / 2 : score),
    why: 'holds names that tell run from pass',
  };
}

function detectNote(facts: ColumnFacts): Evidence | undefined {
  if (!isWording(facts)) return undefined;
  const letters = [...facts.counts].reduce((sum, [text, count]) => sum + text.length * count, 0);
  const long = letters / facts.filled >= 12;
  const unlike = facts.counts.size / facts.filled >= 0.6;
  return { score: long && unlike ? 0.7 : 0.05, why: 'holds sentences' };
}

function detectOurWord(facts: ColumnFacts): Evidence | undefined {
  return isRepeatedWording(facts) ? { score: 0.1, why: 'holds names that come again' } : undefined;
}

/** Letters, mostly, and neither numbers nor dates. */
function isWording({ filled, numberShare, dateShare, part }: ColumnFacts): boolean {
  return part === undefined && filled > 0 && numberShare < 0.3 && dateShare < 0.5;
}

function isRepeatedWording(facts: ColumnFacts): boolean {
  return isWording(facts) && facts.counts.size >= 2 && facts.counts.size <= Math.max(3, 0.6 * facts.filled);
}

/**
 * How much better than the offense's own share of runs the words of a column tell run from pass: 0 not at all, 1
 * wholly. Words that stand once tell nothing.
 */
function purityLift({ cells }: ColumnFacts, { passes }: SheetContext): number {
  if (passes === undefined) return 0;
  const counts = new Map<string, [number, number]>();
  const all: [number, number] = [0, 0];
  cells.forEach((cell, i) => {
    const kind = passes[i];
    if (cell === '' || (kind !== 0 && kind !== 1)) return;
    const pair = counts.get(cell) ?? [0, 0];
    pair[kind]++;
    all[kind]++;
    counts.set(cell, pair);
  });
  const repeated = [...counts.values()].filter(([runs, throws]) => runs + throws > 1);
  const rows = repeated.reduce((sum, [runs, throws]) => sum + runs + throws, 0);
  const base = Math.max(...all) / Math.max(1, all[0] + all[1]);
  if (rows === 0 || base === 1) return 0;
  const purity = repeated.reduce((sum, pair) => sum + Math.max(...pair), 0) / rows;
  return Math.max(0, (purity - base) / (1 - base));
}
