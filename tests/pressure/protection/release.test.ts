import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { releaseCurve, releases } from '../../../src/pressure/protection/release.ts';

const settings = weekSettingsSchema.parse({ opponent: 'an invented offense' });
const dropback = (time?: number, result = 'complete'): SnapRecord => ({
  play_kind: 'dropback',
  result,
  ...(time === undefined ? {} : { time_to_throw: time }),
});
const dropbacks = (snaps: SnapRecord[], archive: SnapRecord[] | null = null, more = {}) => {
  const found = releases({
    chart: filmFromRecords(snaps),
    archive: archive && filmFromRecords(archive),
    settings: { ...settings, ...more },
  }).find(({ answer }) => answer === 'dropback');
  if (!found) throw new Error('no dropback');
  return found;
};
const many = (count: number, snap: SnapRecord) => Array.from({ length: count }, () => snap);

describe('releases', () => {
  it('is the published curve when nobody timed a throw', () => {
    const found = dropbacks(many(30, dropback()));
    expect(found.timedThrows).toBe(0);
    expect(found.fit.mu).toBeCloseTo(found.typical.mu, 12);
    expect(found.fit.muHigh).toBeCloseTo(found.typical.muHigh, 12);
    expect(found.othersTimed).toBe(0);
  });

  it('moves toward their own times as more are charted', () => {
    const few = Math.exp(dropbacks(many(5, dropback(3.6))).fit.mu);
    const lots = Math.exp(dropbacks(many(80, dropback(3.6))).fit.mu);
    const none = Math.exp(dropbacks([]).fit.mu);
    expect(none).toBeLessThan(few);
    expect(few).toBeLessThan(lots);
    expect(lots).toBeLessThan(3.6);
    expect(lots).toBeGreaterThan(3.3);
  });

  it('a sack counts as a ball held past the usual sack, in the proportion in which throws were timed', () => {
    const timed = many(10, dropback(2.4));
    const sacks = many(6, dropback(undefined, 'sack'));
    const without = dropbacks(timed).fit.mu;
    const withSacks = dropbacks([...timed, ...sacks]);
    expect(withSacks.fit.mu).toBeGreaterThan(without);
    expect(withSacks.sacks).toBe(6);
    const halfTimed = dropbacks([...timed, ...many(10, dropback()), ...sacks]).fit.mu;
    expect(halfTimed).toBeGreaterThan(without);
    expect(halfTimed).toBeLessThan(withSacks.fit.mu);
  });

  it('a time written beside a sack or a scramble is not taken for a release', () => {
    const found = dropbacks([...many(4, dropback(2.4)), dropback(5, 'sack'), dropback(6, 'scramble')]);
    expect(found.timedThrows).toBe(4);
  });

  it('the archive of other opponents moves the average opponent and, through it, the shrinking', () => {
    const archive = many(200, dropback(3.4));
    const found = dropbacks([], archive);
    expect(Math.exp(found.typical.mu)).toBeGreaterThan(3.2);
    expect(found.fit.mu).toBeCloseTo(found.typical.mu, 6);
    expect(found.othersTimed).toBe(200);
  });

  it('their speed moves them and leaves the average opponent alone', () => {
    const slow = dropbacks([], null, { their_speed: 'slow' });
    expect(slow.fit.mu - slow.typical.mu).toBeCloseTo(Math.log(1.08), 6);
  });

  it('draws a curve with bounds that hold its median', () => {
    const curve = releaseCurve(dropbacks(many(5, dropback(3))));
    expect(curve.low).toBeLessThan(curve.median);
    expect(curve.high).toBeGreaterThan(curve.median);
    expect(curve.timedThrows).toBe(5);
  });
});
