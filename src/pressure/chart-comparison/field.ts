import { type Film, numberAt, textAt } from '../../game/film.ts';
import { cohenKappa, type Kappa } from '../../stats/kappa.ts';
import { type Share, share } from '../../stats/share.ts';
import type { SnapPair } from './match.ts';

/** How two charts differ on one value, and how often. */
export interface Dispute {
  readonly first: string;
  readonly second: string;
  readonly snaps: number;
}

/** The agreement of two charts on one field. */
export interface FieldAgreement {
  readonly column: string;
  /** Matched snaps on which both charted it. */
  readonly both: number;
  readonly onlyFirst: number;
  readonly onlySecond: number;
  readonly agreed: Share;
  /** Numbers this far apart still agree; null where they must be the same. */
  readonly within: number | null;
  /** Agreement beyond chance; null for measured numbers, and for fields never charted by both. */
  readonly kappa: Kappa | null;
  /** The commonest disagreements, at most {@link SHOWN}. */
  readonly disputes: readonly Dispute[];
}

/** The charts and the rows that belong together. */
export interface MatchedCharts {
  readonly first: Film;
  readonly second: Film;
  readonly pairs: readonly SnapPair[];
}

/** Disagreements kept for a field. */
export const SHOWN = 5;

/** Measured numbers, and how far apart two honest charters may be; judgment. Seconds of the clock and of the throw. */
const WITHIN: Readonly<Record<string, number>> = {
  clock: 10,
  score_margin: 0,
  ball_on: 1,
  time_to_throw: 0.2,
  target_depth: 2,
  gain: 1,
};

/** The two charts on one field: share of agreement, kappa with its interval, and what they disagree on. */
export function fieldAgreement(charts: MatchedCharts, column: keyof Film['columns']): FieldAgreement {
  const values = charts.pairs.map(
    (pair): Written => ({
      first: wordAt(charts.first, column, pair.first),
      second: wordAt(charts.second, column, pair.second),
    }),
  );
  const both = values.filter(isInBoth);
  const within = WITHIN[column] ?? null;
  const disagree = both.filter((pair) => !agrees(pair, within));
  return {
    column,
    both: both.length,
    onlyFirst: values.filter(({ first, second }) => first !== undefined && second === undefined).length,
    onlySecond: values.filter(({ first, second }) => first === undefined && second !== undefined).length,
    agreed: share(both.length - disagree.length, both.length),
    within,
    kappa: within === null && both.length > 0 ? cohenKappa(tableOf(both)) : null,
    disputes: commonest(disagree),
  };
}

/** What each chart has of one snap; undefined where it was not charted. */
interface Written {
  readonly first: string | undefined;
  readonly second: string | undefined;
}

interface InBoth {
  readonly first: string;
  readonly second: string;
}

function isInBoth(pair: Written): pair is InBoth {
  return pair.first !== undefined && pair.second !== undefined;
}

function wordAt(chart: Film, column: keyof Film['columns'], row: number): string | undefined {
  return textAt(chart, column, row)?.trim().toLowerCase() ?? numberAt(chart, column, row)?.toString();
}

/** Hundredths are compared as whole numbers: 2.4 and 2.6 are 0.2 apart. */
function agrees({ first, second }: InBoth, within: number | null): boolean {
  if (within === null) return first === second;
  return Math.abs(Math.round(100 * Number(first)) - Math.round(100 * Number(second))) <= Math.round(100 * within);
}

function tableOf(both: readonly InBoth[]): number[][] {
  const words = [...new Set(both.flatMap(({ first, second }) => [first, second]))].sort();
  const table = words.map(() => words.map(() => 0));
  for (const { first, second } of both) {
    const row = table[words.indexOf(first)];
    const at = words.indexOf(second);
    if (row) row[at] = (row[at] ?? 0) + 1;
  }
  return table;
}

function commonest(disagree: readonly InBoth[]): Dispute[] {
  const counts = new Map<string, Dispute>();
  for (const { first, second } of disagree) {
    const key = JSON.stringify([first, second]);
    counts.set(key, { first, second, snaps: (counts.get(key)?.snaps ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.snaps - a.snaps).slice(0, SHOWN);
}
