import { betaCdf } from '../../stats/beta.ts';
import { normalCdf, normalWidth } from '../../stats/normal.ts';
import type { Spread } from '../../stats/spread.ts';
import { type Count, isThin } from './share-words.ts';

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

/**
 * The phrase for a level of the engine, where no difference is called none; a lean at most on fewer snaps than a share
 * needs.
 *
 * @param film - what was counted on their film
 */
export function sureWord(level: Exclude<Sure, 'no difference'> | 'none', film: Pick<Count, 'trials'>): Sure {
  if (level === 'none') return 'no difference';
  return isThin(film) ? atMostLean(level) : level;
}

/**
 * How sure it is that the more frequent of two things is the more frequent in the long run.
 *
 * @param share - how often one of the two came
 * @see Jeffreys prior: Brown, Cai and DasGupta 2001, Statistical Science 16:101
 */
export function majoritySure({ count, trials }: Count): Sure {
  const below = betaCdf(0.5, count + 0.5, trials - count + 0.5);
  const sure = sureOf(Math.max(below, 1 - below));
  return isThin({ trials }) ? atMostLean(sure) : sure;
}

/** How sure it is that a figure is below zero, by its mean and the width of its 95% interval. */
export function belowZeroSure({ mean, low, high }: Spread): Sure {
  const error = (high - low) / (2 * normalWidth(0.95));
  return sureOf(error === 0 ? Number(mean < 0) : normalCdf(-mean / error));
}
