import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastWeek } from '../../../src/pressure/forecast/week/forecast.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Cinder Vale', snaps: 60 });

const snapsOf = (kinds: readonly string[]): SnapRecord[] =>
  kinds.map((play_kind, i) => ({ game: 'w01', snap: i + 1, down: 1 + (i % 3), to_go: 10, play_kind }) as SnapRecord);

function overall(kinds: readonly string[], archive: readonly string[] | null = null) {
  const { forecasts } = forecastWeek({
    chart: filmFromRecords(snapsOf(kinds)),
    archive: archive && filmFromRecords(snapsOf(archive).map((snap) => ({ ...snap, offense: 'Elm Park' }))),
    settings,
  });
  const of = (target: string) => forecasts.find((cell) => cell.target === target && cell.situation === 'all')!;
  const shareOf = (target: string, name: string) => of(target).classes.find((part) => part.name === name)!.share;
  return { answer: of('answer'), shareOf };
}

const times = (count: number, kind: string) => new Array<string>(count).fill(kind);

describe('answers of a film that charts passes only as passes', () => {
  it('do not say that they only run: run or pass has its say', () => {
    const { answer, shareOf } = overall([...times(60, 'run'), ...times(80, 'pass')]);
    const runs = shareOf('answer', 'run') + shareOf('answer', 'quarterback_run');
    expect(runs).toBeCloseTo(shareOf('run_or_pass', 'run'), 9);
    expect(Math.abs(runs - 60 / 140)).toBeLessThan(0.03);
    expect(shareOf('answer', 'run')).toBeGreaterThan(20 * shareOf('answer', 'quarterback_run'));
    expect(answer.ownSnaps).toBe(0);
    expect(answer.mostlyFrom).toBe('nothing');
  });

  it('keep run or pass wherever some passes hide what they are, whatever the film', () => {
    const kind = fc.constantFrom('run', 'quarterback_run', 'pass', 'quick', 'screen', 'dropback');
    fc.assert(
      fc.property(fc.array(kind, { minLength: 1, maxLength: 60 }), fc.option(fc.array(kind)), (kinds, archive) => {
        fc.pre(kinds.includes('pass'));
        const { answer, shareOf } = overall(kinds, archive);
        const runs = shareOf('answer', 'run') + shareOf('answer', 'quarterback_run');
        expect(runs).toBeCloseTo(shareOf('run_or_pass', 'run'), 9);
        expect(answer.classes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('leave a film alone that tells every pass', () => {
    const { answer } = overall([...times(60, 'run'), ...times(50, 'quick'), ...times(30, 'dropback')]);
    expect(answer.ownSnaps).toBe(140);
    expect(answer.classes.map(({ film }) => film.count)).toEqual([60, 0, 0, 50, 30, 0, 0]);
  });
});
