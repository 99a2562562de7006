/** A kind of file that is not plain text, known by its first bytes. */
interface Signature {
  readonly bytes: readonly number[];
  readonly what: string;
}

/** First bytes of files people hand in by mistake (from memory; each is the format's published magic number). */
const SIGNATURES: readonly Signature[] = [
  { bytes: [0x50, 0x4b, 0x03, 0x04], what: 'a spreadsheet workbook or a zip archive' },
  { bytes: [0x50, 0x4b, 0x05, 0x06], what: 'an empty zip archive' },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], what: 'an old spreadsheet workbook' },
  { bytes: [0x25, 0x50, 0x44, 0x46], what: 'a PDF' },
  { bytes: [0x89, 0x50, 0x4e, 0x47], what: 'a PNG picture' },
  { bytes: [0xff, 0xd8, 0xff], what: 'a JPEG picture' },
  { bytes: [0x47, 0x49, 0x46, 0x38], what: 'a GIF picture' },
  { bytes: [0x1f, 0x8b], what: 'a compressed file' },
  { bytes: [0x7b, 0x5c, 0x72, 0x74, 0x66], what: 'a word processor document' },
];

/** What the file is when its first bytes say that it is not plain text; undefined when they do not. */
export function recogniseBinary(bytes: Uint8Array): string | undefined {
  return SIGNATURES.find((signature) => signature.bytes.every((byte, i) => bytes[i] === byte))?.what;
}
