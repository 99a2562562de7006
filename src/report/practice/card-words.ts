import type { LookKind } from '../../game/look-kinds.ts';
import { CARD_COLUMNS, type CardColumn, type CardShows, type LookCard } from '../../pressure/practice/look-card.ts';

/** A look as a coach reads it to the scout team: as charted, or as common practice where their film does not show it. */
export function cardWords({ kind, filmSnaps, shows }: LookCard): string {
  return filmSnaps === 0 ? COMMON_PRACTICE[kind] : shownWords(shows);
}

/**
 * What was charted on the snap of a card; what was not is left out.
 *
 * @example shownWords({ receivers: '3x1', back_spot: 'weak', motion: 'none' }) // "3x1, back weak, no motion"
 */
export function shownWords(shows: CardShows): string {
  return CARD_COLUMNS.flatMap((column) => {
    const value = shows[column];
    const said = value === undefined ? '' : PHRASES[column](value.replaceAll('_', ' '));
    return said === '' ? [] : [said];
  }).join(', ');
}

const PHRASES: Readonly<Record<CardColumn, (value: string) => string>> = {
  formation: (value) => value,
  receivers: (value) => value,
  personnel: (value) => `${value} personnel`,
  strength: (value) => (value === 'none' ? '' : `strength ${value}`),
  back_spot: (value) => (value === 'none' ? 'no back' : `back ${value}`),
  quarterback_depth: (value) => value,
  motion: (value) => (value === 'none' ? 'no motion' : `motion ${value}`),
  protectors: (value) => `${value} protect`,
  slide: (value) => (value === 'man' ? 'man protection' : `slide ${value}`),
  back_action: (value) => (value === 'none' ? '' : `back ${value}`),
  concept: (value) => value,
  target_zone: (value) => `thrown ${value}`,
};

/** How a look is drawn that the opponent has not shown on film; common practice, no source. */
const COMMON_PRACTICE: Readonly<Record<LookKind, string>> = {
  run: 'base set, inside run to the strength',
  quarterback_run: 'shotgun, back beside him, the quarterback keeps it',
  screen: 'balanced set, the line lets the rush through, ball to the back behind it',
  quick: 'balanced set, ball out on the first step to the flat or the slant',
  dropback: 'balanced set, back checks and stays in, ball held for the second read',
  wide_release: 'balanced set, back swings wide at the snap',
  inside_release: 'balanced set, back slips through the line',
  max_protection: 'two receivers a side at most, back and tight end stay in, ball held',
  empty: 'five out, nobody beside the quarterback, ball out early',
  deep_shot: 'balanced set, two receivers deep, ball held',
  trips_deep: 'three receivers to one side, all of them deep',
  movement: 'the quarterback leaves the pocket to the strength',
};
