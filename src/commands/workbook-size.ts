import { inflateRawSync } from 'node:zlib';

/** Text a workbook may hold once unpacked; judgement (a season of one team takes some megabytes). */
const MOST_BYTES = 100_000_000;
/** Cells a sheet may span, filled or not; judgement (a hundred thousand snaps of sixty columns take six millions). */
const MOST_CELLS = 10_000_000;
/** Files in a workbook; judgement. */
const MOST_FILES = 5_000;

/**
 * Why a workbook is too large to be unpacked; null when it is not, or is none: its reader then says what is wrong. No more
 * than the bound is ever unpacked here, whatever the file says of its own sizes.
 *
 * @see APPNOTE.TXT 6.3.10, sections 4.3.7 (local header), 4.3.12 (directory) and 4.3.16 (end of directory)
 */
export function oversizeOf(bytes: Uint8Array): string | null {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  const entries = directoryOf(file);
  if (entries.length > MOST_FILES) return 'holds more files than any workbook';
  let left = MOST_BYTES;
  for (const entry of entries) {
    if (entry.stated > left) return UNPACKS;
    const text = unpacked(file, entry, left);
    if (text === null) return UNPACKS;
    left -= text.length;
    if (left < 0) return UNPACKS;
    if (cellsSpanned(text) > MOST_CELLS) return SPANS;
  }
  return null;
}

const UNPACKS = 'unpacks to far more than a chart of snaps';
const SPANS = 'has cells so far apart that its sheet spans more than ten million; delete those far off';

interface Entry {
  readonly method: number;
  readonly packed: number;
  /** Size that the directory states; the reader makes room for it before it unpacks. */
  readonly stated: number;
  readonly offset: number;
}

const END = Buffer.from('PK\x05\x06', 'latin1');
const ENTRY = Buffer.from('PK\x01\x02', 'latin1');
const ENTRY_BYTES = 46;

/** The directory's entries; those of a broken directory as far as they can be read. */
function directoryOf(file: Buffer): Entry[] {
  const end = file.lastIndexOf(END);
  if (end < 0 || end + 20 > file.length) return [];
  const entries: Entry[] = [];
  let at = file.readUInt32LE(end + 16);
  while (at + ENTRY_BYTES <= file.length && file.subarray(at, at + 4).equals(ENTRY) && entries.length <= MOST_FILES) {
    const name = file.readUInt16LE(at + 28);
    entries.push({
      method: file.readUInt16LE(at + 10),
      packed: file.readUInt32LE(at + 20),
      stated: file.readUInt32LE(at + 24),
      offset: file.readUInt32LE(at + 42),
    });
    at += ENTRY_BYTES + name + file.readUInt16LE(at + 30) + file.readUInt16LE(at + 32);
  }
  return entries;
}

const LOCAL_BYTES = 30;

/** An entry's bytes; empty where it is broken, null where there are more than `most`. */
function unpacked(file: Buffer, { method, packed, offset }: Entry, most: number): Buffer | null {
  if (offset + LOCAL_BYTES > file.length) return Buffer.alloc(0);
  const from = offset + LOCAL_BYTES + file.readUInt16LE(offset + 26) + file.readUInt16LE(offset + 28);
  const piece = file.subarray(from, from + packed);
  if (method !== 8) return piece;
  try {
    return inflateRawSync(piece, { maxOutputLength: Math.max(1, most) });
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE' ? null : Buffer.alloc(0);
  }
}

/** The cells of a sheet from the first to the farthest row and column, as the attribute `r` of rows and cells names them. */
function cellsSpanned(sheet: Buffer): number {
  let rows = 0;
  let columns = 1;
  for (const [, double, single] of sheet.toString('latin1').matchAll(/\br\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
    const place = double ?? single ?? '';
    // No writer spells a place in entities: whoever does means to hide it.
    if (place.includes('&')) return Number.POSITIVE_INFINITY;
    const letters = /^\D*/.exec(place)?.[0] ?? '';
    rows = Math.max(rows, Number(place.slice(letters.length)) || 0, Number(place) || 0);
    columns = Math.max(columns, columnNumber(letters));
  }
  return rows * columns;
}

/** A is 1, Z is 26, AA is 27. */
function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters) number = 26 * number + letter.charCodeAt(0) - 64;
  return number;
}
