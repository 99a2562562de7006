import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { checkPassColumns } from '../../../src/ingest/pass-column-checks.ts';
import { describeProblem } from '../../../src/ingest/row-problem.ts';
import { TARGET_DEFINITIONS } from '../../../src/pressure/forecast/target.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const codesOf = (target: string, snaps: readonly SnapRecord[]) => {
  const definition = TARGET_DEFINITIONS.find((one) => one.target === target);
  return [...definition!.codes(filmFromRecords(snaps), cuts)];
};

/** Everything a charter may write of a pass, written on a snap of any kind. */
const WRITTEN: SnapRecord = {
  slide: 'left',
  strength: 'left',
  back_spot: 'strong',
  hash: 'right',
  protectors: 6,
  time_to_throw: 1.2,
  back_action: 'blocks',
};
const PASS_TARGETS = TARGET_DEFINITIONS.filter(({ per }) => per === 'pass').map(({ target }) => target);

describe('what is charted of passes', () => {
  it.each(PASS_TARGETS)('says nothing of %s on runs', (target) => {
    for (const play_kind of ['run', 'quarterback_run']) {
      expect(codesOf(target, [{ ...WRITTEN, play_kind }])).toEqual([NOT_KNOWN]);
    }
    expect(codesOf(target, [{ ...WRITTEN, play_kind: 'dropback' }])).not.toEqual([NOT_KNOWN]);
  });

  it.each(PASS_TARGETS)('counts for %s on a scramble and a sack, however their kind was charted', (target) => {
    for (const result of ['scramble', 'sack']) {
      for (const play_kind of ['run', 'quarterback_run', 'pass', 'scramble', undefined]) {
        expect(codesOf(target, [{ ...WRITTEN, play_kind, result } as SnapRecord])).not.toEqual([NOT_KNOWN]);
      }
    }
  });

  it('takes a scramble for a pass in every question at once', () => {
    for (const play_kind of ['run', 'quarterback_run', 'scramble', undefined]) {
      const snap = [{ play_kind, result: 'scramble' } as SnapRecord];
      expect(codesOf('run_or_pass', snap)).toEqual([1]);
      expect(codesOf('answer', snap)).toEqual([ANSWERS.indexOf('dropback')]);
      expect(codesOf('screen', snap)).toEqual([1]);
    }
  });

  it('is named once for each column when it stands on runs', () => {
    const run = { play_kind: 'run', slide: 'left', time_to_throw: 1.2 };
    const film = filmFromRecords([run, { play_kind: 'run' }, run, { ...WRITTEN, play_kind: 'pass' }], 'opponent.csv');
    const end =
      'runs; it says something on passes only, so these cells are left out. A scramble and a sack count as passes.';
    expect(checkPassColumns(film).map(describeProblem)).toEqual([
      `opponent.csv, "slide": is charted on 2 of 3 ${end}`,
      `opponent.csv, "time_to_throw": is charted on 2 of 3 ${end}`,
    ]);
  });
});
