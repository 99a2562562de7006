/** How sure a statement is, surest first: the chance in 100 that it holds, its mark, and what the glossary says. */
export const SURE_LEVELS = [
  { id: 'clear', least: 0.95, meaning: 'at least 95 chances in 100 that it holds' },
  { id: 'likely', least: 0.8, meaning: 'at least 80 chances in 100' },
  { id: 'lean', least: 0.65, meaning: 'at least 65 chances in 100: a tiebreaker, not an order' },
  { id: 'no difference', least: 0, meaning: 'less than that, or not known' },
] as const;

/** One word of {@link SURE_LEVELS}. */
export type Sure = (typeof SURE_LEVELS)[number]['id'];

/**
 * How sure one can be of a statement that holds with this chance.
 *
 * @param chance - 0 to 1; null when it is not known
 * @example sureOf(0.96) // "clear"
 */
export function sureOf(chance: number | null): Sure {
  return SURE_LEVELS.find(({ least }) => chance !== null && chance >= least)?.id ?? 'no difference';
}

/** What rests on fewer snaps than a share needs is a lean at most. */
export function atMostLean(sure: Sure): Sure {
  return sure === 'no difference' ? sure : 'lean';
}

/** The phrase for a level of the engine, where no difference is called none. */
export function sureWord(level: Exclude<Sure, 'no difference'> | 'none'): Sure {
  return level === 'none' ? 'no difference' : level;
}
