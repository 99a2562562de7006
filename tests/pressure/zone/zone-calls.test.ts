import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { zoneCalls } from '../../../src/pressure/zone/zone-calls.ts';
import { inventedPlan } from '../../report/invented-plan.ts';
import { countedForecast } from '../invented-offense.ts';

const { library, menu, settings } = inventedPlan();
const cuts = settings.situations;
const at = (ball_on: number, play_kind: string, more: SnapRecord = {}): SnapRecord => ({
  down: 1,
  to_go: 10,
  ball_on,
  play_kind,
  ...more,
});
/** Runs in the open field, screens inside the 20, nothing backed up. */
const chart = filmFromRecords([
  ...Array(60).fill(at(60, 'run', { personnel: '11', receivers: '2x2' })),
  ...Array(24).fill(at(15, 'screen', { personnel: '11', receivers: '3x1', back_action: 'releases_wide' })),
]);
const forecast = { ...inventedPlan().forecast, ...countedForecast(chart) };
const zones = zoneCalls({ chart, forecast, cuts, library, menu });
const netOf = (zone: string, family: string) =>
  zones.find((one) => one.zone === zone)?.calls.find((call) => call.family === family)?.net.mean ?? Number.NaN;

describe('the calls by field zone', () => {
  it('count the snaps of each zone, and say nothing where there are none', () => {
    expect(zones.map(({ zone, snaps }) => [zone, snaps])).toEqual([
      ['backed_up', 0],
      ['open_field', 60],
      ['red_zone', 24],
      ['goal_line', 0],
    ]);
    expect(zones[0]?.calls).toEqual([]);
  });

  it('judge a call by what they do in that zone: six rushers against screens are wrong inside the 20 alone', () => {
    // By the rules of fit: hot is right on runs from one back and one tight end, wrong on screens.
    expect(netOf('open_field', 'hot')).toBeGreaterThan(0.5);
    expect(netOf('red_zone', 'hot')).toBeLessThan(-0.4);
    const hot = zones.find(({ zone }) => zone === 'red_zone')?.calls.find(({ family }) => family === 'hot');
    expect(hot?.does).toBe('out');
  });

  it('list the carried pressures, best fit first, and never the base', () => {
    const names =
      menu?.kind === 'menu' ? menu.calls.filter(({ family }) => family !== 'base').map(({ call }) => call) : [];
    for (const { calls } of zones.filter(({ snaps }) => snaps > 0)) {
      expect(calls.map(({ call }) => call).sort()).toEqual([...names].sort());
      expect(calls.map(({ net }) => net.mean)).toEqual(calls.map(({ net }) => net.mean).sort((a, b) => b - a));
    }
  });

  it('are empty without calls or without a menu', () => {
    expect(zoneCalls({ chart, forecast, cuts, library: null, menu })).toEqual([]);
    expect(zoneCalls({ chart, forecast, cuts, library, menu: null })).toEqual([]);
  });
});
