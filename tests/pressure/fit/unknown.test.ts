import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../../src/game/families.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { fitChapter } from '../../../src/pressure/fit/fit-chapter.ts';
import { demoDefense } from '../demo-defense.ts';
import { chartedMore, countedForecast, inventedRecords, inventedSettings } from '../invented-offense.ts';

const settings = inventedSettings();
const full = chartedMore(inventedRecords(), {
  motion: { none: 80, fast: 20 },
  tempo: { huddle: 100 },
  checked: { no: 100 },
  optionTag: { none: 100 },
  concept: { stick: 80, mesh: 20 },
  formation: { doubles: 95, bunch: 5 },
  held: 0.5,
});

function chapterOf(records: readonly SnapRecord[]) {
  const chart = filmFromRecords(records);
  const forecast = countedForecast(chart, settings);
  return fitChapter({ chart, forecast, library: null, cuts: settings.situations, pressured: { factors: [] }, seed: 1 });
}

const familyIn = (chapter: ReturnType<typeof chapterOf>, name: string) => {
  const found = chapter.families.find(({ family, situation }) => family === name && situation === 'all');
  if (!found) throw new Error(name);
  return found;
};

const without = (column: keyof SnapRecord, keep: (i: number) => boolean = () => false) =>
  full.map((record, i) => (keep(i) ? record : { ...record, [column]: undefined }));

describe('what was not charted', () => {
  const whole = chapterOf(full);

  it('leaves nothing unknown where every column is charted, and the shares are plain counts of snaps', () => {
    for (const family of FAMILIES) expect(familyIn(whole, family).unknown).toBeCloseTo(0, 12);
    const isRight = ({ back_action, time_to_throw, result, protectors, receivers }: SnapRecord) =>
      (back_action === 'blocks' || protectors === 7) &&
      (result === 'scramble' ? false : Number(time_to_throw) >= 2.8) &&
      back_action !== 'releases_wide' &&
      back_action !== 'releases_inside' &&
      back_action !== 'none' &&
      receivers !== '3x2';
    const held = full.filter((record) => ['dropback', 'deep_shot', 'movement'].includes(String(record.play_kind)));
    expect(familyIn(whole, 'add_on').right.mean).toBeCloseTo(held.filter(isRight).length / full.length, 10);
  });

  it('is unknown and neither right nor wrong: a film without the back says of the add-on what it knows', () => {
    const chapter = chapterOf(without('back_action'));
    const blind = familyIn(chapter, 'add_on');
    const seen = familyIn(whole, 'add_on');
    expect(blind.unknown).toBeGreaterThan(0.05);
    expect(blind.right.mean).toBeLessThan(seen.right.mean);
    expect(blind.wrong.mean).toBeLessThan(seen.wrong.mean);
    expect(chapter.charting.map(({ column }) => column)).toContain('back_action');
  });

  it.each(['back_action', 'receivers', 'time_to_throw', 'target_zone', 'personnel'] as const)(
    'widens the interval of every family that asks for %s',
    (column) => {
      const blind = chapterOf(without(column));
      const asks = FAMILIES.filter((family) => familyIn(blind, family).unknown > 1e-9);
      expect(asks.length).toBeGreaterThan(0);
      for (const family of asks) {
        const [before, after] = [familyIn(whole, family).net, familyIn(blind, family).net];
        expect(after.high - after.low).toBeGreaterThan(before.high - before.low);
      }
    },
  );

  it('fills single blanks from their other snaps: two in three charted say nearly what all would', () => {
    const partly = familyIn(chapterOf(without('back_action', (i) => i % 3 !== 0)), 'add_on');
    const seen = familyIn(whole, 'add_on');
    expect(Math.abs(partly.net.mean - seen.net.mean)).toBeLessThan(0.05);
    expect(partly.unknown).toBeLessThan(0.05);
  });

  it('names the column that is worth charting, and no column where all are charted', () => {
    expect(whole.charting).toEqual([]);
    const [first] = chapterOf(without('receivers')).charting;
    expect(first?.column).toBe('receivers');
    expect(first?.chanceChoiceChanges).toBeGreaterThan(0);
  });

  it('says nothing of an offense without film', () => {
    for (const { right, wrong, unknown } of chapterOf([]).families)
      expect({ right, wrong, unknown }).toEqual({
        right: { mean: 0, low: 0, high: 1 },
        wrong: { mean: 0, low: 0, high: 1 },
        unknown: 1,
      });
  });
});

describe('answers to a rush', () => {
  const factor = { by: 'rushers', group: 'six_or_more', target: 'pass_answer', name: 'screen', factor: 2 } as const;
  const chart = filmFromRecords(full);
  const given = {
    chart,
    forecast: countedForecast(chart, settings),
    library: null,
    cuts: settings.situations,
    seed: 1,
  };
  const plain = fitChapter({ ...given, pressured: { factors: [] } });
  const screened = fitChapter({ ...given, pressured: { factors: [factor] } });

  it('move the six-man families alone: more screens against six make the add-on wrong more often', () => {
    for (const { family, net } of plain.families.filter(({ situation }) => situation === 'all')) {
      const after = familyIn(screened, family).net.mean;
      if (['base', 'three_under', 'four_under', 'man_free'].includes(family)) expect(after).toBeCloseTo(net.mean, 12);
    }
    const [before, after] = [familyIn(plain, 'add_on'), familyIn(screened, 'add_on')];
    expect(after.wrong.mean).toBeGreaterThan(before.wrong.mean);
    const screens = (of: typeof before) => of.rules.find(({ rule }) => rule === 'add_on_screen')?.share as number;
    expect(screens(after)).toBeGreaterThan(1.5 * screens(before));
  });
});

describe('break-evens', () => {
  it('turn where right and wrong are level: the share of trips at which four-under and three-under are as right', () => {
    const { breakEvens } = chapterOf(full);
    const found = breakEvens.find(({ family, situation }) => family === 'four_under' && situation === 'all');
    expect(found?.against).toBe('three_under');
    expect(found?.rightBelow).toBe(true);
    expect(found?.shown.mean).toBeCloseTo(full.filter(({ receivers }) => receivers === '3x1').length / full.length, 10);
    const turn = found?.turnsAt as number;
    const rest = full.filter(({ receivers }) => receivers !== '3x1');
    const trips = full.filter(({ receivers }) => receivers === '3x1');
    const mixed = (share: number) => {
      const size = 1000;
      const take = (from: readonly SnapRecord[], n: number) =>
        Array.from({ length: n }, (_, i) => from[i % from.length] as SnapRecord);
      const n = Math.round(share * size);
      const chapter = chapterOf([...take(trips, n), ...take(rest, size - n)]);
      return familyIn(chapter, 'four_under').net.mean - familyIn(chapter, 'three_under').net.mean;
    };
    expect(mixed(turn - 0.1)).toBeGreaterThan(0);
    expect(mixed(turn + 0.1)).toBeLessThan(0);
  });
});

describe('adjustments', () => {
  const library = demoDefense;
  const chart = filmFromRecords(full);
  const chapter = fitChapter({
    chart,
    forecast: countedForecast(chart, settings),
    library,
    cuts: settings.situations,
    pressured: { factors: [] },
    seed: 1,
  });
  const looks = new Map(chapter.adjustments.map((one) => [one.look, one]));

  it('count a look over the snaps on which it was charted', () => {
    const trips = full.filter(({ receivers }) => receivers === '3x1').length;
    expect(looks.get('trips')).toMatchObject({ count: trips, trials: full.length });
    expect(looks.get('fast_tempo')).toMatchObject({ count: 0, trials: full.length, calls: [] });
  });

  it('take the four-under calls off against trips and leave the three-under calls on', () => {
    const familyOf = new Map(library.calls.map(({ name, family }) => [name, family]));
    for (const { call, does } of looks.get('trips')?.calls ?? []) {
      const family = familyOf.get(call);
      if (family === 'four_under') expect(does).not.toBe('stays');
      if (family === 'three_under') expect(does).toBe('stays');
    }
  });

  it('swap only to another call of the same path that is not wrong there', () => {
    const pathOf = new Map(library.calls.map(({ name, path }) => [name, path]));
    const swaps = chapter.adjustments.flatMap(({ calls }) =>
      calls.flatMap((one) =>
        one.swapTo === null ? [] : [{ ...one, to: calls.find(({ call }) => call === one.swapTo) }],
      ),
    );
    expect(swaps.length).toBeGreaterThan(0);
    for (const { call, swapTo, to, does } of swaps) {
      expect(does).toBe('swaps');
      expect(pathOf.get(swapTo ?? '')).toBe(pathOf.get(call));
      expect(to?.net).toBeGreaterThanOrEqual(0);
    }
  });

  it('count what a call gives up on purpose as wrong for that call alone', () => {
    const [first] = library.calls.filter(({ family }) => family === 'three_under');
    if (!first) throw new Error('no three-under call');
    const holed = {
      ...library,
      calls: library.calls.map((call) => (call === first ? { ...call, given: ['trips' as const] } : call)),
    };
    const { calls } = fitChapter({
      chart,
      forecast: countedForecast(chart, settings),
      library: holed,
      cuts: settings.situations,
      pressured: { factors: [] },
      seed: 1,
    });
    const all = calls.filter(({ family, situation }) => family === 'three_under' && situation === 'all');
    const [holedNet] = all.filter(({ call }) => call === first.name).map(({ net }) => net.mean);
    for (const { call, net } of all) if (call !== first.name) expect(net.mean).toBeGreaterThan(holedNet as number);
  });
});
