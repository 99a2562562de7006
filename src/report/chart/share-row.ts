import type { Share } from '../../stats/share.ts';
import { countWords, isThin } from '../words/share-words.ts';
import type { IntervalRow } from './interval-row.ts';

/** A share as a row of an interval chart; no snaps is a state of its own. */
export function shareRow(id: string, label: string, share: Share): IntervalRow {
  const { estimate, low, high } = share;
  const base = { id, label, note: noteOf(share), second: null };
  if (estimate === null) return { ...base, state: 'none', value: 0, low: 0, high: 0 };
  return { ...base, state: isThin(share) ? 'thin' : 'solid', value: estimate, low, high };
}

function noteOf(share: Share): string {
  return isThin(share) ? `${countWords(share)}, thin` : countWords(share);
}
