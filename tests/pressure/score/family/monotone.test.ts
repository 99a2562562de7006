import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import { ANSWERS, type Answer, FAMILIES, type Family } from '../../../../src/game/vocabulary.ts';
import type { ForecastChapter } from '../../../../src/pressure/forecast/forecast-result.ts';
import type { ScoreInput } from '../../../../src/pressure/score/family/family-score-model.ts';
import { PASS_ANSWERS } from '../../../../src/pressure/snap/pass-answer.ts';
import { countedForecast, type InventedOffense, inventedRecords, inventedSettings } from '../../invented-offense.ts';
import { inventedCalls, raced, raceLine } from '../../protection/invented-race.ts';
import { type ExpectedScores, expectedScores, racedInput } from '../expected-scores.ts';

/*
 * The list of things that may never move a family the wrong way, over random offenses: random mixes, weights of the
 * evidence, film of our own and races. Common practice, no source.
 */

const weight = fc.integer({ min: 1, max: 60 });
const mixOf = (...words: string[]) =>
  fc.tuple(...words.map(() => weight)).map((drawn) => Object.fromEntries(words.map((word, i) => [word, drawn[i]])));
const offenses = fc.record({
  answers: mixOf(...ANSWERS),
  receivers: mixOf('2x2', '3x1', '3x2', '2x1'),
  backAction: mixOf('blocks', 'check_releases', 'releases_wide', 'releases_inside', 'none'),
  protectors: mixOf('5', '6', '7'),
  targetZone: mixOf('flat', 'deep_middle', 'middle', 'outside'),
  scrambles: fc.double({ min: 0, max: 0.5, noNaN: true }),
  snaps: fc.constant(120),
}) as fc.Arbitrary<InventedOffense>;

const named: Record<string, Family> = Object.fromEntries(FAMILIES.map((family) => [`one ${family}`, family]));
const chance = fc.double({ min: 0, max: 1, noNaN: true });
const worlds = fc.record({
  judgement: fc.integer({ min: 0, max: 40 }),
  open: fc.double({ min: 0, max: 2, noNaN: true }),
  ownSnaps: fc.array(
    fc.record({
      family: fc.constantFrom(...FAMILIES),
      play_kind: fc.constantFrom(...ANSWERS),
      result: fc.constantFrom('sack', 'complete', 'incomplete', 'interception'),
      gain: fc.integer({ min: -8, max: 45 }),
    }),
    { maxLength: 60 },
  ),
  races: fc.array(fc.tuple(chance, chance), {
    minLength: FAMILIES.length * PASS_ANSWERS.length,
    maxLength: FAMILIES.length * PASS_ANSWERS.length,
  }),
});
type World = typeof worlds extends fc.Arbitrary<infer W> ? W : never;

interface Season {
  readonly records: readonly SnapRecord[];
  readonly world: World;
  readonly moved?: (forecast: ForecastChapter) => ForecastChapter;
}

function scoresOf({ records, world, moved = (same) => same }: Season): ExpectedScores {
  const chart = filmFromRecords(records);
  const settings = inventedSettings({
    weights: { judgement_snaps: world.judgement, open_data: world.open, own_film: 1 },
  });
  const lines = Object.keys(named).flatMap((call, f) =>
    PASS_ANSWERS.map((answer, a) => raceLine(call, answer, world.races[f * PASS_ANSWERS.length + a] as number[])),
  );
  const own = world.ownSnaps.map((snap) => ({ ...snap, down: 1, to_go: 10, ball_on: 60 }));
  const input: ScoreInput = {
    chart,
    ownFilm: filmFromRecords(own),
    library: inventedCalls(named),
    settings,
    forecast: moved(countedForecast(chart, settings)),
    protection: raced(lines),
    seed: 1,
  };
  return expectedScores(input);
}

/** The same forecast with a part of every other answer's mass given to some answers. */
function moreOf(answers: readonly Answer[], part: number) {
  return (forecast: ForecastChapter): ForecastChapter => ({
    ...forecast,
    forecasts: forecast.forecasts.map((entry) => {
      if (entry.target !== 'answer') return entry;
      const wanted = (name: string) => (answers as readonly string[]).includes(name);
      const taken = entry.classes.reduce((sum, { name, alpha }) => sum + (wanted(name) ? 0 : part * alpha), 0);
      const classes = entry.classes.map((one) => ({
        ...one,
        alpha: wanted(one.name) ? one.alpha + taken / answers.length : (1 - part) * one.alpha,
      }));
      return { ...entry, classes };
    }),
  });
}

/** Every `step`th snap on which a column was charted gets another word there. */
function rewritten(records: readonly SnapRecord[], step: number, change: Partial<SnapRecord>): SnapRecord[] {
  const columns = Object.keys(change) as (keyof SnapRecord)[];
  return records.map((record, i) => {
    if (i % step !== 0 || columns.some((column) => record[column] === undefined)) return record;
    return { ...record, ...change } as SnapRecord;
  });
}

const steps = fc.integer({ min: 1, max: 6 });
const parts = fc.double({ min: 0.05, max: 0.8, noNaN: true });
const TOLERANCE = 1e-9;
const RUNS = { numRuns: 20, endOnFailure: true };

describe('over random offenses', () => {
  it.each(['screen', 'quick'] as const)('more of the %s game never helps the add-on', (answer) => {
    fc.assert(
      fc.property(offenses, worlds, parts, (offense, world, part) => {
        const records = inventedRecords(offense);
        // Taken from everything that is neither a screen nor quick game.
        const kept = answer === 'screen' ? 'quick' : 'screen';
        const moved = (forecast: ForecastChapter) => keeping(kept, forecast, moreOf([answer], part)(forecast));
        const more = scoresOf({ records, world, moved }).add_on;
        expect(more).toBeLessThanOrEqual(scoresOf({ records, world }).add_on + TOLERANCE);
      }),
      RUNS,
    );
  });

  it('more wide releases never help zero against peel', () => {
    fc.assert(
      fc.property(offenses, worlds, steps, (offense, world, step) => {
        const records = inventedRecords(offense);
        const lead = ({ zero, peel }: ExpectedScores) => zero - peel;
        const more = scoresOf({ records: rewritten(records, step, { back_action: 'releases_wide' }), world });
        expect(lead(more)).toBeLessThanOrEqual(lead(scoresOf({ records, world })) + TOLERANCE);
      }),
      RUNS,
    );
  });

  it('more held balls with the back in never hurt the add-on', () => {
    fc.assert(
      fc.property(offenses, worlds, fc.tuple(steps, parts), (offense, world, [step, part]) => {
        const records = inventedRecords(offense);
        const more = scoresOf({
          records: rewritten(records, step, { back_action: 'blocks' }),
          world,
          moved: moreOf(['dropback', 'deep_shot'], part),
        });
        // Film of our own may put the add-on below the base everywhere: more of its best answer still never hurts.
        expect(more.add_on).toBeGreaterThanOrEqual(scoresOf({ records, world }).add_on - TOLERANCE);
      }),
      RUNS,
    );
  });

  it('more flat throws and balanced sets never help three-under against four-under', () => {
    fc.assert(
      fc.property(offenses, worlds, steps, (offense, world, step) => {
        const records = inventedRecords(offense);
        const lead = ({ three_under, four_under }: ExpectedScores) => three_under - four_under;
        const flat = rewritten(records, step, { target_zone: 'flat' });
        const more = scoresOf({ records: rewritten(flat, step, { receivers: '2x2' }), world });
        expect(lead(more)).toBeLessThanOrEqual(lead(scoresOf({ records, world })) + TOLERANCE);
      }),
      RUNS,
    );
  });

  it('more trips never help four-under against three-under', () => {
    fc.assert(
      fc.property(offenses, worlds, steps, (offense, world, step) => {
        const records = inventedRecords(offense);
        const lead = ({ three_under, four_under }: ExpectedScores) => four_under - three_under;
        const more = scoresOf({ records: rewritten(records, step, { receivers: '3x1' }), world });
        expect(lead(more)).toBeLessThanOrEqual(lead(scoresOf({ records, world })) + TOLERANCE);
      }),
      RUNS,
    );
  });

  it.each(['zero', 'man_free'] as const)('more quarterback run never helps %s against peel with a spy', (family) => {
    fc.assert(
      fc.property(offenses, worlds, parts, (offense, world, part) => {
        const records = inventedRecords(offense);
        const lead = (scores: ExpectedScores) => scores[family] - scores.peel_spy;
        const more = scoresOf({ records, world, moved: moreOf(['quarterback_run'], part) });
        expect(lead(more)).toBeLessThanOrEqual(lead(scoresOf({ records, world })) + TOLERANCE);
      }),
      RUNS,
    );
  });
});

describe('over random offenses raced with the demo library', () => {
  const few = { numRuns: 4, endOnFailure: true };
  const scores = (records: readonly SnapRecord[]) =>
    expectedScores(racedInput({ chart: filmFromRecords(records), settings: inventedSettings() }));

  it('more wide releases never help zero against peel, though the man who takes the back does not rush', () => {
    fc.assert(
      fc.property(offenses, steps, (offense, step) => {
        const records = inventedRecords(offense);
        const lead = ({ zero, peel }: ExpectedScores) => zero - peel;
        const more = rewritten(records, step, { back_action: 'releases_wide' });
        expect(lead(scores(more))).toBeLessThanOrEqual(lead(scores(records)) + TOLERANCE);
      }),
      few,
    );
  });

  it('more backs kept in on held balls never hurt the add-on', () => {
    fc.assert(
      fc.property(offenses, steps, (offense, step) => {
        const records = inventedRecords(offense);
        // A sixth man in; who already keeps seven keeps them.
        const more = rewritten(records, step, { back_action: 'blocks' }).map((record, i) =>
          i % step === 0 && record.protectors === 5 ? { ...record, protectors: 6 } : record,
        );
        expect(scores(more).add_on).toBeGreaterThanOrEqual(scores(records).add_on - TOLERANCE);
      }),
      few,
    );
  });
});

/** A forecast in which one answer keeps the mass it had before. */
function keeping(answer: Answer, before: ForecastChapter, after: ForecastChapter): ForecastChapter {
  const forecasts = after.forecasts.map((entry, i) => {
    const had = before.forecasts[i]?.classes.find(({ name }) => name === answer);
    if (entry.target !== 'answer' || !had) return entry;
    const lost = had.alpha - (entry.classes.find(({ name }) => name === answer)?.alpha ?? 0);
    const total = entry.classes.reduce((sum, { alpha }) => sum + alpha, 0);
    // What it lost went to the answer that gained; giving it back keeps the sum.
    const gained = entry.classes.reduce(
      (most, one, k) => {
        const grew = one.alpha - (before.forecasts[i]?.classes[k]?.alpha ?? 0);
        return grew > most.grew ? { name: one.name, grew } : most;
      },
      { name: '', grew: 0 },
    );
    if (total === 0) return entry;
    const classes = entry.classes.map((one) => {
      if (one.name === answer) return { ...one, alpha: had.alpha };
      return one.name === gained.name ? { ...one, alpha: one.alpha - lost } : one;
    });
    return { ...entry, classes };
  });
  return { ...after, forecasts };
}
