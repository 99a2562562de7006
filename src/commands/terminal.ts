import { localDay } from '../season/local-day.ts';
import { writeOut } from './write-out.ts';

/** Where a command speaks: results to `out`, everything else to `note`; the shell decides what they are. */
export interface Terminal {
  /** Writes a result to standard output, as it is. */
  readonly out: (text: string) => void;
  /** Writes a line to standard error. */
  readonly note: (line: string) => void;
  /** Rewrites one progress line when somebody watches; says nothing otherwise. */
  readonly progress: (line: string) => void;
  /** Today, YYYY-MM-DD. */
  readonly today: string;
}

/** The process's own streams as a {@link Terminal}. */
export function processTerminal(): Terminal {
  return {
    out: (text) => writeOut(painted(harmless(text), process.stdout.isTTY)),
    note: (line) => void process.stderr.write(`${harmless(line)}\n`),
    progress: (line) => {
      if (process.stderr.isTTY) process.stderr.write(`\r\x1b[2K${line}`);
    },
    today: today(),
  };
}

/** What marks a line that is to be seen, and its color by ECMA-48: red, yellow. */
const PAINTS = [
  [/^fault\b.*$|^.*\bNOT SOUND$/gm, 31],
  [/^warning\b.*$/gm, 33],
] as const;

/**
 * Faults red and warnings yellow where a person watches; plain for a pipe, and where NO_COLOR is set.
 *
 * @see https://no-color.org (2017)
 */
function painted(text: string, isWatched: boolean): string {
  if (!isWatched || (process.env['NO_COLOR'] ?? '') !== '') return text;
  return PAINTS.reduce((said, [line, color]) => said.replace(line, `\x1b[${color}m$&\x1b[0m`), text);
}

/** Without control characters other than line ends and tabs: a name out of a file must not steer the terminal. */
function harmless(text: string): string {
  return text.replace(/[^\P{Cc}\n\t]/gu, '');
}

/** The local day by the machine's clock, or by SOURCE_DATE_EPOCH where a build must repeat byte for byte. */
function today(): string {
  const epoch = Number(process.env['SOURCE_DATE_EPOCH'] ?? Number.NaN);
  if (Number.isFinite(epoch)) return new Date(epoch * 1000).toISOString().slice(0, 10);
  return localDay(new Date());
}
