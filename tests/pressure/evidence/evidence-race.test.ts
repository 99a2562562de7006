import { describe, expect, it } from 'vitest';
import {
  edgeIn,
  LOSSES_PER_RUSHER_HOME,
  pointsPerLoss,
  raceEdge,
} from '../../../src/pressure/evidence/evidence-race.ts';
import { baseShares } from '../../../src/pressure/evidence/open-data.ts';
import { outcomeValues } from '../../../src/pressure/evidence/outcome-value.ts';
import { inventedCalls, raced, raceLine } from '../protection/invented-race.ts';

describe('the race of a family', () => {
  const library = inventedCalls({ Stay: 'base', Ember: 'hot', Kiln: 'hot', Forge: 'zero' });
  const race = [
    raceLine('Stay', 'dropback', [0.3, 0.25]),
    raceLine('Ember', 'dropback', [0.6, 0.5]),
    raceLine('Kiln', 'dropback', [0.5, 0.3]),
  ];
  const edge = raceEdge(library, raced(race));

  it("is its calls' mean beyond the average opponent, less the base's", () => {
    expect(edge.families.hot.dropback).toBeCloseTo(0.15 - 0.05, 12);
    expect(edge.home.hot.dropback).toBeCloseTo(0.55, 12);
  });

  it('is nothing where nothing was raced, and the base is measured against itself', () => {
    expect(edge.home.zero.dropback).toBeNull();
    expect(edge.families.base.dropback).toBe(0);
    expect(Object.values(raceEdge(null, raced(race)).families.hot).every((value) => value === 0)).toBe(true);
    expect([edge.baseRaced, raceEdge(null, raced(race)).baseRaced]).toEqual([true, false]);
  });

  it("sets each call against its family's mean", () => {
    expect(edge.calls.get('Ember')?.dropback).toBeCloseTo(0.05, 12);
    expect(edge.calls.get('Kiln')?.dropback).toBeCloseTo(-0.05, 12);
    expect(Object.values(edge.calls.get('Forge') ?? { dropback: 1 }).every((value) => value === 0)).toBe(true);
  });
});

describe('the race by situation', () => {
  const library = inventedCalls({ Stay: 'base', Ember: 'hot', Kiln: 'hot' });
  const onThird = (line: ReturnType<typeof raceLine>, home: number) => ({
    ...line,
    bySituation: [{ situation: 'third_long', home }],
  });
  const edge = raceEdge(
    library,
    raced([
      onThird(raceLine('Stay', 'dropback', [0.3, 0.25]), 0.35),
      onThird(raceLine('Ember', 'dropback', [0.6, 0.5]), 0.8),
      onThird(raceLine('Kiln', 'dropback', [0.5, 0.3]), 0.6),
    ]),
  );

  it('is measured against the average opponent over all passes, less the base there', () => {
    expect(edgeIn(edge, 'third_long').families.hot.dropback).toBeCloseTo(0.3 - 0.1, 12);
    expect(edgeIn(edge, 'third_long').calls.get('Ember')?.dropback).toBeCloseTo(0.1, 12);
  });

  it('is that over all passes where the situation was not told apart', () => {
    expect(edgeIn(edge, 'first_ten')).toBe(edge);
  });
});

describe('what a rusher at home is worth', () => {
  it('is a loss as often as pressured pros were sacked: 18 to 20%, open data 2019-23', () => {
    const shares = [
      [0.057, 0.275],
      [0.085, 0.363],
      [0.097, 0.467],
    ].map(([sack, pressured]) => (sack ?? 0) / ((sack ?? 0) + (1 - (sack ?? 0)) * (pressured ?? 0)));
    expect(LOSSES_PER_RUSHER_HOME).toBeGreaterThan(Math.min(...shares));
    expect(LOSSES_PER_RUSHER_HOME).toBeLessThan(Math.max(...shares));
  });

  it('is dearer on third down than on first', () => {
    const worth = (down: number) => pointsPerLoss(baseShares('dropback'), outcomeValues('dropback', down));
    expect(worth(1)).toBeGreaterThan(0.9);
    expect(worth(3)).toBeGreaterThan(worth(1));
  });
});
