/** The columns a scout card shows, in the order it says them. */
export const CARD_COLUMNS = [
  'formation',
  'receivers',
  'personnel',
  'strength',
  'back_spot',
  'quarterback_depth',
  'motion',
  'protectors',
  'slide',
  'back_action',
  'concept',
  'target_zone',
] as const;
/** One word of {@link CARD_COLUMNS}. */
export type CardColumn = (typeof CARD_COLUMNS)[number];

/** What was charted on the snap of a card; a column absent here was not charted. */
export type CardShows = Readonly<Partial<Record<CardColumn, string>>>;

/**
 * A look as a coach reads it to the scout team; what was not charted is left out.
 *
 * @example cardWords({ receivers: '3x1', back_spot: 'weak', motion: 'none' }) // "3x1, back weak, no motion"
 */
export function cardWords(shows: CardShows): string {
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
