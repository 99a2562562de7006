/**
 * Which of the stretches between cuts a number falls in, counted from 1; 0 where it was not charted.
 *
 * @param cuts - ascending; a number equal to a cut belongs to the stretch above it
 */
export function levelAmong(value: number | undefined, cuts: readonly number[]): number {
  if (value === undefined) return 0;
  const above = cuts.findIndex((cut) => value < cut);
  return above === -1 ? cuts.length + 1 : above + 1;
}

/** Cuts for each of several kinds of snap, such as the quarters or the downs. */
export type CutsByKind = readonly (readonly number[])[];

/**
 * Which stretch a number falls in where every kind of snap has stretches of its own, counted from 1 through all kinds.
 *
 * @param kind - 1 for the first list of cuts and so on; larger ones belong to the last
 * @returns 0 where the kind was not charted, or where the number was not and its kind has more than one stretch
 */
export function levelByKind(kind: number | undefined, value: number | undefined, cuts: CutsByKind): number {
  if (kind === undefined) return 0;
  const place = Math.min(Math.max(kind, 1), cuts.length) - 1;
  const within = cuts[place] ?? [];
  if (value === undefined && within.length > 0) return 0;
  const before = cuts.slice(0, place).reduce((sum, list) => sum + list.length + 1, 0);
  return before + (within.length === 0 ? 1 : levelAmong(value, within));
}
