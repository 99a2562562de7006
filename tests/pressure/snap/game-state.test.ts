import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { GAME_STATES, gameStateCodes, gameStateOf } from '../../../src/pressure/snap/game-state.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

describe('gameStateOf', () => {
  const source = 'the seven-state partition measured on open professional play data, 2022 and 2023';
  it.each([
    { quarter: 1, clock: 60, margin: -20, yardsToGoal: 50, state: 'normal', source },
    { quarter: 1, clock: 60, margin: 0, yardsToGoal: 3, state: 'at_the_goal', source },
    { quarter: 2, clock: 121, margin: 21, yardsToGoal: 50, state: 'normal', source },
    { quarter: 2, clock: 120, margin: 21, yardsToGoal: 50, state: 'two_minute', source },
    { quarter: 3, clock: 600, margin: 17, yardsToGoal: 50, state: 'well_ahead', source },
    { quarter: 3, clock: 600, margin: -17, yardsToGoal: 50, state: 'far_behind', source },
    { quarter: 3, clock: 600, margin: 16, yardsToGoal: 50, state: 'normal', source },
    { quarter: 4, clock: 600, margin: 9, yardsToGoal: 50, state: 'well_ahead', source },
    { quarter: 4, clock: 600, margin: -9, yardsToGoal: 50, state: 'chasing', source },
    { quarter: 4, clock: 300, margin: -1, yardsToGoal: 50, state: 'chasing', source },
    { quarter: 4, clock: 300, margin: 1, yardsToGoal: 50, state: 'holding_lead', source },
    { quarter: 4, clock: 100, margin: 0, yardsToGoal: 50, state: 'two_minute', source },
    { quarter: 4, clock: 301, margin: -8, yardsToGoal: 50, state: 'normal', source },
  ])('quarter $quarter, $clock s, margin $margin, $yardsToGoal out is $state', ({ state, source: _, ...snap }) => {
    expect(gameStateOf(snap)).toBe(state);
  });

  it('is not told without the score or clock it depends on', () => {
    expect(gameStateOf({ quarter: 4, clock: 100 })).toBeUndefined();
    expect(gameStateOf({ quarter: 4, margin: 3 })).toBeUndefined();
    expect(gameStateOf({ quarter: 3, clock: 100 })).toBeUndefined();
    expect(gameStateOf({ quarter: 2, margin: 3 })).toBeUndefined();
    expect(gameStateOf({ clock: 100, margin: 3 })).toBeUndefined();
  });
});

describe('gameStateCodes', () => {
  it('codes each snap, and one that cannot be told as not known', () => {
    const codes = gameStateCodes(filmFromRecords([{ quarter: 4, clock: 250, score_margin: 4 }, { quarter: 4 }]));
    expect(GAME_STATES[codes[0]!]?.id).toBe('holding_lead');
    expect(codes[1]).toBe(NOT_KNOWN);
  });
});
