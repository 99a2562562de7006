import { type Film, numberAt } from '../../game/film.ts';
import { SITUATIONS, type SituationId } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { fieldZoneOf } from '../snap/field-zone.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { situationCodes } from '../snap/situation.ts';
import { type Distance, PRESSURE_ZONES, type PressureZone, TYPICAL_ZONES } from './league-figures.ts';
import type { SnapPlace } from './league-points.ts';

/** The league's class of a situation; the staff's cut-offs take the place of its 3 and 6 yards. */
export function distanceOf(situation: SituationId): Distance {
  const [down, distance] = situation.split('_');
  if (down === 'first') return 'first';
  return `${down === 'second' ? 'second' : 'late'}_${distance}` as Distance;
}

/** Where each snap of a film is played; an uncharted ball lies in the open field, an uncharted down is a first. */
export function snapPlaces(film: Film, cuts: SituationCuts): (index: number) => SnapPlace {
  const situations = situationCodes(film, cuts);
  return (index) => ({
    zone: zoneAt(film, index, cuts) ?? 'open_field',
    distance: distanceOf(SITUATIONS[situations[index] ?? NOT_KNOWN]?.id ?? 'first_ten'),
  });
}

/** Share of a situation's snaps in each zone. */
export type ZoneShares = Readonly<Record<PressureZone, number>>;

/** Worth of the league's shares of a situation against the opponent's own snaps there, in snaps; judgment. */
const TYPICAL_WORTH = 12;

/** In which zones an opponent's snaps of each situation lie: its own film on top of what is typical of the situation. */
export function zoneShares(film: Film, cuts: SituationCuts): ReadonlyMap<SituationId, ZoneShares> {
  const situations = situationCodes(film, cuts);
  const counts = SITUATIONS.map(() => ({ open_field: 0, red_zone: 0, goal_line: 0 }));
  for (let i = 0; i < film.size; i++) {
    const [zone, count] = [zoneAt(film, i, cuts), counts[situations[i] ?? NOT_KNOWN]];
    if (zone && count) count[zone] += 1;
  }
  return new Map(SITUATIONS.map(({ id }, s) => [id, sharesOf(counts[s], id)]));
}

function sharesOf(counts: ZoneShares | undefined, situation: SituationId): ZoneShares {
  const { redZone, goalLine } = TYPICAL_ZONES[situation];
  const typical: ZoneShares = { open_field: 1 - redZone - goalLine, red_zone: redZone, goal_line: goalLine };
  const total = PRESSURE_ZONES.reduce((sum, zone) => sum + (counts?.[zone] ?? 0), TYPICAL_WORTH);
  const share = (zone: PressureZone) => ((counts?.[zone] ?? 0) + TYPICAL_WORTH * typical[zone]) / total;
  return { open_field: share('open_field'), red_zone: share('red_zone'), goal_line: share('goal_line') };
}

function zoneAt(film: Film, index: number, cuts: SituationCuts): PressureZone | undefined {
  const yards = numberAt(film, 'ball_on', index);
  if (yards === undefined) return undefined;
  const zone = fieldZoneOf(yards, cuts);
  return zone === 'red_zone' || zone === 'goal_line' ? zone : 'open_field';
}
