import { type ColumnName, FILM_COLUMNS } from '../game/columns.ts';

/** What a sheet is: a scouted opponent (the archive too), our own called pressures, or snaps charted during a game. */
export type SheetKind = 'opponent' | 'own' | 'live';

/** Columns that only snaps against us carry: our own film, and the live sheet of a game. */
const OWN_FILM_ONLY: readonly ColumnName[] = ['call', 'path', 'family', 'coverage', 'rotation', 'shown_early'];

/** Columns without which a row of the sheet says nothing; a row that leaves one blank is a fault. */
export const REQUIRED_COLUMNS: Readonly<Record<SheetKind, readonly ColumnName[]>> = {
  opponent: ['game', 'down', 'to_go', 'play_kind'],
  own: ['game', 'down', 'to_go'],
  live: ['down', 'to_go', 'play_kind'],
};

/** A column that is asked for and may be left out, and what then is not known. */
export interface WantedColumn {
  readonly column: ColumnName;
  readonly without: string;
}

const BALL_ON: WantedColumn = {
  column: 'ball_on',
  without: 'backed up, red zone, goal line and first and goal are not known',
};

/** Columns a sheet should have: without one it is read, and said to tell less. */
export const WANTED_COLUMNS: Readonly<Record<SheetKind, readonly WantedColumn[]>> = {
  opponent: [BALL_ON],
  own: [BALL_ON],
  live: [],
};

/** Of these, a sheet of our own film needs at least one. */
export const OWN_CALL_COLUMNS: readonly ColumnName[] = ['call', 'path', 'family', 'coverage'];

/** The columns a sheet of this kind may carry, in the order of the template. */
export function columnsOfKind(kind: SheetKind): readonly ColumnName[] {
  const names = FILM_COLUMNS.map(({ name }) => name);
  return kind === 'opponent' ? names.filter((name) => !OWN_FILM_ONLY.includes(name)) : names;
}
