import { LANES, type Lane } from '../call-library.ts';

/** A rusher in a few words: who, and what differs from the standard. */
export interface RushWords {
  readonly role: string;
  readonly lane?: Lane;
  readonly way?: 'loop' | 'late_if_back_blocks';
  readonly peels?: true;
}

/** What may follow the role of a rusher. */
export const AFTER_ROLE = 'a lane such as near_B, loop, late or peels';

/**
 * Reads a rusher such as "mike near_A loop"; words we do not know come back instead.
 *
 * @example readRushWords('will far_C peels') // { kind: 'man', man: { role: 'will', lane: 'far_C', peels: true } }
 */
export function readRushWords(
  text: string,
): { readonly kind: 'man'; readonly man: RushWords } | { readonly kind: 'unknown'; readonly words: readonly string[] } {
  const [role = '', ...rest] = text.trim().split(/\s+/);
  const unknown = rest.filter((word) => !isLane(word) && !(word in MARKS));
  if (unknown.length > 0) return { kind: 'unknown', words: unknown };
  const lane = rest.find(isLane);
  return { kind: 'man', man: Object.assign({ role }, lane && { lane }, ...rest.map((word) => MARKS[word] ?? {})) };
}

const MARKS: Readonly<Record<string, Partial<RushWords>>> = {
  loop: { way: 'loop' },
  late: { way: 'late_if_back_blocks' },
  peels: { peels: true },
};

function isLane(word: string): word is Lane {
  return (LANES as readonly string[]).includes(word);
}

/** A man in coverage in a word or two, such as "safety_middle adds". */
export function readCoverWords(text: string): { readonly role: string; readonly adds: boolean } {
  const [role = '', ...rest] = text.trim().split(/\s+/);
  return rest.join(' ') === 'adds' ? { role, adds: true } : { role: [role, ...rest].join(' '), adds: false };
}
