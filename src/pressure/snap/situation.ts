import { type Film, numberAt } from '../../game/film.ts';
import { SITUATIONS, type SituationId } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';

/** Down, yards to the first down or goal, and yards to the opponent's goal line where charted. */
export interface DownAndDistance {
  readonly down: number;
  readonly toGo: number;
  readonly yardsToGoal?: number | undefined;
}

/**
 * Which situation a down and distance is. First and goal is a first down with the goal line as its line to gain; where the
 * ball position was not charted a first down is read from its distance alone.
 *
 * @param snap - down 1 to 4, distance in yards
 * @param cuts - up to how many yards is short, and up to how many medium, for each down
 */
export function situationOf(snap: DownAndDistance, cuts: SituationCuts): SituationId {
  if (snap.down === 1) return firstDown(snap);
  if (snap.down === 2) return `second_${distanceWord(snap.toGo, cuts.second)}`;
  if (snap.down === 3) return `third_${distanceWord(snap.toGo, cuts.third)}`;
  return `fourth_${distanceWord(snap.toGo, cuts.fourth)}`;
}

/**
 * The situation of every snap as an index into {@link SITUATIONS}; 255 where down or distance was not charted.
 *
 * @param cuts - the staff's cut-offs
 */
export function situationCodes(chart: Film, cuts: SituationCuts): Uint8Array {
  const index = new Map<SituationId, number>(SITUATIONS.map(({ id }, i) => [id, i]));
  return codesBySnap(chart.size, (i) => {
    const down = numberAt(chart, 'down', i);
    const toGo = numberAt(chart, 'to_go', i);
    if (down === undefined || toGo === undefined) return NOT_KNOWN;
    return index.get(situationOf({ down, toGo, yardsToGoal: numberAt(chart, 'ball_on', i) }, cuts)) ?? NOT_KNOWN;
  });
}

function firstDown({ toGo, yardsToGoal }: DownAndDistance): SituationId {
  if (yardsToGoal !== undefined && toGo >= yardsToGoal) return 'first_goal';
  if (toGo === 10) return 'first_ten';
  return toGo > 10 ? 'first_long' : 'first_short';
}

function distanceWord(toGo: number, bucket: { readonly short: number; readonly medium: number }) {
  if (toGo <= bucket.short) return 'short';
  return toGo <= bucket.medium ? 'medium' : 'long';
}
