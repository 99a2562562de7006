import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { FAMILIES } from '../../../src/game/families.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { baseShares } from '../../../src/pressure/evidence/open-data.ts';
import { outcomePremiums, outcomeValues } from '../../../src/pressure/evidence/outcome-value.ts';
import { gradeGame } from '../../../src/pressure/review/grade.ts';
import { gradeSnaps } from '../../../src/pressure/review/grade-snap.ts';
import { OUTCOME_KINDS } from '../../../src/pressure/snap/outcome.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Nobody' }).situations;
const { scores } = inventedPlan();
const snap = (changes: SnapRecord): SnapRecord => ({
  down: 1,
  to_go: 10,
  play_kind: 'dropback',
  call: 'Rake',
  family: 'three_under',
  gain: 0,
  ...changes,
});
const gradesOf = (...records: SnapRecord[]) => gradeGame(filmFromRecords(records), scores, cuts);

describe('our snaps in points', () => {
  it('a sack saves what four rushers usually give up, less the value of a loss', () => {
    const [graded] = gradeSnaps(filmFromRecords([snap({ result: 'sack' })]), cuts);
    const [shares, values] = [baseShares('dropback'), outcomeValues('dropback', 1)];
    const usual = values.reduce((sum, value, kind) => sum + value * (shares[kind] ?? 0), 0);
    const premium = outcomePremiums('three_under', 'dropback')[0];
    expect(graded?.outcome).toBe('loss');
    expect(graded?.saved).toBeCloseTo(usual - (values[0] + premium), 9);
    expect(graded?.saved).toBeGreaterThan(0);
  });

  it('the base saves nothing on average, whatever the answer and down', () => {
    for (const answer of ANSWERS) {
      const [shares, values] = [baseShares(answer), outcomeValues(answer, 3)];
      const premiums = outcomePremiums('base', answer);
      const usual = values.reduce((sum, value, kind) => sum + value * (shares[kind] ?? 0), 0);
      const mean = OUTCOME_KINDS.reduce(
        (sum, _, kind) => sum + (shares[kind] ?? 0) * (usual - (values[kind] ?? 0) - (premiums[kind] ?? 0)),
        0,
      );
      expect(mean).toBeCloseTo(0, 9);
    }
  });

  it('a snap without family, answer, down or outcome is not graded, and is counted', () => {
    const lacking = [
      snap({ family: undefined as unknown as string }),
      snap({ play_kind: 'pass' }),
      snap({ result: 'penalty' }),
      { ...snap({}), down: Number.NaN },
    ];
    expect(gradesOf(...lacking, snap({}))).toMatchObject({ ungraded: 4, total: { snaps: 1 } });
  });
});

describe('grades', () => {
  it('expect of a call what Sunday said of it against the answer that came', () => {
    const [call] = gradesOf(snap({}), snap({ play_kind: 'screen' })).calls;
    const score = scores.calls.find((entry) => entry.call === 'Rake' && entry.situation === 'first_ten');
    const points = (answer: string) => score?.byAnswer.find((part) => part.answer === answer)?.points ?? Number.NaN;
    expect(call?.expected).toBeCloseTo((points('dropback') + points('screen')) / 2, 9);
  });

  it('expect nothing of the base and compare nothing under five snaps', () => {
    const { calls, families } = gradesOf(snap({ call: 'Steady', family: 'base' }));
    expect(calls[0]).toMatchObject({ name: 'Steady', snaps: 1, expected: 0, standing: 'too_few' });
    expect(families[0]).toMatchObject({ name: 'base', held: { count: 1, trials: 1 } });
  });

  it('ten sacks stand above the usual spread and ten explosives below', () => {
    expect(gradesOf(...Array(10).fill(snap({ result: 'sack' }))).calls[0]?.standing).toBe('above');
    expect(gradesOf(...Array(10).fill(snap({ gain: 40 }))).calls[0]?.standing).toBe('below');
  });

  it('points over expectation of the calls add up to those of the game', () => {
    const any = fc.record({
      down: fc.integer({ min: 1, max: 4 }),
      to_go: fc.integer({ min: 1, max: 12 }),
      play_kind: fc.constantFrom(...ANSWERS),
      gain: fc.integer({ min: -8, max: 40 }),
      call: fc.constantFrom('Rake', 'Torch', 'Steady', 'Unheard'),
      family: fc.constantFrom(...FAMILIES),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 20 }), (records) => {
        const { calls, families, total } = gradesOf(...records);
        for (const list of [calls, families]) {
          expect(list.reduce((sum, grade) => sum + grade.overExpectation, 0)).toBeCloseTo(total.overExpectation, 6);
          expect(list.reduce((sum, grade) => sum + grade.snaps, 0)).toBe(total.snaps);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('no snaps are graded as none', () => {
    expect(gradesOf()).toMatchObject({ ungraded: 0, calls: [], total: { snaps: 0, saved: 0, standing: 'too_few' } });
  });
});
