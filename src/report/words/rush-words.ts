import type { RushGroup } from '../../pressure/snap/rush-group.ts';
import { plainWords } from './label.ts';

const WORDS: Readonly<Record<RushGroup, string>> = {
  three_or_fewer: 'three rushers or fewer',
  four: 'four rushers',
  five: 'five rushers',
  six_or_more: 'six rushers or more',
};

/** A number of rushers in words; a coverage id is made readable. */
export function rushGroupWords(group: string): string {
  return isRushGroup(group) ? WORDS[group] : plainWords(group).toLowerCase();
}

function isRushGroup(group: string): group is RushGroup {
  return Object.hasOwn(WORDS, group);
}
