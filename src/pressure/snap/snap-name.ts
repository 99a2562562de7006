import { type Film, numberAt } from '../../game/film.ts';

/** What a staff calls a snap: its number, or `row 12` of the sheet where it has none. */
export function snapName(film: Film, index: number): string {
  const snap = numberAt(film, 'snap', index);
  return snap === undefined ? `row ${film.rowOf[index] ?? index}` : String(snap);
}
