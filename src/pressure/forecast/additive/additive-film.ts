import type { Film } from '../../../game/film.ts';
import type { SnapCells } from '../../snap/snap-cells.ts';
import { ADDITIVE_COLUMNS, type AdditiveColumn, type AdditiveLevels, additiveLevels } from './additive-columns.ts';
import { type AdditiveDesign, additiveDesign } from './additive-design.ts';
import { type AdditiveReading, archiveFamilies, opponentFamilies } from './additive-families.ts';

/** A film as the additive model reads it: nothing in it depends on an outcome. */
export interface AdditiveFilm {
  readonly levels: AdditiveLevels;
  /** What any offense does in a place, and what one offense does differently, as features. */
  readonly designs: (reading: AdditiveReading) => { readonly archive: AdditiveDesign; readonly own: AdditiveDesign };
}

/**
 * Reads a film for the additive model; a reading's features are numbered when first asked for.
 *
 * @param chart - the opponent and the archive as one chart
 * @param cells - that chart's cells
 */
export function additiveFilm(chart: Film, cells: SnapCells): AdditiveFilm {
  const levels = additiveLevels(chart, cells);
  const known = new Map<AdditiveReading, ReturnType<AdditiveFilm['designs']>>();
  const designs = (reading: AdditiveReading) => {
    const made = known.get(reading) ?? {
      archive: additiveDesign(levels, archiveFamilies(reading), chart.size),
      own: additiveDesign(levels, opponentFamilies(reading), chart.size),
    };
    known.set(reading, made);
    return made;
  };
  return { levels, designs };
}

/** A column charted on a smaller share of the opponent's snaps than this is as good as not charted; judgement. */
const LEAST_CHARTED = 0.5;

/** The columns that the given snaps hardly chart. */
export function unchartedColumns(levels: AdditiveLevels, rows: ArrayLike<number>): ReadonlySet<AdditiveColumn> {
  return new Set(
    ADDITIVE_COLUMNS.filter((column) => {
      let charted = 0;
      for (let i = 0; i < rows.length; i++) if (levels[column][rows[i] as number] !== 0) charted++;
      return charted < LEAST_CHARTED * rows.length;
    }),
  );
}
