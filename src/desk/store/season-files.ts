import { strToU8, unzipSync, zipSync } from 'fflate';
import type { FileSet } from '../../season/memory-files.ts';
import { UserProblem } from '../../season/user-problem.ts';

/** A season as it came in: its folder's name, and its files by their paths. */
export interface ComingSeason {
  readonly name: string;
  readonly files: FileSet;
}

/** What a season may hold; other files are left where they are. */
const SEASON_FILE = /\.(csv|tsv|txt|xlsx|yaml|json|html)$/i;

/** More than any season takes; judgment. */
const MOST_BYTES = 400_000_000;

/** The season as one zip file, its folder inside. */
export function zipSeason({ name, files }: ComingSeason): Uint8Array<ArrayBuffer> {
  const entries = [...files].map(([path, bytes]) => [`${name}/${path}`, bytes] as const);
  return zipSync(Object.fromEntries(entries)) as Uint8Array<ArrayBuffer>;
}

/**
 * The season in a zip file.
 *
 * @param fallback - a name for it when the files stand in no folder
 * @throws UserProblem when it is not a zip file, is far too large, or holds no season
 */
export function unzipSeason(bytes: Uint8Array, fallback: string): ComingSeason {
  let left = MOST_BYTES;
  const filter = ({ name, originalSize }: { readonly name: string; readonly originalSize: number }) => {
    left -= originalSize;
    if (left < 0) throw new UserProblem('faults', 'The zip file unpacks to far more than a season.');
    return SEASON_FILE.test(name);
  };
  try {
    return rooted(new Map(Object.entries(unzipSync(bytes, { filter }))), fallback);
  } catch (error) {
    if (error instanceof UserProblem) throw error;
    throw new UserProblem('faults', 'That is not a zip file, or it is cut off.', { cause: error });
  }
}

/** The season in files that a browser picked: a folder, or one zip file. */
export async function pickedSeason(picked: readonly File[]): Promise<ComingSeason> {
  const [first] = picked;
  if (picked.length === 1 && first !== undefined && /\.zip$/i.test(first.name))
    return unzipSeason(new Uint8Array(await first.arrayBuffer()), first.name.replace(/\.zip$/i, ''));
  const files = new Map<string, Uint8Array>();
  for (const file of picked) {
    const path = file.webkitRelativePath || file.name;
    if (SEASON_FILE.test(path)) files.set(path, new Uint8Array(await file.arrayBuffer()));
  }
  return rooted(files, 'season');
}

/** Files without the folder they all stand in, which names the season; no path leads out of it. */
function rooted(files: ReadonlyMap<string, Uint8Array>, fallback: string): ComingSeason {
  const paths = [...files.keys()].filter((path) => !path.split('/').some(isLeftOut));
  const start = paths[0]?.split('/')[0] ?? '';
  const inFolder = paths.length > 0 && !isWeek(start) && paths.every((path) => path.startsWith(`${start}/`));
  const found = new Map(
    paths.map((path) => [inFolder ? path.slice(start.length + 1) : path, files.get(path) ?? strToU8('')]),
  );
  if (![...found.keys()].some((path) => path === 'defense.yaml' || isWeek(path)))
    throw new UserProblem(
      'faults',
      'There is no season in it: no defense.yaml and no folder named week-01, week-02, …',
    );
  return { name: inFolder ? start : fallback, files: found };
}

/** Hidden names, ways out of the folder, and the desk itself. */
function isLeftOut(name: string): boolean {
  return name === '' || name.startsWith('.') || name === 'desk.html';
}

function isWeek(path: string): boolean {
  return /^week/i.test(path);
}
