import { describe, expect, it } from 'vitest';
import { ANSWERS, FAMILIES } from '../../../src/game/vocabulary.ts';
import { LOSSES_PER_RUSHER_HOME } from '../../../src/pressure/evidence/evidence-race.ts';
import { callScores } from '../../../src/pressure/score/call-score.ts';
import { inventedCalls, raced, raceLine } from '../protection/invented-race.ts';
import { inventedWeek } from './invented-week.ts';

const library = inventedCalls({ Stay: 'base', Ember: 'hot', Kiln: 'hot', Forge: 'zero', Twin: 'zero' });
const protection = raced([
  raceLine('Stay', 'dropback', [0.3, 0.3]),
  raceLine('Ember', 'dropback', [0.6, 0.5]),
  raceLine('Kiln', 'dropback', [0.4, 0.5]),
  raceLine('Forge', 'dropback', [0.5, 0.5]),
  raceLine('Twin', 'dropback', [0.5, 0.5]),
]);
const { week, model } = inventedWeek({}, { library, protection });
const drawn = callScores(week.all, library.calls, model);
const scoreOf = (name: string) => {
  const found = drawn.find(({ score }) => score.call === name);
  if (!found) throw new Error(`no score of ${name}`);
  return found.score;
};
const dropback = ANSWERS.indexOf('dropback');

describe('the score of a call', () => {
  it("is its family's moved by its own race: losses per rusher home, times what a loss saves, times dropbacks", () => {
    const family = week.all.points[FAMILIES.indexOf('hot')]?.reduce((sum, value) => sum + value, 0) ?? 0;
    const mean = family / (week.all.points[0]?.length ?? 1);
    // Ember is home a tenth more often than the mean of its family (0.6 against 0.5).
    const moved =
      10 * 0.1 * LOSSES_PER_RUSHER_HOME * (week.all.perLoss[dropback] ?? 0) * (week.all.shares[dropback] ?? 0);
    expect(scoreOf('Ember').points.mean - mean).toBeCloseTo(moved, 9);
    expect(mean - scoreOf('Kiln').points.mean).toBeCloseTo(moved, 9);
  });

  it('is alike for calls that race alike', () => {
    expect(scoreOf('Forge').points).toEqual(scoreOf('Twin').points);
    expect(scoreOf('Forge').chanceBest).toBeCloseTo(scoreOf('Twin').chanceBest, 12);
  });

  it('is made of its parts by answer', () => {
    for (const { score } of drawn) {
      const sum = score.byAnswer.reduce((total, { points }, a) => total + points * (week.all.shares[a] ?? 0), 0);
      expect(sum).toBeCloseTo(score.points.mean, 9);
    }
  });

  it('has chances of being the best that sum to 1, draws centred on the mean, and fewer explosives with more losses', () => {
    expect(drawn.reduce((sum, { score }) => sum + score.chanceBest, 0)).toBeCloseTo(1, 9);
    for (const { score, points } of drawn) {
      expect(points.reduce((sum, value) => sum + value, 0) / points.length).toBeCloseTo(score.points.mean, 9);
    }
    expect(scoreOf('Ember').explosives.mean).toBeLessThan(scoreOf('Kiln').explosives.mean);
  });

  it('follows the race of the situation where that was told apart', () => {
    const onThird = raced(
      protection.race.map((line) => ({
        ...line,
        bySituation: [{ situation: 'third_long', home: line.call === 'Kiln' ? 0.9 : line.home }],
      })),
    );
    const run = inventedWeek({}, { library, protection: onThird });
    const third = run.week.situations.find(({ id }) => id === 'third_long');
    const first = run.week.situations.find(({ id }) => id === 'first_ten');
    if (!third || !first) throw new Error('no such situation');
    const meanIn = (situation: typeof third, call: string) =>
      callScores(situation, library.calls, run.model).find(({ score }) => score.call === call)?.score.points.mean ?? 0;
    expect(meanIn(third, 'Kiln')).toBeGreaterThan(meanIn(third, 'Ember'));
    expect(meanIn(first, 'Kiln')).toBeLessThan(meanIn(first, 'Ember'));
  });
});
