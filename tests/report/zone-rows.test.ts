import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import type { ZoneCalls } from '../../src/pressure/zone/zone-result.ts';
import { mixMatrix } from '../../src/report/first/mix-matrix.ts';
import { scoringZoneRows, zoneRows } from '../../src/report/view/zone-rows.ts';
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
    expect(redZone(zone(24, calls.slice(1, 2)))).toBe('Base; no pressure fits there.');
    expect(redZone(zone(0, []))).toBe('No film of them there: call by down and distance.');
  });

  it('stand on the first screen near their goal line, where film shows them there', () => {
    const named = (plan: WeekPlan) => scoringZoneRows(plan).map(({ label }) => label);
    const goalLine: ZoneCalls = { ...zone(9, calls), zone: 'goal_line' };
    const backedUp: ZoneCalls = { ...zone(9, calls), zone: 'backed_up' };
    expect(named(inventedPlan({ zones: [backedUp, zone(24, calls), goalLine] }))).toEqual(['Red zone', 'Goal line']);
    expect(named(inventedPlan({ zones: [zone(0, []), goalLine] }))).toEqual(['Goal line']);
    const plan = inventedPlan({ zones: [zone(24, calls)] });
    if (plan.menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const row = parse(mixMatrix(plan, plan.menu).text).querySelector('tr.zone');
    expect(row?.text).toMatch(/^Red zoneRake ▸ .+\. Leave out Latch\./);
  });

  it('name the calls of the long-yardage rows for two minute', () => {
    const words = zoneRows(inventedPlan()).find(({ label }) => label === 'Two minute')?.words;
    expect(words).toMatch(/ ▸ .+: rows of 2nd and long, 3rd and long\./);
  });
});
