import { isUntouched, type Seal } from './seal.ts';
import type { Platform, SeasonPlace } from './store.ts';
import { UserProblem } from './user-problem.ts';
import { VERSION } from './version.ts';

/** A JSON file we wrote, read again. */
export type SavedJson<Value> =
  | { readonly kind: 'sound'; readonly value: Value; readonly seal: Seal }
  | { readonly kind: 'absent' }
  | UnusableJson;

/** A file that was changed, is not whole, or is none of this version. */
export interface UnusableJson {
  readonly kind: 'unusable';
  /** Which file, where in it, and what is wrong; no full stop at the end. */
  readonly problem: string;
}

/** Where the file lies and what it must be. */
export interface SavedFile {
  /** Its path within the season. */
  readonly path: string;
  /** The schema named in it, such as `pressure-plan.week/1`. */
  readonly schema: string;
}

/** A file larger than this is not one we wrote; judgment (the demo's plan takes under two megabytes). */
const LARGEST_BYTES = 200_000_000;

/** Reads a file that was sealed when it was written. Only an untouched file of this version is sound. */
export async function readSaved<Value>(
  { path, schema }: SavedFile,
  { files, platform }: SeasonPlace,
): Promise<SavedJson<Value>> {
  const shown = files.shown(path);
  try {
    const bytes = await files.read(path);
    if (bytes === null) return { kind: 'absent' };
    if (bytes.length > LARGEST_BYTES) return unusable(`${shown} is far larger than any file we write`);
    return soundValue({ shown, schema, bytes }, platform);
  } catch (error) {
    if (error instanceof UserProblem) return unusable(error.message);
    throw error;
  }
}

interface SavedBytes {
  readonly shown: string;
  readonly schema: string;
  readonly bytes: Uint8Array;
}

function soundValue<Value>({ shown, schema, bytes }: SavedBytes, platform: Platform): SavedJson<Value> {
  const parsed = parse(platform.decode(bytes));
  if (parsed.kind === 'broken') return unusable(`${shown} ${parsed.words}`);
  const { value } = parsed;
  const wrong = wrongKey(value, schema);
  if (wrong !== null) return unusable(`${shown}, at "${wrong.key}": ${wrong.words}`);
  const seal = value['seal'] as Seal;
  if (isUntouched(bytes, seal, platform)) return { kind: 'sound', value: value as Value, seal };
  return unusable(`${shown} was changed after it was written`);
}

type Parsed =
  | { readonly kind: 'object'; readonly value: Readonly<Record<string, unknown>> }
  | { readonly kind: 'broken'; readonly words: string };

function parse(text: string): Parsed {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value))
      return { kind: 'object', value: value as Record<string, unknown> };
    return { kind: 'broken', words: 'holds no object' };
  } catch (error) {
    return { kind: 'broken', words: brokenWords(text, error as Error) };
  }
}

function brokenWords(text: string, { message }: Error): string {
  if (text.trim() === '') return 'is empty';
  const lines = text.split('\n').length;
  const at = /position (\d+)/.exec(message)?.[1];
  // The engine tells where it stopped, or that it met the end too early.
  if (at === undefined || Number(at) >= text.trimEnd().length) return `is cut off: it ends within line ${lines}`;
  return `cannot be read at line ${text.slice(0, Number(at)).split('\n').length}: it is no JSON there`;
}

interface WrongKey {
  readonly key: string;
  readonly words: string;
}

function wrongKey(value: Readonly<Record<string, unknown>>, schema: string): WrongKey | null {
  if (value['schema'] !== schema)
    return { key: 'schema', words: `${foundWords(value['schema'])} where "${schema}" belongs` };
  if (value['version'] !== VERSION)
    return { key: 'version', words: `${foundWords(value['version'])}, this is version "${VERSION}" of the tool` };
  if (!isSeal(value['seal'])) return { key: 'seal', words: 'it is missing; an earlier version wrote the file' };
  return null;
}

function isSeal(value: unknown): value is Seal {
  const { inputs, content } = (value ?? {}) as Record<string, unknown>;
  return typeof inputs === 'string' && typeof content === 'string';
}

/** Characters of a value that are shown. */
const SHOWN = 40;

/** A value as it stands in a file, cut short. */
export function foundWords(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value);
  return text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
}

function unusable(problem: string): UnusableJson {
  return { kind: 'unusable', problem };
}
