import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { OUTCOME_KINDS, outcomeAt, outcomeOf, SUCCESS_SHARES } from '../../../src/pressure/snap/outcome.ts';

const CARROLL =
  'Carroll, Palmer and Thorn 1988: 40% of the distance on first down, 60% on second, all on third and fourth';
const TABLE_RULES =
  'open-data anchor table: takeaway, then loss, then explosive (pass 20, run 12), then gain, then stop';

describe('the success rule', () => {
  it.each([
    { down: 1, toGo: 10, gain: 4, kind: 'gain' },
    { down: 1, toGo: 10, gain: 3, kind: 'stop' },
    { down: 2, toGo: 10, gain: 6, kind: 'gain' },
    { down: 2, toGo: 10, gain: 5, kind: 'stop' },
    { down: 2, toGo: 5, gain: 3, kind: 'gain' },
    { down: 3, toGo: 4, gain: 4, kind: 'gain' },
    { down: 3, toGo: 4, gain: 3, kind: 'stop' },
    { down: 4, toGo: 1, gain: 1, kind: 'gain' },
    { down: 4, toGo: 1, gain: 0, kind: 'stop' },
  ])('$gain yards on down $down and $toGo is a $kind', ({ kind, ...snap }) => {
    expect(outcomeOf({ ...snap, playKind: 'run', result: 'rush' }), CARROLL).toBe(kind);
  });
});

describe('which rule decides first', () => {
  it.each([
    { snap: { gain: 30, result: 'interception' }, kind: 'takeaway' },
    { snap: { gain: -3, result: 'fumble_lost' }, kind: 'takeaway' },
    { snap: { result: 'sack' }, kind: 'loss' },
    { snap: { gain: -1, result: 'complete', playKind: 'screen' }, kind: 'loss' },
    { snap: { gain: 20, result: 'complete', playKind: 'dropback' }, kind: 'explosive' },
    { snap: { gain: 19, result: 'complete', playKind: 'dropback' }, kind: 'gain' },
    { snap: { gain: 12, result: 'rush', playKind: 'run' }, kind: 'explosive' },
    { snap: { gain: 12, result: 'scramble', playKind: 'dropback' }, kind: 'gain' },
    { snap: { gain: 20, result: 'complete', playKind: 'pass', down: 3, toGo: 25 }, kind: 'explosive' },
  ])('$snap is a $kind', ({ snap, kind }) => {
    expect(outcomeOf({ down: 1, toGo: 10, ...snap }), TABLE_RULES).toBe(kind);
  });
});

describe('what was not charted', () => {
  it('is no outcome on a penalty', () => {
    expect(outcomeOf({ down: 1, toGo: 10, gain: 5, result: 'penalty' })).toBeUndefined();
  });

  it('is not a gain of nothing, except on an incomplete or thrown-away pass', () => {
    expect(outcomeOf({ down: 1, toGo: 10, playKind: 'dropback', result: 'complete' })).toBeUndefined();
    expect(outcomeOf({ down: 1, toGo: 10, playKind: 'dropback', result: 'incomplete' })).toBe('stop');
    expect(outcomeOf({ down: 1, toGo: 10, result: 'throwaway' })).toBe('stop');
  });

  it('leaves success unknown without down or distance, but not a loss', () => {
    expect(outcomeOf({ gain: 5, result: 'rush' })).toBeUndefined();
    expect(outcomeOf({ gain: -2, result: 'rush' })).toBe('loss');
  });

  it('is read from a chart as from a snap', () => {
    const chart = filmFromRecords([{ down: 2, to_go: 5, gain: 3, play_kind: 'run', result: 'rush' }, { down: 2 }]);
    expect([outcomeAt(chart, 0), outcomeAt(chart, 1)]).toEqual(['gain', undefined]);
  });
});

it('never gets better for the defense as the gain grows', () => {
  const rank = ['loss', 'stop', 'gain', 'explosive'];
  const snap = fc.record({ down: fc.integer({ min: 1, max: 4 }), toGo: fc.integer({ min: 1, max: 20 }) });
  fc.assert(
    fc.property(snap, fc.integer({ min: -15, max: 60 }), fc.constantFrom('run', 'dropback'), (at, gain, playKind) => {
      const kinds = [gain, gain + 1].map((yards) => outcomeOf({ ...at, gain: yards, playKind, result: 'x' }) ?? '');
      expect(rank.indexOf(kinds[1] as string)).toBeGreaterThanOrEqual(rank.indexOf(kinds[0] as string));
    }),
  );
  expect(SUCCESS_SHARES).toHaveLength(4);
  expect(OUTCOME_KINDS).toHaveLength(5);
});
