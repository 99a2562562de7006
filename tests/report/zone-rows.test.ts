import { describe, expect, it } from 'vitest';
import type { ZoneCalls } from '../../src/pressure/zone/zone-result.ts';
import { zoneRows } from '../../src/report/sheet/zone-rows.ts';
import { inventedPlan } from './invented-plan.ts';

const net = { mean: 0, low: 0, high: 0 };
const zone = (snaps: number, calls: ZoneCalls['calls']): ZoneCalls => ({ zone: 'red_zone', snaps, calls });

function redZone(found: ZoneCalls): string {
  const rows = zoneRows(inventedPlan({ zones: [found] }));
  return rows.find(({ label }) => label === 'Red zone')?.words ?? '';
}

describe('the field-zone rows of the call sheet', () => {
  const calls: ZoneCalls['calls'] = [
    { call: 'Rake', family: 'three_under', net, does: 'best' },
    { call: 'Torch', family: 'hot', net, does: 'carry' },
    { call: 'Latch', family: 'man_free', net, does: 'out' },
  ];

  it('name what fits there with the side to send it from, and what to leave out', () => {
    expect(redZone(zone(24, calls))).toMatch(/^Rake ▸ .+\. Leave out Latch\.$/);
  });

  it('are a lean under 20 snaps, and say so with the count', () => {
    expect(redZone(zone(8, calls))).toMatch(/^A lean \(8 snaps\): Rake ▸ /);
  });

  it('say base where no pressure fits, and by down where there is no film', () => {
    expect(redZone(zone(24, calls.slice(1, 2)))).toBe('base; no pressure fits there.');
    expect(redZone(zone(0, []))).toBe('No film of them there: call by down and distance.');
  });

  it('name the calls of the long-yardage rows for two minute', () => {
    const words = zoneRows(inventedPlan()).find(({ label }) => label === 'Two minute')?.words;
    expect(words).toMatch(/ ▸ .+: rows of 2nd and long, 3rd and long\./);
  });
});
