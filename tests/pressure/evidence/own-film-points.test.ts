import { describe, expect, it } from 'vitest';
import type { CallLibrary } from '../../../src/game/call-library.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { leaguePoints } from '../../../src/pressure/evidence/league-points.ts';
import { OWN_FILM_PRIOR_SNAPS, ownFilmPoints } from '../../../src/pressure/evidence/own-film-points.ts';
import { snapPoints } from '../../../src/pressure/evidence/snap-points.ts';
import { inventedSettings } from '../invented-offense.ts';

const CUTS = inventedSettings().situations;
const read = (records: readonly SnapRecord[], library: CallLibrary | null = null) =>
  ownFilmPoints(filmFromRecords(records), library, CUTS);
const SACK: SnapRecord = {
  family: 'hot',
  play_kind: 'dropback',
  down: 3,
  to_go: 8,
  ball_on: 60,
  gain: -7,
  result: 'sack',
};
const times = (count: number, record: SnapRecord) => Array.from({ length: count }, () => record);

describe('our own film in points', () => {
  it('is one shift for all pressures, behind the prior', () => {
    const { saved } = snapPoints({ family: 'hot', answer: 'dropback', down: 3, outcome: 'loss' });
    const beyond = saved - leaguePoints('hot', 'dropback', { zone: 'open_field', distance: 'late_long' });
    const { shift, family } = read(times(100, SACK));
    expect(shift).toBeCloseTo((100 / (100 + OWN_FILM_PRIOR_SNAPS)) * beyond, 12);
    expect(family.hot).toBeCloseTo(0, 12);
    expect(family.zero).toBe(0);
  });

  it('measures pressures against our own base where there is one', () => {
    const good = { ...SACK, family: 'base' };
    const { saved } = snapPoints({ family: 'base', answer: 'dropback', down: 3, outcome: 'loss' });
    const alone = read(times(100, SACK)).shift;
    const both = read([...times(100, SACK), ...times(100, good)]).shift;
    expect(saved).toBeGreaterThan(0);
    expect(both).toBeLessThan(alone);
  });

  it('moves a family by little: its best of twenty sacks in twenty is worth less than a tenth of them', () => {
    const stops = times(60, { ...SACK, family: 'zero', gain: 2, result: 'complete' });
    const { family } = read([...times(20, SACK), ...stops]);
    const gap =
      snapPoints({ family: 'hot', answer: 'dropback', down: 3, outcome: 'loss' }).saved -
      snapPoints({ family: 'zero', answer: 'dropback', down: 3, outcome: 'stop' }).saved;
    expect(family.hot).toBeGreaterThan(0);
    expect(family.hot).toBeLessThan(gap / 10);
    expect(family.zero).toBeLessThan(0);
  });

  it('leaves a family without film as open as a prior of 500 snaps makes it', () => {
    const { familyError, shiftError } = ownFilmPoints(null, null, CUTS);
    const spread = Math.sqrt(snapPoints({ family: 'base', answer: 'dropback', down: 1, outcome: 'stop' }).variance);
    expect(familyError.hot).toBeCloseTo(spread / Math.sqrt(OWN_FILM_PRIOR_SNAPS), 12);
    expect(shiftError).toBeCloseTo(familyError.hot, 12);
    expect(familyError.base).toBe(0);
  });

  it('counts snaps and how they ended, and leaves out what cannot be read', () => {
    const { family: _, ...unnamed } = SACK;
    const penalty = { ...SACK, result: 'penalty' };
    const blank = { family: 'hot', down: 1, to_go: 10, gain: 3 };
    const { snaps, outcomes, unread } = read([unnamed, penalty, blank, SACK, SACK]);
    expect([snaps.hot, outcomes.hot.loss, unread]).toEqual([2, 2, 3]);
  });

  it('splits a bare pass over the pass answers, still as one snap', () => {
    expect(read([{ ...SACK, play_kind: 'pass', result: 'complete', gain: 5 }]).snaps.hot).toBe(1);
  });

  it('knows the family of a charted call from the library', () => {
    const { family: _, ...called } = { ...SACK, call: 'Torch' };
    const library = { calls: [{ name: 'Torch', family: 'zero' }] } as unknown as CallLibrary;
    expect(read([called]).unread).toBe(1);
    expect(read([called], library).snaps.zero).toBe(1);
  });
});
