import { afterEach, expect, it } from 'vitest';
import { localDay } from '../../src/season/local-day.ts';

const zone = process.env['TZ'];
afterEach(() => {
  if (zone === undefined) delete process.env['TZ'];
  else process.env['TZ'] = zone;
});

it.each([
  ['America/Chicago', '2026-10-16'],
  ['Pacific/Honolulu', '2026-10-16'],
  ['UTC', '2026-10-17'],
])('is the day in %s, also late on a Friday night', (place, day) => {
  process.env['TZ'] = place;
  expect(localDay(new Date('2026-10-17T03:30:00Z'))).toBe(day);
});
