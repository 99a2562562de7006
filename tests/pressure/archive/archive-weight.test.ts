import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartFromRecords, type SnapRecord } from '../../../src/ingest/chart.ts';
import { weekSettingsSchema } from '../../../src/ingest/week-settings.ts';
import { archiveWeight, HELPS_FROM } from '../../../src/pressure/archive/archive-weight.ts';
import { styleDistance } from '../../../src/pressure/archive/style-distance.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Nobody' });
const snaps = (size: number, [offense, name, play_kind]: readonly [string, string, string]): SnapRecord[] =>
  Array(size).fill({ offense, game: name, play_kind });

describe('the archive’s weight', () => {
  const chart = chartFromRecords([...snaps(25, ['Us next', 'g1', 'run']), ...snaps(25, ['Us next', 'g2', 'run'])]);
  const archive = chartFromRecords([
    ...snaps(25, ['Far', 'f1', 'quick']),
    ...snaps(20, ['Near', 'n1', 'run']),
    ...snaps(20, ['Near', 'n2', 'quick']),
    ...snaps(5, ['Small', 's1', 'run']),
  ]);
  const weight = archiveWeight(chart, archive, settings);

  it('names the offenses with games and snaps, the most alike first, the unknown last', () => {
    expect(weight.offenses).toEqual([
      { offense: 'Near', games: 2, snaps: 40, style: 0.5 },
      { offense: 'Far', games: 1, snaps: 25, style: 1 },
      { offense: 'Small', games: 1, snaps: 5, style: null },
    ]);
    expect(weight).toMatchObject({ offenseGames: 4, snaps: 70, ownGames: 0 });
  });

  it.each([
    ['screen', 32],
    ['motion', 16],
    ['run_or_pass', 4],
    ['quick_release', 4],
  ] as const)('%s is helped from %i offense-games on (PREDICTION 5, table by size)', (target, games) => {
    expect(HELPS_FROM[target]).toBe(games);
  });

  it('says for each target whether it helps, and that an uncharted one has nothing', () => {
    const verdict = (target: string) => weight.uses.find((use) => use.target === target);
    expect(verdict('run_or_pass')).toMatchObject({ games: 4, verdict: 'helps' });
    expect(verdict('screen')).toMatchObject({ games: 4, verdict: 'held down' });
    expect(verdict('motion')).toMatchObject({ games: 0, verdict: 'nothing charted' });
    const many = Array.from({ length: 3 }, (_, i) => ({ offense: `o${i}`, game: 'g', protectors: 6 }));
    const charted = archiveWeight(chart, chartFromRecords(many), settings);
    expect(charted.uses.find((use) => use.target === 'protectors')?.verdict).toBe('not measured');
  });

  it('no archive is an answer of its own', () => {
    expect(archiveWeight(chart, null, settings)).toMatchObject({ offenses: [], offenseGames: 0, snaps: 0 });
  });

  it('one game of the opponent has no distance from itself', () => {
    expect(archiveWeight(chartFromRecords(snaps(25, ['Us next', 'g1', 'run'])), null, settings).ownGames).toBeNull();
  });
});

describe('distance in style', () => {
  const kind = fc.constantFrom('run', 'quick', 'dropback', 'screen');
  const film = fc
    .array(kind, { minLength: 20, maxLength: 40 })
    .map((kinds) =>
      chartFromRecords(kinds.map((play_kind, i) => ({ play_kind, motion: i % 3 === 0 ? 'fast' : 'none' }))),
    );
  it('is 0 to itself, the same both ways, and between 0 and 1', () => {
    fc.assert(
      fc.property(film, film, (one, other) => {
        expect(styleDistance(one, one, settings.situations)).toBeCloseTo(0, 12);
        const there = styleDistance(one, other, settings.situations) ?? -1;
        expect(there).toBeCloseTo(styleDistance(other, one, settings.situations) ?? -2, 12);
        expect(there).toBeGreaterThanOrEqual(0);
        expect(there).toBeLessThanOrEqual(1);
      }),
      { numRuns: 40 },
    );
  });
});
