import { isFormula } from './write-csv.ts';

/**
 * Pasted text as it is kept in a file: cells that a spreadsheet would run as a formula, within quotation marks also behind
 * tabs and line ends, get the apostrophe of `toCsv`, which `readSheet` takes off again; everything else stays as it was
 * pasted, whatever parts its cells.
 *
 * @example guardPasted('gain\n=1+1\n-7\n') // "gain\n'=1+1\n-7\n"
 */
export function guardPasted(text: string): string {
  return text.replace(CELL, (_, before: string, cell: string) => before + guarded(cell));
}

/** What stands before a cell that is not empty, and the cell: closed quotation marks with all they hold, or up to the next part. */
const CELL = /(^|[\n\r,;\t])("(?:[^"]+|"")*"(?=[\n\r,;\t]|$)|[^\n\r,;\t]+)/g;

function guarded(cell: string): string {
  const quote = cell.startsWith('"') ? '"' : '';
  const held = cell.slice(quote.length);
  return isFormula(quote === '' ? held : held.replace(/"$/, '')) ? `${quote}'${held}` : cell;
}
