import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';
import { situationCodes, situationOf } from '../../../src/pressure/snap/situation.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

describe('situationOf', () => {
  const source = 'common practice, no source: short 1-3, medium 4-6, long 7 and up on 2nd, 3rd and 4th';
  it.each([
    { down: 1, toGo: 10, yardsToGoal: 75, id: 'first_ten', source },
    { down: 1, toGo: 15, yardsToGoal: 75, id: 'first_long', source },
    { down: 1, toGo: 5, yardsToGoal: 75, id: 'first_short', source },
    { down: 1, toGo: 10, yardsToGoal: 10, id: 'first_goal', source },
    { down: 1, toGo: 4, yardsToGoal: 4, id: 'first_goal', source },
    { down: 1, toGo: 10, yardsToGoal: undefined, id: 'first_ten', source },
    { down: 2, toGo: 3, yardsToGoal: 3, id: 'second_short', source },
    { down: 2, toGo: 4, yardsToGoal: 60, id: 'second_medium', source },
    { down: 3, toGo: 6, yardsToGoal: 60, id: 'third_medium', source },
    { down: 3, toGo: 7, yardsToGoal: 60, id: 'third_long', source },
    { down: 4, toGo: 1, yardsToGoal: 60, id: 'fourth_short', source },
    { down: 4, toGo: 30, yardsToGoal: 60, id: 'fourth_long', source },
  ])('down $down, $toGo to go, $yardsToGoal to the goal is $id', ({ id, source: _, ...snap }) => {
    expect(situationOf(snap, cuts)).toBe(id);
  });

  it("follows the staff's own cut-offs", () => {
    const wider = { ...cuts, third: { short: 2, medium: 8 } };
    expect(situationOf({ down: 3, toGo: 3 }, wider)).toBe('third_medium');
    expect(situationOf({ down: 3, toGo: 8 }, wider)).toBe('third_medium');
    expect(situationOf({ down: 2, toGo: 8 }, wider)).toBe('second_long');
  });
});

describe('situationCodes', () => {
  it('codes each snap, and a blank down or distance as not known', () => {
    const chart = filmFromRecords([{ down: 3, to_go: 9, ball_on: 40 }, { down: 3 }, { to_go: 9 }, {}]);
    const codes = situationCodes(chart, cuts);
    expect(SITUATIONS[codes[0]!]?.id).toBe('third_long');
    expect([...codes.slice(1)]).toEqual([NOT_KNOWN, NOT_KNOWN, NOT_KNOWN]);
  });

  it('is empty for an empty chart', () => {
    expect(situationCodes(filmFromRecords([]), cuts)).toHaveLength(0);
  });
});
