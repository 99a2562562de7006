import { Inflate } from 'fflate';

/** Text a workbook may hold once unpacked; judgment (a season of one team takes some megabytes). */
const MOST_BYTES = 100_000_000;
/** Cells a sheet may span, filled or not; judgment (a hundred thousand snaps of sixty columns take six millions). */
const MOST_CELLS = 10_000_000;
/** Files in a workbook; judgment. */
const MOST_FILES = 5_000;

/**
 * Why a workbook is too large to be unpacked; null when it is not, or is none: its reader then says what is wrong. No more
 * than the bound is ever unpacked here, whatever the file says of its own sizes.
 *
 * @see APPNOTE.TXT 6.3.10, sections 4.3.7 (local header), 4.3.12 (directory) and 4.3.16 (end of directory)
 */
export function oversizeOf(bytes: Uint8Array): string | null {
  const file = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
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

/** The signatures PK 5 6 and PK 1 2, as numbers. */
const END = 0x06054b50;
const ENTRY = 0x02014b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;

/** The directory's entries; those of a broken directory as far as they can be read. */
function directoryOf(file: DataView): Entry[] {
  const end = endOf(file);
  if (end < 0) return [];
  const entries: Entry[] = [];
  let at = file.getUint32(end + 16, true);
  while (at + ENTRY_BYTES <= file.byteLength && file.getUint32(at, true) === ENTRY && entries.length <= MOST_FILES) {
    const name = file.getUint16(at + 28, true);
    entries.push({
      method: file.getUint16(at + 10, true),
      packed: file.getUint32(at + 20, true),
      stated: file.getUint32(at + 24, true),
      offset: file.getUint32(at + 42, true),
    });
    at += ENTRY_BYTES + name + file.getUint16(at + 30, true) + file.getUint16(at + 32, true);
  }
  return entries;
}

/** Where the end of the directory stands, -1 when there is none. */
function endOf(file: DataView): number {
  for (let at = file.byteLength - END_BYTES; at >= 0; at--) if (file.getUint32(at, true) === END) return at;
  return -1;
}

const LOCAL_BYTES = 30;

/** An entry's bytes; empty where it is broken, null where there are more than `most`. */
function unpacked(file: DataView, { method, packed, offset }: Entry, most: number): Uint8Array | null {
  if (offset + LOCAL_BYTES > file.byteLength) return new Uint8Array(0);
  const from = offset + LOCAL_BYTES + file.getUint16(offset + 26, true) + file.getUint16(offset + 28, true);
  const bytes = new Uint8Array(file.buffer, file.byteOffset, file.byteLength);
  const piece = bytes.subarray(from, from + packed);
  return method === 8 ? inflated(piece, most) : piece;
}

/** Bytes handed over at a time: deflate packs at most 1032 to 1 (RFC 1951), so one step never unpacks to much. */
const STEP_BYTES = 4096;

/** A deflated piece unpacked step by step, so that no more than the bound is ever made. */
function inflated(piece: Uint8Array, most: number): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let size = 0;
  const inflate = new Inflate((part) => {
    size += part.length;
    parts.push(part);
  });
  try {
    for (let at = 0; at < piece.length && size <= most; at += STEP_BYTES)
      inflate.push(piece.subarray(at, at + STEP_BYTES), at + STEP_BYTES >= piece.length);
  } catch {
    // A broken piece is refused by the workbook's reader, in its own words.
    return new Uint8Array(0);
  }
  return size > most ? null : joined(parts, size);
}

function joined(parts: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** The cells of a sheet from the first to the farthest row and column, as the attribute `r` of rows and cells names them. */
function cellsSpanned(sheet: Uint8Array): number {
  let rows = 0;
  let columns = 1;
  for (const [, double, single] of new TextDecoder('latin1')
    .decode(sheet)
    .matchAll(/\br\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
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
