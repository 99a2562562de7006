import Papa from 'papaparse';
import { createEndlessLine } from './endless-line.ts';

/** How a sheet separates its cells and its rows. */
export interface Dialect {
  readonly delimiter: ',' | ';' | '\t';
  readonly newline: '\n' | '\r';
}

/** What became of a row: `swallowed` asks to take only its first line, as faulty, and to go on with the next one. */
export type RowAnswer = 'taken' | 'swallowed';

/**
 * What is special about a row: it runs over several lines of the file, or a quotation mark in it is not closed or
 * stands in the wrong place; or it is one line far longer than any snap.
 */
export type RowNote = 'plain' | 'several-lines' | 'quote-fault' | 'too-long';

/** Takes one row. */
export type RowSink = (cells: readonly string[], note: RowNote) => RowAnswer;

/** Cuts text that comes in pieces into rows. */
export interface RowSplitter {
  /** Takes the next piece of text. */
  readonly push: (text: string) => void;
  /** Hands over the last row; its line end may be missing. */
  readonly end: () => void;
}

/** Characters looked at together; see the bytes decoded at a time in decode-text.ts. */
const PIECE = 64 * 1024;

/** A row longer than this was swallowed by an open quotation mark; judgment (a charted snap has under 1,000). */
const LONGEST_ROW = 1_000_000;

/**
 * Hands every row of a sheet to `sink`, in order, blank ones too, as papaparse reads them; no row is kept. A quotation
 * mark that never closes would swallow the rest of the file: then only its own line is marked as faulty, and reading
 * goes on at the next one.
 *
 * @see RFC 4180 section 2 for quotation marks and line ends
 */
export function createRowSplitter(dialect: Dialect, sink: RowSink): RowSplitter {
  let carry = '';
  const endless = createEndlessLine(dialect.newline, (line) => sink(line.split(dialect.delimiter), 'too-long'));
  const pastFault = (text: string): string => {
    if (text.length <= LONGEST_ROW || text.includes(dialect.newline)) return rejectLine(text, dialect, sink);
    endless.start(text);
    return '';
  };
  const take = (text: string, last: 'more' | 'last'): void => {
    carry = text;
    while (carry !== '') {
      const { used, faulty } = readRows({ text: carry, dialect, last, sink });
      carry = carry.slice(used);
      const swallowed = last === 'more' && carry.length > LONGEST_ROW;
      if (!faulty && !swallowed) break;
      carry = pastFault(carry);
    }
  };
  return {
    push: (text) => {
      for (let at = 0; at < text.length; at += PIECE) take(carry + endless.rest(text.slice(at, at + PIECE)), 'more');
    },
    end: () => {
      endless.end();
      // The line end of the last row does not begin another one (RFC 4180 section 2, rule 2).
      take(carry.endsWith(dialect.newline) ? carry.slice(0, -1) : carry, 'last');
    },
  };
}

interface ReadJob {
  readonly text: string;
  readonly dialect: Dialect;
  readonly last: 'more' | 'last';
  readonly sink: RowSink;
}

/** Reads rows up to the last complete one, or up to the first with a faulty quotation mark; says how far it came. */
function readRows(job: ReadJob): { used: number; faulty: boolean } {
  return job.text.includes('"') ? readQuotedRows(job) : readPlainRows(job);
}

/** Without quotation marks nothing can go wrong, and all rows of a piece at once cost half of one at a time. */
function readPlainRows({ text, dialect, last, sink }: ReadJob): { used: number; faulty: false } {
  // Papa.parse itself reads only whole texts or streams of the platform; its Parser takes text piece by piece.
  const parsed: Papa.ParseResult<string[]> = new Papa.Parser(dialect).parse(text, 0, last === 'more');
  for (const cells of parsed.data) sink(cells, 'plain');
  return { used: parsed.meta.cursor, faulty: false };
}

function readQuotedRows({ text, dialect, last, sink }: ReadJob): { used: number; faulty: boolean } {
  let used = 0;
  let faulty = false;
  const parser = new Papa.Parser({
    ...dialect,
    step: ({ data, errors, meta }: Papa.ParseStepResult<string[][]>) => {
      const note = isOneLine(text, dialect.newline, { from: used, to: meta.cursor }) ? 'plain' : 'several-lines';
      faulty = errors.length > 0 || sink(data[0] ?? [], note) === 'swallowed';
      if (faulty) parser.abort();
      else used = meta.cursor;
    },
  });
  parser.parse(text, 0, last === 'more');
  return { used, faulty };
}

/** Whether the first line end in the row is the one that closes it. */
function isOneLine(text: string, newline: string, { from, to }: { from: number; to: number }): boolean {
  const end = text.indexOf(newline, from);
  return end === -1 || end >= to - 1;
}

/** Marks the first line of `text` as faulty and returns what follows it. */
function rejectLine(text: string, { delimiter, newline }: Dialect, sink: RowSink): string {
  const end = text.indexOf(newline);
  const line = end === -1 ? text : text.slice(0, end);
  sink(line.split(delimiter), 'quote-fault');
  return end === -1 ? '' : text.slice(end + 1);
}
