import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { distanceOf, snapPlaces, zoneShares } from '../../../src/pressure/evidence/snap-place.ts';
import { inventedSettings } from '../invented-offense.ts';

const CUTS = inventedSettings().situations;

describe('where a snap is played', () => {
  it('has the league classes of every situation: third and fourth down are late', () => {
    expect(SITUATIONS.map(({ id }) => distanceOf(id))).toEqual([
      'first',
      'first',
      'first',
      'first',
      'second_short',
      'second_medium',
      'second_long',
      'late_short',
      'late_medium',
      'late_long',
      'late_short',
      'late_medium',
      'late_long',
    ]);
  });

  it("follows the staff's cut-offs for red zone and goal line", () => {
    const film = filmFromRecords([60, 21, 20, 6, 5].map((ball_on) => ({ down: 1, to_go: 10, ball_on })));
    const zones = [0, 1, 2, 3, 4].map((i) => snapPlaces(film, CUTS)(i).zone);
    expect(zones).toEqual(['open_field', 'open_field', 'red_zone', 'red_zone', 'goal_line']);
  });
});

describe('the zones of a situation', () => {
  it('are the league usual ones without film, and sum to one', () => {
    const shares = zoneShares(filmFromRecords([]), CUTS);
    expect(shares.get('first_goal')).toMatchObject({ red_zone: 0.484, goal_line: 0.516 });
    for (const { open_field, red_zone, goal_line } of shares.values()) {
      expect(open_field + red_zone + goal_line).toBeCloseTo(1, 12);
    }
  });

  it('move to the film of this opponent: twelve snaps in the red zone weigh as much as what is usual', () => {
    const film = filmFromRecords(Array.from({ length: 12 }, () => ({ down: 3, to_go: 8, ball_on: 15 })));
    expect(zoneShares(film, CUTS).get('third_long')?.red_zone).toBeCloseTo((1 + 0.119) / 2, 12);
  });
});
