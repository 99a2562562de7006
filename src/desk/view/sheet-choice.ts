import type { SheetKind } from '../../ingest/sheet-kind.ts';

/** A sheet that may be charted into. */
export interface SheetChoice {
  readonly path: string;
  readonly label: string;
  readonly kind: SheetKind;
}
