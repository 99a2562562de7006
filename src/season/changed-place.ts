import { foundWords } from './saved-json.ts';

/**
 * The first place where a changed file differs from what it must hold, in words such as
 * `forecast.cells[3].trials: "12" where 12 belongs`; null when it differs nowhere.
 *
 * @param found - what stands in the file
 * @param wanted - what must stand there, as JSON gives it back; its depth bounds the search
 */
export function changedPlace(found: unknown, wanted: unknown, path = ''): string | null {
  if (isHolder(found) && isHolder(wanted) && Array.isArray(found) === Array.isArray(wanted)) {
    return changeWithin({ found, wanted, path });
  }
  return isSame(found, wanted) ? null : `${path}: ${foundWords(found)} where ${foundWords(wanted)} belongs`;
}

type Holder = Readonly<Record<string, unknown>>;

interface Holders {
  readonly found: Holder;
  readonly wanted: Holder;
  readonly path: string;
}

function changeWithin({ found, wanted, path }: Holders): string | null {
  if (Array.isArray(found) && Array.isArray(wanted) && found.length < wanted.length)
    return `${path}: ${found.length} entries where ${wanted.length} belong`;
  for (const key of Object.keys(wanted)) {
    const place = placeOf(path, key, wanted);
    if (!Object.hasOwn(found, key)) return `${place}: it is missing`;
    const change = changedPlace(found[key], wanted[key], place);
    if (change !== null) return change;
  }
  const extra = Object.keys(found).find((key) => !Object.hasOwn(wanted, key));
  return extra === undefined ? null : `${placeOf(path, extra, wanted)}: it does not belong there`;
}

function placeOf(path: string, key: string, holder: Holder): string {
  if (Array.isArray(holder)) return `${path}[${key}]`;
  return path === '' ? key : `${path}.${key}`;
}

function isHolder(value: unknown): value is Holder {
  return typeof value === 'object' && value !== null;
}

/** Room for the last digits of a number, which another processor may round otherwise. */
const SLACK = 1e-9;

function isSame(found: unknown, wanted: unknown): boolean {
  if (typeof found !== 'number' || typeof wanted !== 'number') return found === wanted;
  return Math.abs(found - wanted) <= SLACK * Math.max(1, Math.abs(wanted));
}
