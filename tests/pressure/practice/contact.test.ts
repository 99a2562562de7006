import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CONTACT_LEVELS, type PracticeDay, weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { contactLoad } from '../../../src/pressure/practice/contact.ts';
import { CONTACT_CAUTIONS } from '../../../src/report/practice/contact-caution.ts';
import { breachWords } from '../../../src/report/practice/contact-words.ts';

const limits = weekSettingsSchema.parse({ opponent: 'Nobody' }).practice.contact_limits;
type Contact = PracticeDay['periods'][number]['contact'];
const day = (name: PracticeDay['day'], ...periods: readonly (readonly [number, Contact])[]): PracticeDay => ({
  day: name,
  periods: periods.map(([minutes, contact], i) => ({ name: `period ${i + 1}`, minutes, reps: 10, contact })),
});

describe('full contact of the week', () => {
  it.each([
    { limit: 'minutes_per_day', value: 30, source: 'NFHS 2014 as reported: not over 30 minutes a day' },
    { limit: 'minutes_per_week', value: 60, source: 'NFHS 2014 as reported: 60 to 90 minutes a week, the lower' },
    { limit: 'days_per_week', value: 3, source: 'NFHS 2014 as reported: 2 to 3 practices a week' },
  ] as const)('the default of $limit is the published $value ($source)', ({ limit, value }) => {
    expect(limits[limit]).toBe(value);
  });

  it('keeps within the published guidance: 30 minutes on two days apart', () => {
    const load = contactLoad([day('Tue', [30, 'thud']), day('Thu', [10, 'live'], [20, 'thud'])], limits);
    expect(load).toMatchObject({ weekMinutes: 60, contactDays: 2, longestRun: 1, breaches: [] });
  });

  it('names the day that passes the daily limit by one minute', () => {
    const { breaches } = contactLoad([day('Tue', [16, 'thud'], [15, 'live']), day('Thu', [10, 'air'])], limits);
    expect(breaches).toMatchObject([{ limit: 'minutes_per_day', days: ['Tue'], found: 31, allowed: 30 }]);
    expect(breachWords(breaches[0]!)).toContain('Tue: 31 minutes of full contact');
  });

  it('names every day of a week with too many minutes', () => {
    const practice = [day('Mon', [21, 'thud']), day('Wed', [20, 'thud']), day('Fri', [20, 'live'])];
    expect(contactLoad(practice, limits).breaches).toMatchObject([
      { limit: 'minutes_per_week', days: ['Mon', 'Wed', 'Fri'], found: 61 },
    ]);
  });

  it('forbids days in a row, also from Sunday to Monday', () => {
    expect(contactLoad([day('Tue', [5, 'thud']), day('Wed', [5, 'thud'])], limits).breaches).toMatchObject([
      { limit: 'consecutive_days', days: ['Tue', 'Wed'] },
    ]);
    expect(contactLoad([day('Mon', [5, 'thud']), day('Sun', [5, 'thud'])], limits).breaches).toMatchObject([
      { limit: 'consecutive_days', days: ['Sun', 'Mon'] },
    ]);
    const twice = { ...limits, consecutive_days: 2 };
    expect(contactLoad([day('Tue', [5, 'thud']), day('Wed', [5, 'thud'])], twice).breaches).toEqual([]);
  });

  it('counts four days as one too many', () => {
    const practice = (['Mon', 'Wed', 'Fri'] as const).map((name) => day(name, [5, 'thud']));
    expect(contactLoad(practice, { ...limits, days_per_week: 2 }).breaches).toMatchObject([
      { limit: 'days_per_week', found: 3, allowed: 2 },
    ]);
  });

  it('adds a day named twice into one', () => {
    const { breaches } = contactLoad([day('Tue', [20, 'thud']), day('Tue', [20, 'live'])], limits);
    expect(breaches).toMatchObject([{ limit: 'minutes_per_day', found: 40 }]);
  });

  it('an empty week has no contact', () => {
    expect(contactLoad([], limits)).toEqual({
      days: [],
      weekMinutes: 0,
      contactDays: 0,
      longestRun: 0,
      breaches: [],
    });
  });

  it('air, bags and control never count, thud and live always do', () => {
    const contact = fc.constantFrom(...CONTACT_LEVELS);
    const periods = fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), contact), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(periods, (list) => {
        const full = list.filter(([, level]) => level === 'thud' || level === 'live');
        const minutes = full.reduce((sum, [n]) => sum + n, 0);
        const load = contactLoad([day('Wed', ...list)], limits);
        expect(load.weekMinutes).toBe(minutes);
        expect(load.breaches.some(({ limit }) => limit === 'minutes_per_day')).toBe(minutes > 30);
      }),
      { numRuns: 60 },
    );
  });

  it('every caution names its source', () => {
    expect(CONTACT_CAUTIONS.filter(({ source }) => source.trim() === '')).toEqual([]);
    expect(CONTACT_CAUTIONS.map(({ topic }) => topic)).toEqual(['Full contact', 'Heat', 'Head', 'Pressure drills']);
  });
});
