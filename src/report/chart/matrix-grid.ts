/** One cell of a matrix: what is written, how dark, and whether there was anything to count. */
export interface GridCell {
  readonly text: string;
  /** 0 to 1 of the darkest tint. */
  readonly strength: number;
  /** `none` is hatched. */
  readonly state: 'filled' | 'none';
}

/** One row of a matrix, with a note such as its count. */
export interface GridRow {
  readonly label: string;
  readonly note: string;
  readonly cells: readonly GridCell[];
}

/** A matrix as plain data; every row has one cell for each column. */
export interface Grid {
  readonly columns: readonly string[];
  readonly noteTitle: string;
  readonly rows: readonly GridRow[];
}
