import { recogniseBinary } from './file-signature.ts';

/** The text encodings a sheet may come in; `windows-1252` is the fallback for bytes that are no valid UTF-8. */
export type TextEncodingName = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** A file's text, or why it holds none, in plain words. */
export type DecodedText =
  | { readonly kind: 'text'; readonly encoding: TextEncodingName; readonly text: string }
  | { readonly kind: 'refused'; readonly reason: string };

/** The same in pieces, made one at a time as they are asked for, so that a long file never is one long string. */
export type DecodedPieces =
  | { readonly kind: 'text'; readonly encoding: TextEncodingName; readonly pieces: Iterable<string> }
  | { readonly kind: 'refused'; readonly reason: string };

/**
 * Bytes decoded at a time. Measured on Node 20: strings of 64 KiB are made where objects die young, those of 256 KiB are
 * not, and cost ten times as much each.
 */
const PIECE_BYTES = 64 * 1024;

/** Share of zero bytes from which a file is no text: a stray one in a cell spoils its row, not the sheet. Judgment. */
const MOST_ZEROS = 0.01;

/** How many bytes are looked at to tell text from other files; judgment. */
const SNIFFED_BYTES = 4096;

/**
 * The text of a file: UTF-8 with or without a byte-order mark, UTF-16 in either byte order, else Windows-1252. Files
 * that are no text (workbooks, pictures, archives) are refused. The byte-order mark is not part of the text.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  const decoded = decodePieces(bytes);
  if (decoded.kind === 'refused') return decoded;
  return { kind: 'text', encoding: decoded.encoding, text: [...decoded.pieces].join('') };
}

/** The text of a file as {@link decodeText} has it, in pieces. */
export function decodePieces(bytes: Uint8Array): DecodedPieces {
  const what = recogniseBinary(bytes);
  if (what !== undefined) return refused(what);
  const wide = wideEncodingOf(bytes);
  if (wide === 'none') return refused('not text');
  if (wide !== undefined) return { kind: 'text', encoding: wide, pieces: piecesOf(bytes, wide) };
  const short = bytes.length <= PIECE_BYTES ? utf8Text(bytes) : undefined;
  if (short !== undefined) return { kind: 'text', encoding: 'utf-8', pieces: short === '' ? [] : [short] };
  const encoding = isUtf8(bytes) ? 'utf-8' : 'windows-1252';
  return { kind: 'text', encoding, pieces: piecesOf(bytes, encoding) };
}

function refused(what: string): { kind: 'refused'; reason: string } {
  return { kind: 'refused', reason: `is ${what}, not a plain text file; save the sheet as CSV and try again` };
}

/** UTF-16 by its byte-order mark or its zero bytes; none when there are zero bytes and it is not; else undefined. */
function wideEncodingOf(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | 'none' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const sniffed = bytes.subarray(0, SNIFFED_BYTES);
  if (!sniffed.includes(0)) return undefined;
  const zeros = zeroShares(sniffed);
  if (zeros.odd > 0.3 && zeros.even < 0.05) return 'utf-16le';
  if (zeros.even > 0.3 && zeros.odd < 0.05) return 'utf-16be';
  return zeros.odd + zeros.even > MOST_ZEROS ? 'none' : undefined;
}

/** The text of a short file that is valid UTF-8, decoded once and for all; undefined for other bytes. */
function utf8Text(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** The share of zero bytes at even and odd places: text in UTF-16 has many at one of them, other text has none. */
function zeroShares(bytes: Uint8Array): { even: number; odd: number } {
  const zeros = [0, 0];
  bytes.forEach((byte, i) => {
    if (byte === 0) zeros[i % 2] = (zeros[i % 2] ?? 0) + 1;
  });
  const half = Math.max(1, bytes.length / 2);
  return { even: (zeros[0] ?? 0) / half, odd: (zeros[1] ?? 0) / half };
}

function isUtf8(bytes: Uint8Array): boolean {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    for (const part of utf8Parts(bytes)) if (!isPlain(part)) decoder.decode(part);
    return true;
  } catch {
    return false;
  }
}

/** Whether all bytes are ASCII, looked at four at a time; bytes that do not lie at a multiple of four are not judged. */
function isPlain(part: Uint8Array): boolean {
  if (part.byteOffset % 4 !== 0) return false;
  const words = new Uint32Array(part.buffer, part.byteOffset, part.length >> 2);
  for (let i = 0; i < words.length; i++) if (((words[i] ?? 0) & 0x80808080) !== 0) return false;
  return part.subarray(words.length * 4).every((byte) => byte < 0x80);
}

/** Parts that end between characters, so that each can be decoded alone, which is much faster than as a stream. */
function* utf8Parts(bytes: Uint8Array): Generator<Uint8Array> {
  let start = 0;
  while (start < bytes.length) {
    let end = Math.min(start + PIECE_BYTES, bytes.length);
    // A byte 10xxxxxx goes on with a character; no character has more than three of them.
    for (let back = 0; back < 3 && end < bytes.length && ((bytes[end] ?? 0) & 0xc0) === 0x80; back++) end--;
    yield bytes.subarray(start, end);
    start = end;
  }
}

function* piecesOf(bytes: Uint8Array, encoding: TextEncodingName): Generator<string> {
  const decoder = new TextDecoder(encoding);
  if (encoding === 'utf-8') {
    for (const part of utf8Parts(bytes)) yield decoder.decode(part);
    return;
  }
  for (let at = 0; at < bytes.length; at += PIECE_BYTES) {
    yield decoder.decode(bytes.subarray(at, at + PIECE_BYTES), { stream: true });
  }
  yield decoder.decode();
}
