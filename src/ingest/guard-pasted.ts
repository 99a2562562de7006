/**
 * Pasted text as it is kept in a file: cells that a spreadsheet would run as a formula get the apostrophe of `toCsv`, which
 * `readSheet` takes off again; everything else stays as it was pasted, whatever parts its cells.
 *
 * @example guardPasted('gain\n=1+1\n-7\n') // "gain\n'=1+1\n-7\n"
 */
export function guardPasted(text: string): string {
  return text.replace(FORMULA_CELL, "$1'");
}

/** Where a cell begins with = or @, or with a sign that no plain number follows, also behind spaces. */
const FORMULA_CELL = /(^|[\n\r,;\t]"?|^")(?=[ \u00a0]*(?:[=@]|[+-](?!\d+(?:\.\d+)?(?:["\n\r,;\t]|$))))/g;
