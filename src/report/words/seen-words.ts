import { SITUATIONS } from '../../game/situations.ts';
import type { FeatureName, SeenValue } from '../../pressure/forecast/tell-feature.ts';
import { FIELD_ZONES } from '../../pressure/snap/field-zone.ts';
import { GAME_STATES } from '../../pressure/snap/game-state.ts';
import { LOOKS, RECEIVER_LOOKS } from '../../pressure/snap/look.ts';

/**
 * What is seen before a snap, thing by thing.
 *
 * @example seenWords([{ feature: 'down', value: '3' }, { feature: 'motion', value: 'fast' }]) // "3rd down, motion fast"
 */
export function seenWords(seen: readonly SeenValue[]): string {
  return seen.map(({ feature, value }) => seenValueWords(feature, value)).join(', ');
}

/** One thing seen before a snap; a word nobody knows is said as it was charted. */
export function seenValueWords(feature: FeatureName, value: string): string {
  const words = WORDS[feature];
  return typeof words === 'function' ? words(value.replaceAll('_', ' ')) : (words[value] ?? value);
}

type Words = Readonly<Record<string, string>> | ((value: string) => string);

const labels = (list: readonly { readonly id: string; readonly label: string }[]): Words =>
  Object.fromEntries(list.map(({ id, label }) => [id, label]));

const WORDS: Readonly<Record<FeatureName, Words>> = {
  down: { 1: '1st down', 2: '2nd down', 3: '3rd down', 4: '4th down' },
  distance: {
    up_to_3: '1 to 3 to go',
    up_to_6: '4 to 6 to go',
    up_to_10: '7 to 10 to go',
    over_10: '11 or more to go',
  },
  situation: labels(SITUATIONS),
  look: labels(LOOKS),
  receivers: labels(RECEIVER_LOOKS),
  back_spot: (value) => `back ${value}`,
  personnel: (value) => `personnel ${value}`,
  formation: (value) => `formation ${value}`,
  hash: (value) => `hash ${value}`,
  motion: (value) => `motion ${value}`,
  tempo: (value) => value,
  zone: labels(FIELD_ZONES),
  state: labels(GAME_STATES),
  score: { ahead: 'ahead by more than a score', behind: 'behind by more than a score', close: 'within a score' },
  quarter: (value) => (value === 'overtime' ? value : `quarter ${value}`),
  after_big_play: { yes: 'after their big play', no: 'after no big play' },
  series: { first: 'first snap of a series', later: 'later in the series' },
  shown_early: { yes: 'look shown early', no: 'look held' },
};
