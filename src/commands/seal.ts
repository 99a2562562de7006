import { createHash } from 'node:crypto';
import { relative, resolve } from 'node:path';
import type { FoundFile, SeasonFolder } from './season-folder.ts';

/** What a file of ours is held to when it is read again: SHA-256, in hexadecimal digits. */
export interface Seal {
  /** Of the files it was made from. */
  readonly inputs: string;
  /** Of all that stands in the file before the seal. */
  readonly content: string;
}

/** The value with its seal as the last key. */
export function sealed<Value extends object>(value: Value, inputs: string): Value & { readonly seal: Seal } {
  return { ...value, seal: { inputs, content: printOf(bodyText(value)) } };
}

/** A sealed value as the text of its file. */
export function sealedText(value: { readonly seal: Seal }): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}

/** Whether a file's bytes are still those that were sealed; line ends may differ. */
export function isUntouched(bytes: Uint8Array, { content }: Seal): boolean {
  const lines = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  return printBeforeSeal(lines) === content || printBeforeSeal(withLineFeeds(lines)) === content;
}

function printBeforeSeal(lines: Buffer): string | null {
  const end = lines.lastIndexOf(',\n "seal": {');
  return end < 0 || !SEAL_ALONE.test(lines.subarray(end).toString())
    ? null
    : createHash('sha256').update(lines.subarray(0, end)).update('\n}').digest('hex');
}

/** The seal ends the file: a key after it would be read and not be sealed. */
const SEAL_ALONE = /^,\n "seal": \{\n {2}"inputs": "\w*",\n {2}"content": "\w*"\n \}\n\}\s*$/;

/** Some editors and synchronisers write other line ends, or a byte-order mark; JSON is the same with them. */
function withLineFeeds(lines: Buffer): Buffer {
  return Buffer.from(lines.toString().replace('\ufeff', '').replaceAll('\r\n', '\n'));
}

/** The print of everything a week's plan is made from: names within the season and bytes of its files. */
export function inputsPrint(folder: SeasonFolder): string {
  const hash = createHash('sha256');
  for (const [part, files] of partsOf(folder)) {
    for (const { file, bytes } of files) {
      const name = relative(folder.season, resolve(file)).replaceAll('\\', '/');
      hash.update(`${part}\0${name}\0${bytes.length}\0`).update(bytes);
    }
  }
  return hash.digest('hex');
}

function partsOf(folder: SeasonFolder): [part: string, files: readonly FoundFile[]][] {
  const { week: _, season: __, unread: ___, ...parts } = folder;
  return Object.entries(parts).map(([part, found]) => [part, filesOf(found)]);
}

function filesOf(found: FoundFile | readonly FoundFile[] | null): readonly FoundFile[] {
  if (found === null) return [];
  return 'file' in found ? [found] : found;
}

function bodyText(value: object): string {
  return JSON.stringify(value, null, 1);
}

function printOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
