import type { BACK_SPOTS, STRENGTHS } from '../../game/vocabulary.ts';
import { plainWord } from '../read-cell.ts';
import type { FormationBook } from './formation-schema.ts';

/** The structure a formation name stands for; what the book does not say is absent. */
export interface FormationStructure {
  readonly receivers?: string;
  readonly back_spot?: (typeof BACK_SPOTS)[number];
  readonly strength?: (typeof STRENGTHS)[number];
  /** Backs in the backfield, 0 to 3. */
  readonly backs?: number;
}

/** A word for a side at the beginning or the end of a formation's name. */
const SIDE_WORDS: Readonly<Record<string, 'left' | 'right'>> = {
  left: 'left',
  lt: 'left',
  l: 'left',
  right: 'right',
  rt: 'right',
  r: 'right',
};

/**
 * Looks names up in a book. White space, hyphens and case do not matter. A name that is not in the book as it stands is
 * looked up without a left or right at its beginning or end, which then is its strength.
 */
export function formationReader({ formations }: FormationBook): (name: string) => FormationStructure | undefined {
  const byName = new Map(Object.entries(formations).map(([name, found]) => [plainWord(name), found]));
  const known = new Map<string, FormationStructure | undefined>();
  return (name) => {
    if (!known.has(name)) known.set(name, lookUp(byName, name));
    return known.get(name);
  };
}

function lookUp(
  byName: ReadonlyMap<string, FormationBook['formations'][string]>,
  name: string,
): FormationStructure | undefined {
  const words = plainWord(name).split('_');
  const { side, base } = withoutSide(words);
  const found = byName.get(words.join('_')) ?? (side === undefined ? undefined : byName.get(base));
  return found === undefined ? undefined : structureOf(found, side);
}

function structureOf(
  found: FormationBook['formations'][string],
  side: 'left' | 'right' | undefined,
): FormationStructure {
  const strength = found.strength ?? side;
  const spot = found.back_spot ?? (found.backs === 0 ? 'none' : undefined);
  return {
    ...(found.receivers === undefined ? {} : { receivers: found.receivers }),
    ...(strength === undefined ? {} : { strength }),
    ...(spot === undefined ? {} : { back_spot: spot }),
    ...(found.backs === undefined ? {} : { backs: found.backs }),
  };
}

function withoutSide(words: readonly string[]): { readonly side: 'left' | 'right' | undefined; readonly base: string } {
  const last = SIDE_WORDS[words.at(-1) ?? ''];
  if (words.length > 1 && last !== undefined) return { side: last, base: words.slice(0, -1).join('_') };
  const first = SIDE_WORDS[words[0] ?? ''];
  if (words.length > 1 && first !== undefined) return { side: first, base: words.slice(1).join('_') };
  return { side: undefined, base: words.join('_') };
}
