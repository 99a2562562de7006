import Papa from 'papaparse';

/** A cell to be written; undefined is written as a blank. */
export type CsvCell = string | number | undefined;

/**
 * What a spreadsheet would run as a formula: a cell that begins with = + - @, also behind spaces or line feeds, which some
 * programs take off first, or with a tab, a carriage return or a line feed. A plain signed number (`-7`, ` +3.5`) cannot be
 * one and stays as it is.
 *
 * @see OWASP, "CSV Injection" (the leading characters; from memory)
 */
const FORMULA_START = /^[\t\r\n]|^\s*[=@]|^\s*[+-](?!\d+(?:\.\d+)?$)/;

/**
 * The rows as CSV text by RFC 4180 (comma, CRLF, quotation marks doubled), ending in a line end. Cells that a
 * spreadsheet would run as a formula get a leading apostrophe; `readSheet` takes it off again.
 */
export function toCsv(rows: readonly (readonly CsvCell[])[]): string {
  const known = new Map<string, string>();
  return rows.map((row) => `${row.map((cell) => cellText(cell, known)).join(',')}\r\n`).join('');
}

/** What nothing has to be done to: most cells, so that papaparse is asked for the others only, once for each of them. */
const PLAIN = /^(?:[\w.](?:[^",\r\n\ufeff]*[\w.)])?)?$/;

function cellText(cell: CsvCell = '', known: Map<string, string>): string {
  const written = String(cell);
  if (PLAIN.test(written)) return written;
  const text = known.get(written) ?? Papa.unparse([[cell]], { escapeFormulae: FORMULA_START });
  known.set(written, text);
  return text;
}

/** Whether a spreadsheet would run the cell as a formula. */
export function isFormula(cell: string): boolean {
  return FORMULA_START.test(cell);
}

/** The cell without the apostrophe that {@link toCsv} put before a formula; any other cell unchanged. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && isFormula(cell.slice(1)) ? cell.slice(1) : cell;
}
