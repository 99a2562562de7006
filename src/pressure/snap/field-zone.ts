import { type Film, numberAt } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';

/** The field zones from the offense's own goal line to the opponent's; where they start is the staff's. */
export const FIELD_ZONES = [
  { id: 'backed_up', label: 'backed up' },
  { id: 'coming_out', label: 'coming out' },
  { id: 'open_field', label: 'open field' },
  { id: 'going_in', label: 'going in' },
  { id: 'red_zone', label: 'red zone' },
  { id: 'goal_line', label: 'goal line' },
] as const;
/** The id of one of {@link FIELD_ZONES}. */
export type FieldZoneId = (typeof FIELD_ZONES)[number]['id'];

/**
 * The zone the ball lies in.
 *
 * @param yardsToGoal - yards to the opponent's goal line, 1 to 99
 * @param cuts - the staff's yard lines; a ball on the line itself belongs to the zone nearer a goal
 */
export function fieldZoneOf(yardsToGoal: number, cuts: SituationCuts): FieldZoneId {
  if (yardsToGoal <= cuts.goal_line) return 'goal_line';
  if (yardsToGoal <= cuts.red_zone) return 'red_zone';
  if (yardsToGoal <= cuts.going_in) return 'going_in';
  if (yardsToGoal >= 100 - cuts.backed_up) return 'backed_up';
  return yardsToGoal >= 100 - cuts.coming_out ? 'coming_out' : 'open_field';
}

/**
 * The zone of every snap as an index into {@link FIELD_ZONES}; 255 where the ball position was not charted.
 *
 * @param cuts - the staff's yard lines
 */
export function fieldZoneCodes(chart: Film, cuts: SituationCuts): Uint8Array {
  const index = new Map<FieldZoneId, number>(FIELD_ZONES.map(({ id }, i) => [id, i]));
  return codesBySnap(chart.size, (i) => {
    const yardsToGoal = numberAt(chart, 'ball_on', i);
    return yardsToGoal === undefined ? NOT_KNOWN : (index.get(fieldZoneOf(yardsToGoal, cuts)) ?? NOT_KNOWN);
  });
}
