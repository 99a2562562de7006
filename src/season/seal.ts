import type { SeasonFile, SeasonFolder } from './season-folder.ts';
import type { Digest, Platform } from './store.ts';

/** What a file we wrote is held to when it is read again: SHA-256, in hexadecimal digits. */
export interface Seal {
  /** Of the files it was made from. */
  readonly inputs: string;
  /** Of all that stands in the file before the seal. */
  readonly content: string;
}

/** Starts a SHA-256. */
type NewDigest = () => Digest;

/** A value with its seal as the last key, and the text of its file. */
export interface Sealed<Value> {
  readonly value: Value & { readonly seal: Seal };
  readonly text: string;
}

/** Seals a value of at least one key; `inputs` is the print of the files it was made from. */
export function sealed<Value extends object>(value: Value, inputs: string, digest: NewDigest): Sealed<Value> {
  const unsealed = JSON.stringify(value, null, 1);
  const seal = { inputs, content: digest().update(unsealed).hex() };
  const lines = JSON.stringify({ seal }, null, 1).slice(1);
  return { value: { ...value, seal }, text: `${unsealed.slice(0, -'\n}'.length)},${lines}\n` };
}

/** Whether a file's bytes are still those that were sealed; line ends may differ. */
export function isUntouched(bytes: Uint8Array, { content }: Seal, platform: Platform): boolean {
  return (
    printBeforeSeal(bytes, platform) === content ||
    printBeforeSeal(withLineFeeds(bytes, platform), platform) === content
  );
}

/** The seal and what may follow it take a few hundred bytes; room for blank lines that an editor adds. */
const TAIL_BYTES = 4096;

/** The seal is looked for in the last bytes, which hold letters of one byte each from its beginning on. */
function printBeforeSeal(bytes: Uint8Array, { digest, decode }: Platform): string | null {
  const tail = decode(bytes.subarray(Math.max(0, bytes.length - TAIL_BYTES)));
  const start = tail.lastIndexOf(',\n "seal": {');
  if (start < 0 || !SEAL_ALONE.test(tail.slice(start))) return null;
  const end = bytes.length - (tail.length - start);
  return digest().update(bytes.subarray(0, end)).update('\n}').hex();
}

/** The seal ends the file: a key after it would be read and not be sealed. */
const SEAL_ALONE = /^,\n "seal": \{\n {2}"inputs": "\w*",\n {2}"content": "\w*"\n \}\n\}\s*$/;

/** Some editors and synchronizers write other line ends, or a byte-order mark; JSON is the same with them. */
function withLineFeeds(bytes: Uint8Array, { decode }: Platform): Uint8Array {
  return new TextEncoder().encode(decode(bytes).replaceAll('\r\n', '\n'));
}

/** The print of everything a week's plan is made from: names within the season and bytes of its files. */
export function inputsPrint(folder: SeasonFolder, digest: NewDigest): string {
  const hash = digest();
  for (const [part, files] of partsOf(folder)) {
    for (const { path, bytes } of files) hash.update(`${part}\0${path}\0${bytes.length}\0`).update(bytes);
  }
  return hash.hex();
}

/** In the order in which a print has always taken them. */
const PARTS = [
  ...['opponent', 'weekFile', 'libraryFile', 'profileFile', 'formationFile', 'ownProfileFile'],
  ...['archiveProfileFile', 'archive', 'counts', 'earlierWeeks', 'ownFilm'],
] as readonly (keyof Omit<SeasonFolder, 'unread'>)[];

function partsOf(folder: SeasonFolder): [part: string, files: readonly SeasonFile[]][] {
  return PARTS.map((part) => [part, filesOf(folder[part])]);
}

function filesOf(found: SeasonFile | readonly SeasonFile[] | null): readonly SeasonFile[] {
  if (found === null) return [];
  return 'file' in found ? [found] : found;
}
