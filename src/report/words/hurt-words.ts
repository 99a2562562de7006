import type { FirstSeen } from '../../pressure/review/first-seen.ts';
import type { Review } from '../../pressure/review/review.ts';
import type { HurtCount } from '../../pressure/review/what-hurt.ts';
import { answerLabel, capital } from './label.ts';
import { counted, listed } from './number-words.ts';
import { type Count, shareWords } from './share-words.ts';
import { situationName } from './situation-label.ts';

/** Beaten once, or on fewer snaps than this, says nothing of a call or a situation; judgment. */
const LEAST = { beaten: 2, snaps: 3 } as const;
/** Calls, or situations, named. */
const NAMED = 3;
/** Snaps named in one line. */
const SNAPS_NAMED = 8;

/**
 * The calls or situations that were beaten most, one line each.
 *
 * @example "Latch Lock: beaten on 3 of 4 (75%), snaps 3, 9 and 20"
 */
export function beatenLines(counts: readonly HurtCount[], nameOf: (name: string) => string): readonly string[] {
  return counts
    .filter(({ beaten }) => saysSomething(beaten))
    .slice(0, NAMED)
    .map(({ name, beaten, bigPlays, snaps }) => {
      const big = bigPlays === 0 ? '' : `, ${counted(bigPlays, 'big play', 'big plays')}`;
      return `${nameOf(name)}: beaten on ${shareWords(beaten)}${big}; ${snapWords(snaps)}.`;
    });
}

function saysSomething({ count, trials }: Count): boolean {
  return count >= LEAST.beaten && trials >= LEAST.snaps;
}

/**
 * Snaps by number.
 *
 * @example "snaps 3, 9 and 20"
 */
export function snapWords(snaps: readonly string[]): string {
  const rest = snaps.length - SNAPS_NAMED;
  const named = snaps.slice(0, SNAPS_NAMED);
  const list = rest > 0 ? `${named.join(', ')} and ${rest} more` : listed(named);
  return `${snaps.length === 1 ? 'snap' : 'snaps'} ${list}`;
}

/**
 * Something the film had not shown.
 *
 * @example "Formation Quilt: snaps 12 and 30 (none on 235 film snaps)"
 */
export function firstSeenWords({ kind, value, situation, filmSnaps, snaps }: FirstSeen): string {
  const what =
    kind === 'answer' ? `${answerLabel(value)} on ${situationName(situation ?? '')}` : `${capital(kind)} ${value}`;
  return `${what}: ${snapWords(snaps)} (none on ${counted(filmSnaps, 'film snap', 'film snaps')}).`;
}

/** The situations beaten most over the games of a season, one line each, by the same rule as a game's. */
export function beatenOverGames(reviews: readonly Review[]): readonly string[] {
  const sums = new Map<string, Count & { readonly bigPlays: number }>();
  for (const { name, beaten, bigPlays } of reviews.flatMap(({ hurt }) => hurt.situations)) {
    const before = sums.get(name) ?? { count: 0, trials: 0, bigPlays: 0 };
    sums.set(name, {
      count: before.count + beaten.count,
      trials: before.trials + beaten.trials,
      bigPlays: before.bigPlays + bigPlays,
    });
  }
  return [...sums]
    .filter(([, sum]) => saysSomething(sum))
    .sort((a, b) => b[1].count - a[1].count)
    .slice(0, NAMED)
    .map(([name, sum]) => {
      const big = sum.bigPlays === 0 ? '' : `, ${counted(sum.bigPlays, 'big play', 'big plays')}`;
      return `${situationName(name)}: beaten on ${shareWords(sum)}${big}.`;
    });
}
