import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { practiceScript } from '../../../src/pressure/practice/script.ts';
import type { ScriptInput } from '../../../src/pressure/practice/script-input.ts';
import { spreadEvenly } from '../../../src/pressure/practice/script-spread.ts';
import { shortageWords } from '../../../src/report/practice/shortage-words.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const film = filmFromRecords([
  { play_kind: 'run', receivers: '2x2', hash: 'left' },
  { play_kind: 'quick', receivers: '3x1', hash: 'left' },
  { play_kind: 'screen', receivers: '3x1', hash: 'right' },
  { play_kind: 'dropback', back_action: 'releases_wide', hash: 'middle' },
]);

function inputWith(reps: readonly number[]): ScriptInput {
  const plan = inventedPlan();
  const days = [
    {
      day: 'Tue',
      periods: reps.map((count, i) => ({ name: `period ${i + 1}`, minutes: 10, reps: count, contact: 'air' })),
    },
  ];
  const settings = weekSettingsSchema.parse({
    opponent: plan.opponent,
    practice: { days: reps.length === 0 ? [] : days },
  });
  if (plan.menu?.kind !== 'menu' || !plan.library) throw new Error('the invented plan has a menu');
  return { ...plan, chart: film, library: plan.library, menu: plan.menu, settings };
}

describe('the practice script', () => {
  const input = inputWith([40, 40, 40]);
  const script = practiceScript(input);
  const baseNames = input.library.calls.filter(({ family }) => family === 'base').map(({ name }) => name);

  it('fills the periods exactly, numbered from 1', () => {
    expect(script.reps.map(({ number }) => number)).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
    expect(shortageWords(script)).toEqual([]);
  });

  it('leaves no call of the menu unrepped and reps none that was dropped', () => {
    const repped = new Set(script.reps.map(({ call }) => call));
    expect([...repped].sort()).toEqual(input.menu.calls.map(({ call }) => call).sort());
    expect(repped.has('Torch Zero')).toBe(false);
  });

  it('shows the peel call a wide and an inside release, the add-on a screen and max protection', () => {
    const looksOf = (family: string) =>
      new Set(script.reps.filter((rep) => rep.family === family).map((rep) => rep.look));
    expect([...looksOf('peel')]).toEqual(expect.arrayContaining(['wide_release', 'inside_release']));
    expect([...looksOf('add_on')]).toEqual(expect.arrayContaining(['screen', 'max_protection']));
  });

  it('begins with the calls that are new this week', () => {
    const looks = script.calls.find(({ isNew }) => isNew)?.looks.length ?? 0;
    expect(looks).toBeGreaterThan(2);
    expect(script.reps.slice(0, looks).every(({ call }) => call === 'Afterburn')).toBe(true);
  });

  it('reps the call that is called most more often than it did by its upkeep alone', () => {
    const [most, second] = [...input.menu.calls].sort((a, b) => b.expectedCalls - a.expectedCalls);
    const only = (name: string | undefined) =>
      input.menu.calls.map((call) => ({ ...call, expectedCalls: call.call === name ? 20 : 1 }));
    const repsOf = (name: string | undefined) => {
      const made = practiceScript({ ...input, menu: { ...input.menu, calls: only(name) } });
      return new Map(made.calls.map(({ call, reps }) => [call, reps]));
    };
    const [a, b] = [most?.call ?? '', second?.call ?? ''];
    expect(repsOf(a).get(a)).toBeGreaterThan((repsOf(b).get(a) ?? 0) + 10);
    expect(repsOf(b).get(b)).toBeGreaterThan((repsOf(a).get(b) ?? 0) + 10);
  });

  it('gives every new call at least what the menu asks for', () => {
    for (const { isNew, reps, asked } of script.calls) if (isNew) expect(reps).toBeGreaterThanOrEqual(asked);
    expect(script.calls.some(({ isNew }) => isNew)).toBe(true);
  });

  it('leaves none of the menu unrepped and reps none that was dropped, whatever is dropped', () => {
    fc.assert(
      fc.property(
        fc.subarray([...input.menu.calls], { minLength: 1 }),
        fc.integer({ min: 40, max: 160 }),
        (calls, reps) => {
          const made = practiceScript({
            ...inputWith([Math.ceil(reps / 4), Math.ceil(reps / 4), Math.ceil(reps / 4), Math.ceil(reps / 4)]),
            menu: { ...input.menu, calls },
          });
          const carried = new Set([...calls.map(({ call }) => call), ...baseNames]);
          expect([...new Set(made.reps.map(({ call }) => call))].sort()).toEqual([...carried].sort());
        },
      ),
      { numRuns: 20 },
    );
  });

  it('reps the base calls too where the menu lists none: as often as they are called, in equal parts', () => {
    const pressures = input.menu.calls.filter(({ family }) => family !== 'base');
    const base = input.library.calls.filter(({ family }) => family === 'base');
    const twin = { ...base[0], name: 'Steady Twin' } as (typeof base)[number];
    const library = { ...input.library, calls: [...input.library.calls, twin] };
    const made = practiceScript({ ...input, library, menu: { ...input.menu, calls: pressures } });
    const repsOf = (name: string) => made.calls.find(({ call }) => call === name)?.reps ?? 0;
    const called = input.menu.situations.filter(({ id }) => id !== 'all');
    const snaps = called.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
    const baseShare = called.reduce((sum, one) => sum + one.expectedSnaps * one.baseShare, 0) / snaps;
    expect(baseShare).toBeGreaterThan(0.2);
    expect(Math.abs(repsOf('Steady') - repsOf('Steady Twin'))).toBeLessThanOrEqual(2);
    expect(repsOf('Steady') + repsOf('Steady Twin')).toBeGreaterThan(5);
    for (const { call, reps } of pressures) expect(repsOf(call)).toBeGreaterThanOrEqual(Math.min(reps, 2));
  });

  it('counts per call agree with the list, and every card is used', () => {
    for (const { call, reps, looks } of script.calls) {
      expect(script.reps.filter((rep) => rep.call === call).length).toBe(reps);
      for (const { look, reps: count } of looks)
        expect(script.reps.filter((rep) => rep.call === call && rep.look === look).length).toBe(count);
    }
    expect(new Set(script.reps.map(({ card }) => card))).toEqual(new Set(script.cards.map(({ number }) => number)));
  });

  it('places the ball as on film: half on the left hash here', () => {
    expect(script.reps.filter(({ hash }) => hash === 'left').length).toBe(60);
  });

  it('says what too few repetitions cannot hold, and serves every call first', () => {
    const few = practiceScript(inputWith([8]));
    expect(few.reps.length).toBe(8);
    expect(new Set(few.reps.map(({ call }) => call)).size).toBe(8);
    expect(shortageWords(few)[0]).toMatch(/The periods hold 8 repetitions, \d+ too few/);
    const none = practiceScript(inputWith([]));
    expect(none.reps).toEqual([]);
    expect(shortageWords(none).length).toBe(1 + input.menu.calls.length);
  });

  it('apportioned counts sum to the repetitions given, whatever the periods', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 6 }), (reps) => {
        const total = reps.reduce((sum, count) => sum + count, 0);
        const { reps: made, calls } = practiceScript(inputWith(reps));
        expect(made.length).toBe(total);
        expect(calls.reduce((sum, call) => sum + call.reps, 0)).toBe(total);
      }),
      { numRuns: 25 },
    );
  });
});

describe('an even spread', () => {
  it('keeps each word within one of its share at every point', () => {
    const weights = fc.tuple(
      fc.integer({ min: 0, max: 9 }),
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 0, max: 9 }),
    );
    fc.assert(
      fc.property(weights, fc.nat(60), ([a, b, c], size) => {
        const list = spreadEvenly(
          new Map([
            ['a', a],
            ['b', b],
            ['c', c],
          ]),
          size,
        );
        const expected = (a / (a + b + c)) * size;
        expect(Math.abs(list.filter((word) => word === 'a').length - expected)).toBeLessThanOrEqual(1 + 1e-9);
        expect(list.length).toBe(size);
      }),
      { numRuns: 100 },
    );
  });

  it('without any weight there is nothing to spread', () => {
    expect(spreadEvenly(new Map([['a', 0]]), 5)).toEqual([]);
  });
});
