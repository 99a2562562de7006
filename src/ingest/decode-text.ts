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

/** Bytes decoded at a time: small enough that a piece and its rows die young; judgement, tried from 64 KiB to 4 MiB. */
const PIECE_BYTES = 256 * 1024;

/** How many bytes are looked at to tell text from other files; judgement. */
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
  const encoding = encodingOf(bytes);
  if (encoding === undefined) return refused('not text');
  return { kind: 'text', encoding, pieces: piecesOf(bytes, encoding) };
}

function refused(what: string): { kind: 'refused'; reason: string } {
  return { kind: 'refused', reason: `is ${what}, not a plain text file; save the sheet as CSV and try again` };
}

function encodingOf(bytes: Uint8Array): TextEncodingName | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const zeros = zeroShares(bytes.subarray(0, SNIFFED_BYTES));
  if (zeros.odd > 0.3 && zeros.even < 0.05) return 'utf-16le';
  if (zeros.even > 0.3 && zeros.odd < 0.05) return 'utf-16be';
  if (zeros.odd + zeros.even > 0) return undefined;
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
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
    for (let at = 0; at < bytes.length; at += PIECE_BYTES) {
      decoder.decode(bytes.subarray(at, at + PIECE_BYTES), { stream: true });
    }
    decoder.decode();
    return true;
  } catch {
    return false;
  }
}

function* piecesOf(bytes: Uint8Array, encoding: TextEncodingName): Generator<string> {
  const decoder = new TextDecoder(encoding);
  for (let at = 0; at < bytes.length; at += PIECE_BYTES) {
    yield decoder.decode(bytes.subarray(at, at + PIECE_BYTES), { stream: true });
  }
  yield decoder.decode();
}
