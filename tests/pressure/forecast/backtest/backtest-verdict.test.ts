import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../../src/game/week-settings.ts';
import { backtestVerdict } from '../../../../src/pressure/forecast/backtest/backtest-verdict.ts';
import { fitTarget, forecastFilm } from '../../../../src/pressure/forecast/forecast-film.ts';
import type { BacktestTarget } from '../../../../src/pressure/forecast/forecast-result.ts';
import { TARGET_DEFINITIONS } from '../../../../src/pressure/forecast/target.ts';
import { forecastWeek } from '../../../../src/pressure/forecast/week/forecast.ts';
import { backtestWords } from '../../../../src/report/words/backtest-words.ts';
import { inventedFilm } from './invented-film.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

function judge(records: readonly SnapRecord[], archive: readonly SnapRecord[] | null = null) {
  const chart = filmFromRecords(records);
  const film = forecastFilm(chart, archive === null ? null : filmFromRecords(archive), cuts);
  const fitted = TARGET_DEFINITIONS.map((definition) => fitTarget(film, definition, 'plan'));
  return backtestVerdict({ film, chart, cuts, fitted });
}

const own = (games: number) => inventedFilm([{ name: 'Cinder Vale', games, snaps: 30, runs: 0.6 }]);
const archive = inventedFilm([{ name: 'Ash Grove', games: 6, snaps: 60, runs: 0.6 }], 'archive');

const target = (over: Partial<BacktestTarget>): BacktestTarget => ({
  target: 'answer',
  games: 4,
  snaps: 240,
  model: 1.2,
  plainRate: 1.3,
  downAndDistance: 1.3,
  rawCell: 1.3,
  gamesWon: 3,
  difference: -0.1,
  standardError: 0.05,
  ...over,
});

describe('backtestVerdict', () => {
  it('judges every charted target on each of four games', () => {
    const verdict = judge(own(4), archive)!;
    expect(verdict.targets).toHaveLength(TARGET_DEFINITIONS.length);
    expect(verdict.targets.every(({ games }) => games === 4)).toBe(true);
    expect(verdict.targets.find(({ target }) => target === 'run_or_pass')!.snaps).toBe(120);
    expect(backtestWords(verdict.targets)).toContain('four games prove little');
  });

  it('scores a forecast that knows nothing at ln 2: a game unlike all others, by the plain rate', () => {
    // One run and one pass seen, with one of each added: 2 of 4; log loss of one half is ln 2 (Good 1952).
    const snap = (game: string, play_kind: string): SnapRecord => ({ game, down: 1, to_go: 10, play_kind });
    const verdict = judge([snap('a', 'run'), snap('b', 'run'), snap('b', 'quick')])!;
    const rate = verdict.targets.find(({ target }) => target === 'run_or_pass')!;
    // Game a from game b: 1/2 on its run. Game b from game a: 2/3 on its run, 1/3 on its pass.
    expect(rate.plainRate).toBeCloseTo((Math.LN2 + (-Math.log(2 / 3) - Math.log(1 / 3)) / 2) / 2, 12);
    expect(rate.standardError).toBeNull();
  });

  it('says nothing of a single game, of no game, and of film without outcomes', () => {
    expect(judge(own(1), archive)).toBeNull();
    expect(judge([])).toBeNull();
    expect(
      judge([
        { game: 'a', down: 1, to_go: 10 },
        { game: 'b', down: 1, to_go: 10 },
      ]),
    ).toBeNull();
  });

  it('forecasts the fifth game on from those before it where there are so many', () => {
    expect(judge(own(7))!.targets[0]!.games).toBe(3);
  });

  it('is in the chapter of the week', () => {
    const settings = weekSettingsSchema.parse({ opponent: 'Cinder Vale' });
    const week = (games: number) => forecastWeek({ chart: filmFromRecords(own(games)), archive: null, settings });
    expect(week(2).backtest?.targets[0]?.games).toBe(2);
    expect(week(1).backtest).toBeNull();
  });
});

describe('backtestWords', () => {
  it('says in one sentence that the forecast did well', () => {
    expect(backtestWords([target({})])).toBe(
      'On their own film, each game forecast from the others, the forecast of what they do with the ball beat the plain rate in 3 of 4 games; four games prove little.',
    );
  });

  it('says as plainly that it did badly, and what the forecast leans on then', () => {
    expect(backtestWords([target({ gamesWon: 1, difference: 0.02 })])).toContain(
      'beat the plain rate in 1 of 4 games and lost overall: down and distance tell little about them, so the forecast already leans',
    );
  });

  it('takes no side when games and losses disagree', () => {
    const mixed = [
      { gamesWon: 3, difference: 0.02 },
      { gamesWon: 2, difference: -0.02 },
    ];
    for (const over of mixed) expect(backtestWords([target(over)])).toContain('was no better overall');
  });

  it('speaks of run or pass where answers were not charted, and of any question where neither was', () => {
    expect(backtestWords([target({ target: 'motion' }), target({ target: 'run_or_pass' })])).toContain('run or pass');
    expect(backtestWords([target({ target: 'motion' })])).toContain('the one question charted');
    expect(backtestWords([])).toBe('');
  });

  it('never calls few games proof', () => {
    expect(backtestWords([target({ games: 1, gamesWon: 1 })])).toContain('1 of 1 game; one game proves little');
    expect(backtestWords([target({ games: 12, gamesWon: 11 })])).toContain('a fair trial, not proof');
  });
});
