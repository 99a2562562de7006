import { FAMILIES, type Family } from '../../game/vocabulary.ts';

/** Marks of the eight pressure families, in the order of the vocabulary (three-under first, add-on last). */
export type SheetMarks = readonly [number, number, number, number, number, number, number, number];

/**
 * The score sheet of the trade: how well each family fares against an offense that does a lot of something, from -2
 * (very bad for the defense) to +2 (very good). Common practice, put on a scale by judgement; anchored in coaching
 * clinics and articles for: three-under against flats, seams and quick game, max protection and empty; four-under
 * against quick game, screens, trips, spread and heavy sets; man-free against picks, crossers and quarterback run; hot
 * against run, quick game and screens; peel against a back out wide, inside and in motion; the spy. All other marks are
 * judgement. `back_in` is not a row of the sheet: it is the add-on's own rule, that he joins when the back stays.
 */
export const SHEET = {
  slow_screen: [-1, 1, 0, -2, -2, 1, 1, -2],
  quick_screen: [-1, 2, -1, -1, -2, -1, -1, -2],
  quick_game: [-1, 1, 0, 1, 0, -1, -1, -2],
  draw: [0, 0, 0, 1, 0, 0, 1, 0],
  quarterback_run: [0, 0, -2, -1, -2, -1, 2, -2],
  releases_wide: [-1, 1, 0, -1, -1, 2, 2, -2],
  releases_inside: [1, 0, 0, -1, -1, 1, 2, -2],
  back_in: [0, 0, 0, 0, 0, 0, 0, 2],
  max_protection: [-1, -1, -1, 0, 1, 1, 0, 2],
  seams: [0, -2, 1, 0, -2, 0, 0, -2],
  crossers: [1, 1, -2, -1, -2, -2, -1, -2],
  flat_throws: [-1, 2, 0, -1, -1, 0, 0, -2],
  balanced: [1, 1, 1, 1, 0, 1, 1, 0],
  trips: [-1, -2, 0, -1, -1, 0, 0, -1],
  empty: [-2, -2, -1, -2, -1, -2, -2, -2],
  two_backs: [1, 1, 0, 1, 1, 0, 0, 0],
  heavy: [1, 1, 0, 1, 0, 0, -1, -1],
  held_ball: [1, 1, 1, 1, 1, 2, 1, 2],
} as const satisfies Readonly<Record<string, SheetMarks>>;
/** A row of {@link SHEET}. */
export type SheetRow = keyof typeof SHEET;

/** The mark of a family in a row of the sheet, -2 to 2; the four-man base is the yardstick and always 0. */
export function sheetMark(row: SheetRow, family: Family): number {
  return family === 'base' ? 0 : (SHEET[row][FAMILIES.indexOf(family) - 1] ?? 0);
}
