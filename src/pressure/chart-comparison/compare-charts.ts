import type { Film } from '../../game/film.ts';
import { type FieldAgreement, fieldAgreement } from './field.ts';
import { matchSnaps, type NoMatch } from './match.ts';

/** Two charts of one game compared field by field, most disputed first, or why they cannot be matched. */
export type ChartAgreement =
  | {
      readonly kind: 'compared';
      readonly matchedBy: 'game_and_snap' | 'snap';
      readonly matched: number;
      readonly onlyFirst: number;
      readonly onlySecond: number;
      readonly fields: readonly FieldAgreement[];
    }
  | NoMatch;

/** Columns that name the snap, and free remarks: they are not compared. */
const NOT_COMPARED: readonly string[] = ['game', 'week', 'snap', 'note'];

/**
 * How far two charts of the same game agree. Snaps are matched by game and snap number, by the number alone when each
 * chart holds one game. A field is compared on the snaps on which both charted it; a blank is not a disagreement. Fields
 * with the lowest agreement come first, fields never charted by both last.
 */
export function compareCharts(first: Film, second: Film): ChartAgreement {
  const match = matchSnaps(first, second);
  if (match.kind !== 'matched') return match;
  const names = [
    ...new Set([...Object.keys(first.columns), ...Object.keys(second.columns)]),
  ] as (keyof Film['columns'])[];
  const fields = names
    .filter((name) => !NOT_COMPARED.includes(name))
    .map((column) => fieldAgreement({ first, second, pairs: match.pairs }, column))
    .filter(({ both, onlyFirst, onlySecond }) => both + onlyFirst + onlySecond > 0);
  return {
    kind: 'compared',
    matchedBy: match.by,
    matched: match.pairs.length,
    onlyFirst: match.onlyFirst,
    onlySecond: match.onlySecond,
    fields: fields.sort(mostDisputedFirst),
  };
}

function mostDisputedFirst(a: FieldAgreement, b: FieldAgreement): number {
  const [one, other] = [a.agreed.estimate ?? 2, b.agreed.estimate ?? 2];
  return one - other || b.both - a.both || (a.column < b.column ? -1 : 1);
}
