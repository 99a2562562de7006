import type { Call } from '../../game/call-library.ts';

/** The side a call is sent to, as it stands under its name. */
export const SIDE_WORDS: Readonly<Record<Call['sent_from'], string>> = {
  field: 'field',
  boundary: 'boundary',
  strength: 'strength',
  weak: 'weak side',
  back: 'to the back',
  away_from_back: 'away from back',
  either: 'either side',
};
