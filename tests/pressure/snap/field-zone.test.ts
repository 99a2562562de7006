import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { FIELD_ZONES, fieldZoneCodes, fieldZoneOf } from '../../../src/pressure/snap/field-zone.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

describe('fieldZoneOf', () => {
  const source = 'common practice, no source: own 0-10, own 20, opponent 40, 20 and 5';
  it.each([
    { yardsToGoal: 99, zone: 'backed_up', source },
    { yardsToGoal: 90, zone: 'backed_up', source },
    { yardsToGoal: 89, zone: 'coming_out', source },
    { yardsToGoal: 80, zone: 'coming_out', source },
    { yardsToGoal: 79, zone: 'open_field', source },
    { yardsToGoal: 41, zone: 'open_field', source },
    { yardsToGoal: 40, zone: 'going_in', source },
    { yardsToGoal: 20, zone: 'red_zone', source },
    { yardsToGoal: 6, zone: 'red_zone', source },
    { yardsToGoal: 5, zone: 'goal_line', source },
    { yardsToGoal: 1, zone: 'goal_line', source },
  ])('$yardsToGoal yards out is $zone', ({ yardsToGoal, zone }) => {
    expect(fieldZoneOf(yardsToGoal, cuts)).toBe(zone);
  });

  it("follows the staff's own yard lines", () => {
    expect(fieldZoneOf(7, { ...cuts, goal_line: 7 })).toBe('goal_line');
  });
});

describe('fieldZoneCodes', () => {
  it('codes each snap, and a blank ball position as not known', () => {
    const codes = fieldZoneCodes(filmFromRecords([{ ball_on: 15 }, {}]), cuts);
    expect(FIELD_ZONES[codes[0]!]?.id).toBe('red_zone');
    expect(codes[1]).toBe(NOT_KNOWN);
  });
});
