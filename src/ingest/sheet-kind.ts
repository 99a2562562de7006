import { type ColumnName, FILM_COLUMNS } from '../game/columns.ts';

/** What a sheet is: a scouted opponent (the archive too), our own called pressures, or snaps charted during a game. */
export type SheetKind = 'opponent' | 'own' | 'live';

/** Columns that only snaps against us carry: our own film, and the live sheet of a game. */
const OWN_FILM_ONLY: readonly ColumnName[] = ['call', 'path', 'family', 'coverage', 'rotation', 'shown_early'];

/** Columns without which a row of the sheet says nothing; a row that leaves one blank is a fault. */
export const REQUIRED_COLUMNS: Readonly<Record<SheetKind, readonly ColumnName[]>> = {
  opponent: ['game', 'down', 'to_go', 'ball_on', 'play_kind'],
  own: ['game', 'down', 'to_go', 'ball_on'],
  live: ['down', 'to_go', 'play_kind'],
};

/** Of these, a sheet of our own film needs at least one. */
export const OWN_CALL_COLUMNS: readonly ColumnName[] = ['call', 'path', 'family', 'coverage'];

/** The columns a sheet of this kind may carry, in the order of the template. */
export function columnsOfKind(kind: SheetKind): readonly ColumnName[] {
  const names = FILM_COLUMNS.map(({ name }) => name);
  return kind === 'opponent' ? names.filter((name) => !OWN_FILM_ONLY.includes(name)) : names;
}
