import type { Family } from '../../../game/vocabulary.ts';
import { percentWords, wholePercent } from '../../evidence/percent-words.ts';
import { FAMILY_WORDS } from '../family-words.ts';
import type { Turn } from './break-even-turn.ts';

/** What a turn is about. */
export interface TurnSubject {
  readonly against: Family;
  /** The quantity, in words. */
  readonly name: string;
  /** Whether it was charted at all; where not, what is typical stands in. */
  readonly charted: boolean;
}

/** A break-even as a coach would say it: where the family pays, and what they show. */
export function breakEvenWords(turn: Turn, { against, name, charted }: TurnSubject): string {
  const shown = `${percentWords(turn.shown)} [${wholePercent(turn.low)}-${wholePercent(turn.high)}]`;
  const show = charted ? `they show ${shown}` : `not charted, ${shown} stands in`;
  if (turn.turnsAt === null)
    return `${turn.ahead ? 'Ahead of' : 'Behind'} ${FAMILY_WORDS[against]} at any share of ${name}; ${show}.`;
  const pays = against === 'base' ? 'Pays' : `Ahead of ${FAMILY_WORDS[against]}`;
  return `${pays} ${turn.rises ? 'above' : 'below'} ${percentWords(turn.turnsAt)} ${name}; ${show}.`;
}
