import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../../src/game/week-settings.ts';
import { backtest, type ReplayedGame } from '../../../../src/pressure/forecast/backtest/backtest.ts';
import { backtestFilm } from '../../../../src/pressure/forecast/backtest/backtest-film.ts';
import type { WindowRule } from '../../../../src/pressure/forecast/backtest/backtest-window.ts';
import { FORECAST_METHODS } from '../../../../src/pressure/forecast/backtest/forecast-methods.ts';
import { TARGETS } from '../../../../src/pressure/forecast/forecast-result.ts';
import { TARGET_DEFINITIONS } from '../../../../src/pressure/forecast/target.ts';
import { type InventedOffense, inventedFilm } from './invented-film.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const rule: WindowRule = { trainOn: 4, archive: 'others' };
const four: readonly InventedOffense[] = [
  { name: 'Cinder Vale', games: 6, snaps: 30, runs: 0.6 },
  { name: 'Ash Grove', games: 5, snaps: 30, runs: 0.4 },
  { name: 'Birch Hill', games: 3, snaps: 30, runs: 0.5 },
  { name: 'Dunmore', games: 1, snaps: 30, runs: 0.5 },
];

const filmOf = (records: readonly SnapRecord[], seasons?: readonly number[]) =>
  backtestFilm(filmFromRecords(records), cuts, seasons);

/** Every share every method forecasts of a game, in one list. */
function forecastsOf(records: readonly SnapRecord[], game: string): string[] {
  const told: string[] = [];
  const onGame = (replayed: ReplayedGame) => {
    if (replayed.game.game !== game) return;
    for (const [id, predict] of replayed.forecasts) {
      const shares = replayed.game.rows.map((row) => Array.from(predict(row), (share) => share.toFixed(12)).join(' '));
      told.push(`${replayed.definition.target} ${id}: ${shares.join('; ')}`);
    }
  };
  const offenses = new Set([game.replace(/ week .*/, '')]);
  backtest({ film: filmOf(records), rule: { ...rule, offenses }, onGame });
  return told;
}

describe('backtest', () => {
  it('forecasts the fifth game on, and each game of an offense with fewer, from its others', () => {
    const result = backtest({ film: filmOf(inventedFilm(four)), rule });
    expect(result).toMatchObject({ offenses: 3, games: 2 + 1 + 3, leftOneOut: 3, singleGames: 1, withArchive: 6 });
    expect(result.snaps).toBe(6 * 30);
  });

  it('judges every target by every method', () => {
    const { targets } = backtest({ film: filmOf(inventedFilm(four)), rule });
    expect(targets.map(({ target }) => target)).toEqual([...TARGETS]);
    for (const { methods } of targets)
      expect(methods.map(({ id }) => id)).toEqual(FORECAST_METHODS.map(({ id }) => id));
  });

  it('forecasts nothing differently when the outcomes of the game itself are charted wrong', () => {
    const records = inventedFilm(four);
    const planted = fc.record<SnapRecord>({
      play_kind: fc.constantFrom('run', 'screen', 'pass', 'quick', 'deep_shot', 'scramble'),
      result: fc.constantFrom('sack', 'complete', 'rush', 'scramble'),
      time_to_throw: fc.constantFrom(1, 4),
      motion: fc.constantFrom('none', 'across'),
      protectors: fc.constantFrom(5, 7),
      slide: fc.constantFrom('left', 'right', 'man'),
      back_action: fc.constantFrom('blocks', 'releases_wide'),
    });
    for (const game of ['Cinder Vale week 5', 'Birch Hill week 1']) {
      const before = forecastsOf(records, game);
      expect(before.length).toBe(TARGETS.length * FORECAST_METHODS.length);
      fc.assert(
        fc.property(planted, (wrong) => {
          const changed = records.map((record) => (record['game'] === game ? { ...record, ...wrong } : record));
          const after = forecastsOf(changed, game);
          // Where the planted words leave nothing to score (no pass, a man slide) the game is not forecast at all.
          expect(before).toEqual(expect.arrayContaining(after));
          expect(after.length).toBeGreaterThan(0);
        }),
        { numRuns: 5 },
      );
    }
  });

  it('reads no other game by a word that only the game left out uses', () => {
    const bare = inventedFilm(four).map((record) =>
      record['play_kind'] === 'screen' ? { ...record, play_kind: 'pass' } : record,
    );
    const game = 'Cinder Vale week 6';
    const once = bare.map((record, i) =>
      record['game'] === game && i % 4 === 0 ? { ...record, play_kind: 'screen' } : record,
    );
    const screens = forecastsOf(once, game).filter((line) => line.startsWith('screen own_rate'));
    const known = bare.filter(
      (record) =>
        record['offense'] === 'Cinder Vale' &&
        [2, 3, 4, 5].includes(Number(record['week'])) &&
        ['quick', 'dropback'].includes(String(record['play_kind'])),
    );
    expect(screens[0]).toContain(`: ${(1 / (known.length + 2)).toFixed(12)} `);
  });

  it('forecasts nothing differently when later games of the offense are charted otherwise', () => {
    const records = inventedFilm(four);
    const turned = records.map((record) =>
      record['game'] === 'Cinder Vale week 6' ? { ...record, play_kind: 'run', motion: 'none' } : record,
    );
    expect(forecastsOf(turned, 'Cinder Vale week 5')).toEqual(forecastsOf(records, 'Cinder Vale week 5'));
  });

  it('gives relabeled scores for relabeled classes', () => {
    const records = inventedFilm(four);
    const original = TARGET_DEFINITIONS.find(({ target }) => target === 'protectors')!;
    const turn = (code: number) => (code === 255 ? 255 : (code + 1) % 3);
    const turned = {
      ...original,
      codes: (...input: Parameters<typeof original.codes>) => original.codes(...input).map(turn),
    };
    const [before, after] = [original, turned].map(
      (definition) => backtest({ film: filmOf(records), rule, targets: [definition] }).targets[0]!,
    );
    before!.methods.forEach((method, i) => {
      expect(after!.methods[i]!.logLoss).toBeCloseTo(method.logLoss, 9);
      expect(after!.methods[i]!.brier).toBeCloseTo(method.brier, 9);
    });
  });

  it('says on how many snaps nobody charted the question, and scores none of them', () => {
    const records = inventedFilm(four).map(({ motion, ...record }, i) =>
      i % 2 === 0 ? { ...record, motion } : record,
    ) as SnapRecord[];
    const { targets } = backtest({ film: filmOf(records), rule });
    const motion = targets.find(({ target }) => target === 'motion')!;
    expect([motion.snaps, motion.notCharted]).toEqual([90, 90]);
    expect(motion.methods.every(({ snaps }) => snaps === 90)).toBe(true);
    const bare = records.map(({ protectors: _, ...record }) => record);
    const protectors = backtest({ film: filmOf(bare), rule }).targets.find(({ target }) => target === 'protectors')!;
    const runs = bare.filter((record) => record['play_kind'] === 'run');
    expect(protectors).toMatchObject({ snaps: 0, games: 0, methods: [] });
    expect(protectors.notCharted).toBeLessThanOrEqual(180);
    expect(protectors.notCharted).toBeGreaterThan(180 - runs.length);
  });

  it('has no archive method without an archive', () => {
    const { targets, withArchive } = backtest({ film: filmOf(inventedFilm(four.slice(0, 1))), rule });
    expect(withArchive).toBe(0);
    const ids = targets[0]!.methods.map(({ id }) => id);
    expect(ids).toEqual(FORECAST_METHODS.map(({ id }) => id).filter((id) => !id.includes('archive')));
  });

  it('takes its archive from earlier seasons only when asked to', () => {
    const chart = filmFromRecords(inventedFilm(four));
    const half = Uint16Array.from({ length: chart.size }, (_, i) => (i < 180 ? 1 : 0));
    const two = { ...chart, sources: ['this year', 'last year'], sourceOf: half };
    const film = backtestFilm(two, cuts, [1, 2]);
    const kinds = backtest({ film, rule: { ...rule, archive: 'earlier_seasons' } });
    expect(kinds).toMatchObject({ games: 6, withArchive: 2 });
  });

  it('judges a sample that its seed alone decides', () => {
    const film = filmOf(inventedFilm(four));
    const judge = (seed: number) => backtest({ film, rule, sample: { games: 3, seed } });
    expect(judge(4).games).toBe(3);
    expect(judge(4)).toEqual(judge(4));
    const losses = [1, 2, 3, 4, 5].map((seed) => judge(seed).targets[0]!.methods[0]!.logLoss);
    expect(new Set(losses).size).toBeGreaterThan(1);
  });

  it('judges only the offenses asked for and keeps the others as archive', () => {
    const result = backtest({ film: filmOf(inventedFilm(four)), rule: { ...rule, offenses: new Set(['Birch Hill']) } });
    expect(result).toMatchObject({ offenses: 1, games: 3, withArchive: 3, singleGames: 0 });
  });

  it('answers film of a single game, and none', () => {
    const single = backtest({ film: filmOf(inventedFilm(four.slice(3))), rule });
    expect(single).toMatchObject({ games: 0, singleGames: 1 });
    expect(single.targets.every(({ methods }) => methods.length === 0)).toBe(true);
    expect(backtest({ film: filmOf([]), rule }).games).toBe(0);
  });

  it('tells how far it is', () => {
    const steps: string[] = [];
    backtest({ film: filmOf(inventedFilm(four)), rule, onProgress: (done, total) => steps.push(`${done}/${total}`) });
    expect(steps).toHaveLength(60);
    expect(steps.at(-1)).toBe('60/60');
  });
});
