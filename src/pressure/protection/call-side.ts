import type { Call } from '../../game/call-library.ts';
import type { Hash } from '../../game/vocabulary.ts';
import type { Share } from '../../stats/share.ts';
import { fieldSideOf } from '../snap/field-side.ts';
import type { ProtectionMix } from './protection-result.ts';

/** A side of the field seen from behind the offense. */
export type Side = 'left' | 'right';

/** What is seen before the snap that a call's side depends on; undefined where it was not charted. */
export interface SideLook {
  readonly hash?: Hash | undefined;
  readonly strength?: string | undefined;
  readonly backSpot?: string | undefined;
}

/**
 * The side a call is sent from on one snap, seen from behind the offense; null where nothing decides it: a call that may
 * come from either side, a ball in the middle for a field call, a back behind the quarterback for a back call, or a look
 * that was not charted.
 */
export function nearSide(sentFrom: Call['sent_from'], look: SideLook): Side | null {
  switch (sentFrom) {
    case 'field':
      return fieldOf(look);
    case 'boundary':
      return opposite(fieldOf(look));
    case 'strength':
      return asSide(look.strength);
    case 'weak':
      return opposite(asSide(look.strength));
    case 'back':
      return backOf(look);
    case 'away_from_back':
      return opposite(backOf(look));
    case 'either':
      return null;
    default:
      return sentFrom satisfies never;
  }
}

/**
 * Which side to send a pressure from, in words, when one of their slide habits is clearly off one half: its 95% interval
 * lies above or below it. The clearest habit speaks; null when none is clear.
 *
 * @example sideAdvice(mix) // 'they turn away from the back 83% [70-91] (34 of 41): send from the side of the back'
 */
export function sideAdvice(
  mix: Pick<ProtectionMix, 'slideToBack' | 'slideToField' | 'slideToStrength'>,
): string | null {
  const habits = [
    habit(mix.slideToBack, BACK_WORDS),
    habit(mix.slideToField, FIELD_WORDS),
    habit(mix.slideToStrength, STRENGTH_WORDS),
  ].filter((found) => found !== null);
  const clearest = habits.sort((a, b) => b.bound - a.bound)[0];
  return clearest?.words ?? null;
}

/** A turn to its reference or away, and where to send from against each. */
interface HabitWords {
  readonly to: string;
  readonly against: string;
  readonly away: string;
  readonly againstAway: string;
}

const BACK_WORDS: HabitWords = {
  to: 'to the back',
  against: 'opposite the back',
  away: 'away from the back',
  againstAway: 'the side of the back',
};
const FIELD_WORDS: HabitWords = {
  to: 'to the field',
  against: 'the boundary',
  away: 'to the boundary',
  againstAway: 'the field',
};
const STRENGTH_WORDS: HabitWords = {
  to: 'to the strength',
  against: 'the weak side',
  away: 'away from the strength',
  againstAway: 'the strength',
};

function habit(slide: Share, words: HabitWords): { readonly bound: number; readonly words: string } | null {
  const { count, trials, low, high } = slide;
  if (trials === 0 || (low <= 0.5 && high >= 0.5)) return null;
  if (low > 0.5) return { bound: low, words: `they turn ${words.to} ${shareWords(slide)}: send from ${words.against}` };
  const away = { count: trials - count, trials, low: 1 - high, high: 1 - low };
  return { bound: away.low, words: `they turn ${words.away} ${shareWords(away)}: send from ${words.againstAway}` };
}

function shareWords({ count, trials, low, high }: Omit<Share, 'estimate'>): string {
  const percent = (value: number) => Math.round(100 * value);
  return `${percent(count / trials)}% [${percent(low)}-${percent(high)}] (${count} of ${trials})`;
}

function fieldOf(look: SideLook): Side | null {
  return look.hash === undefined ? null : asSide(fieldSideOf(look.hash));
}

function backOf(look: SideLook): Side | null {
  const strength = asSide(look.strength);
  if (look.backSpot === 'strong') return strength;
  return look.backSpot === 'weak' ? opposite(strength) : null;
}

function opposite(side: Side | null): Side | null {
  if (side === null) return null;
  return side === 'left' ? 'right' : 'left';
}

function asSide(word: string | undefined): Side | null {
  return word === 'left' || word === 'right' ? word : null;
}
