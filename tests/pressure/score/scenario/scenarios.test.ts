import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../../src/game/film.ts';
import { ANSWERS, FAMILIES } from '../../../../src/game/vocabulary.ts';
import { disagreements } from '../../../../src/pressure/evidence/open-data-disagreement.ts';
import { scoreChapter } from '../../../../src/pressure/score/score-chapter.ts';
import { demoDefense } from '../../demo-defense.ts';
import { inventedRecords } from '../../invented-offense.ts';
import { type ExpectedScores, expectedScores, plainInput, racedInput } from '../expected-scores.ts';
import { SCENARIOS, type Scenario, scenarioChart } from './scenarios.ts';

const scored = new Map<string, { raced: ExpectedScores; plain: ExpectedScores }>();

/** A scenario's scores with the demo library's race and without one, worked out once. */
function scoresOf(scenario: Scenario) {
  const chart = scenarioChart(scenario);
  const scores = scored.get(scenario.id) ?? {
    raced: expectedScores(racedInput({ chart })),
    plain: expectedScores(plainInput({ chart })),
  };
  scored.set(scenario.id, scores);
  return scores;
}

const rows = SCENARIOS.flatMap((scenario) => scenario.expected.map((one) => ({ ...one, id: scenario.id, scenario })));

describe('what a coordinator expects of one kind of offense (common practice, no source)', () => {
  it.each(rows)('$id: $words', ({ scenario, holds }) => {
    const { raced, plain } = scoresOf(scenario);
    expect(holds(raced), JSON.stringify(raced)).toBe(true);
    expect(holds(plain), JSON.stringify(plain)).toBe(true);
  });

  it('the add-on is sent opposite the turn when they turn away from the back', () => {
    const scenario = SCENARIOS.find(({ id }) => id.startsWith('long yardage'));
    if (!scenario) throw new Error('no such scenario');
    const { chapter } = scoreChapter(racedInput({ chart: scenarioChart(scenario) }));
    const addOns = demoDefense.calls.filter(({ family }) => family === 'add_on');
    const ranked = chapter.calls
      .filter(({ situation, family }) => situation === 'all' && family === 'add_on')
      .sort((one, other) => other.points.mean - one.points.mean);
    expect(addOns.find(({ name }) => name === ranked[0]?.call)?.sent_from).toBe('back');
    const reasons = chapter.families.find(
      ({ family, situation }) => family === 'add_on' && situation === 'all',
    )?.reasons;
    expect(reasons?.some((words) => words.includes("add on the back's side, opposite the turn"))).toBe(true);
  });
});

describe('a quick-game team of which nothing but the answers is odd', () => {
  // The trade has the add-on last here. Open data (quick throws in 2.0 s, professional, 2022-23, CC BY-SA 4.0) have
  // three-under give up more quick throws than any pressure: 61% of 429 succeed, 55% of 2580 against four, 45% of 69
  // against seven. Both go into the scores, so three-under may come out last; the page must say so.
  const chart = filmFromRecords(
    inventedRecords({
      answers: { run: 30, quarterback_run: 5, screen: 25, quick: 30, dropback: 7, deep_shot: 1, movement: 2 },
    }),
  );

  it('has add-on and three-under as the two last pressures, and both behind the base', () => {
    const scores = expectedScores(plainInput({ chart }));
    const order = FAMILIES.filter((family) => family !== 'base').sort((a, b) => scores[b] - scores[a]);
    expect(new Set(order.slice(-2))).toEqual(new Set(['add_on', 'three_under']));
    expect(Math.max(scores.add_on, scores.three_under)).toBeLessThan(0);
  });

  it('says on the page that trade and open data part ways there', () => {
    const shares = Float64Array.from(ANSWERS, (answer) => (answer === 'quick' ? 0.3 : 0.1));
    const said = disagreements({ families: ['three_under', 'add_on'], shares });
    expect(said.some((words) => words.includes('61% of 429') && words.includes('45% of 69'))).toBe(true);
  });
});
