import type { AdditiveColumn, AdditiveLevels } from './additive-columns.ts';
import type { AdditiveFamily } from './additive-families.ts';

/** The snaps of a film as features: of every family the one combination of levels that the snap shows. */
export interface AdditiveDesign {
  readonly families: readonly AdditiveFamily[];
  readonly features: number;
  /** Per snap one feature of each family, in the order of the families. */
  readonly rows: readonly Uint32Array[];
  /** The family of each feature. */
  readonly familyOf: Uint16Array;
}

/**
 * Numbers the features of all snaps of a film.
 *
 * @param size - number of snaps
 */
export function additiveDesign(
  levels: AdditiveLevels,
  families: readonly AdditiveFamily[],
  size: number,
): AdditiveDesign {
  const rows = Array.from({ length: size }, () => new Uint32Array(families.length));
  const familyOf: number[] = [];
  families.forEach(({ columns }, family) => {
    const known = new Map<number, number>();
    const read = columns.map((column) => levels[column]);
    rows.forEach((row, i) => {
      const key = keyAt(read, i);
      let feature = known.get(key);
      if (feature === undefined) {
        feature = familyOf.length;
        known.set(key, feature);
        familyOf.push(family);
      }
      row[family] = feature;
    });
  });
  return { families, features: familyOf.length, rows, familyOf: Uint16Array.from(familyOf) };
}

/** Levels are 16 bits wide; three of them still make an exact number. */
const LEVEL_BASE = 65536;

function keyAt(columns: readonly Uint16Array[], row: number): number {
  let key = 0;
  for (const levels of columns) key = key * LEVEL_BASE + (levels[row] as number);
  return key;
}

/** A family that may not speak: its coefficients are pulled to 0 so hard that none of them moves. */
const SILENT = 1e9;

/**
 * The ridge penalty of every feature.
 *
 * @param scale - what the families' own pulls are multiplied by
 * @param uncharted - columns nobody charted on the opponent's film: families that need one are silent
 */
export function additivePenalties(
  { families, familyOf }: AdditiveDesign,
  scale: number,
  uncharted: ReadonlySet<AdditiveColumn>,
): Float64Array {
  const pulls = families.map(({ columns, pull }) =>
    columns.some((column) => uncharted.has(column)) ? SILENT : pull * scale,
  );
  return Float64Array.from(familyOf, (family) => pulls[family] as number);
}
