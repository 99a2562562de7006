import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { ANSWERS, type Answer, FAMILIES, type Family } from '../../../src/game/vocabulary.ts';
import { backReleases } from '../../../src/pressure/score/back-release.ts';
import { sharedDraws } from '../../../src/pressure/score/family/family-score-draws.ts';
import { scoreModel } from '../../../src/pressure/score/family/family-score-model.ts';
import { scoreWeek } from '../../../src/pressure/score/family/family-score-week.ts';
import { inventedRecords } from '../invented-offense.ts';
import { racedInput } from './expected-scores.ts';

function releasesOf(chart: Parameters<typeof racedInput>[0]['chart']) {
  const model = scoreModel(racedInput({ chart }));
  const week = scoreWeek(model, sharedDraws(model));
  return { week, releases: backReleases(week, model) };
}

const { week, releases } = releasesOf(filmFromRecords(inventedRecords()));
const [all] = releases;
const at = (values: readonly (readonly number[])[] | undefined, family: Family, answer: Answer) =>
  values?.[FAMILIES.indexOf(family)]?.[ANSWERS.indexOf(answer)] ?? Number.NaN;

describe('backReleases', () => {
  it('comes for all situations first and then for each', () => {
    expect(releases.map(({ situation }) => situation)).toEqual(['all', ...week.situations.map(({ id }) => id)]);
  });

  it('counts the jobs that take him out: wide, inside, not there', () => {
    // The ordinary invented offense: 17 + 20 + 8 of 100; the typical shares it is shrunk to say the same.
    expect(all?.out).toBeGreaterThan(0.4);
    expect(all?.out).toBeLessThan(0.5);
  });

  it('leaves runs as they are, but for the three families whose answers the trade puts in order', () => {
    const free = FAMILIES.filter((family) => !['add_on', 'zero', 'man_free'].includes(family));
    expect(free).toHaveLength(6);
    for (const { whenIn, whenOut } of releases) {
      for (const family of free) {
        for (const answer of ['run', 'quarterback_run'] as const) {
          expect(at(whenIn, family, answer)).toBeCloseTo(0, 6);
          expect(at(whenOut, family, answer)).toBeCloseTo(0, 6);
        }
      }
    }
  });

  it('moves zero against peel down when the back is out and up when he stays (common practice, no source)', () => {
    const lead = (values: readonly (readonly number[])[] | undefined) =>
      at(values, 'zero', 'dropback') - at(values, 'peel', 'dropback');
    expect(lead(all?.whenOut)).toBeLessThan(0);
    expect(lead(all?.whenIn)).toBeGreaterThan(0);
  });

  it('never helps the add-on on a held ball when the back is out: he adds only where the back stays (common practice, no source)', () => {
    expect(at(all?.whenOut, 'add_on', 'dropback')).toBeLessThan(at(all?.whenIn, 'add_on', 'dropback'));
  });

  it('is empty where his job was charted on no pass', () => {
    const blank = inventedRecords().map(({ back_action: _, ...snap }) => snap);
    expect(releasesOf(filmFromRecords(blank)).releases).toEqual([]);
  });
});
