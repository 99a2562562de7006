import { describe, expect, it } from 'vitest';
import { ANSWERS, type Answer } from '../../../src/game/answers.ts';
import { FAMILIES, type Family } from '../../../src/game/families.ts';
import { type Film, filmFromRecords } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { LOSSES_PER_RUSHER_HOME } from '../../../src/pressure/evidence/evidence-race.ts';
import { lossWorth } from '../../../src/pressure/score/cell-points.ts';
import { scoreChapter } from '../../../src/pressure/score/score-chapter.ts';
import { inventedRecords } from '../invented-offense.ts';
import { inventedCalls, raced, raceLine } from '../protection/invented-race.ts';
import { inventedWeek, racedInput } from './invented-week.ts';

const releasesOf = (chart: Film) => scoreChapter(racedInput(chart)).backRelease;
const releases = releasesOf(filmFromRecords(inventedRecords()));
const [all] = releases;
const at = (values: readonly (readonly number[])[] | undefined, family: Family, answer: Answer) =>
  values?.[FAMILIES.indexOf(family)]?.[ANSWERS.indexOf(answer)] ?? Number.NaN;

describe("what the back's release does to points", () => {
  it('comes for all situations first and then for each', () => {
    expect(releases.map(({ situation }) => situation)).toEqual(['all', ...SITUATIONS.map(({ id }) => id)]);
  });

  it('counts the jobs that take him out: wide, inside, not there', () => {
    // The ordinary invented offense: 17 + 20 + 8 of 100.
    expect(all?.out).toBeCloseTo(0.45, 1);
  });

  it('leaves runs as they are', () => {
    for (const { whenIn, whenOut } of releases) {
      for (const family of FAMILIES) {
        for (const answer of ['run', 'quarterback_run'] as const) {
          expect(at(whenIn, family, answer)).toBeCloseTo(0, 12);
          expect(at(whenOut, family, answer)).toBeCloseTo(0, 12);
        }
      }
    }
  });

  it('moves every family with his job, one way or the other', () => {
    expect(at(all?.whenIn, 'add_on', 'dropback')).not.toBeCloseTo(at(all?.whenOut, 'add_on', 'dropback'), 3);
  });

  it('is worth no more over all snaps than where it is worth most, and no less than where it is worth least', () => {
    const each = releases.filter(({ situation }) => situation !== 'all');
    for (const family of FAMILIES) {
      for (const answer of ANSWERS) {
        for (const when of ['whenIn', 'whenOut'] as const) {
          const inEach = each.map((release) => at(release[when], family, answer));
          expect(at(all?.[when], family, answer)).toBeLessThanOrEqual(Math.max(...inEach) + 1e-9);
          expect(at(all?.[when], family, answer)).toBeGreaterThanOrEqual(Math.min(...inEach) - 1e-9);
        }
      }
    }
  });

  it('pays by the race: rushers home that often more or less, at what a loss is worth on that down', () => {
    const line = { ...raceLine('Ember', 'dropback', [0.5, 0.4]), byBack: { in: 0.7, out: 0.2 } };
    const library = inventedCalls({ Stay: 'base', Ember: 'hot' });
    const { input } = inventedWeek({}, { library, protection: raced([line]) });
    const third = scoreChapter(input).backRelease.find(({ situation }) => situation === 'third_long');
    const per = 10 * LOSSES_PER_RUSHER_HOME * lossWorth('dropback', 3);
    expect(at(third?.whenIn, 'hot', 'dropback')).toBeCloseTo(0.2 * per, 12);
    expect(at(third?.whenOut, 'hot', 'dropback')).toBeCloseTo(-0.3 * per, 12);
    expect(at(third?.whenOut, 'hot', 'quick')).toBeCloseTo(0, 12);
  });

  it('is empty where his job was charted on no pass', () => {
    const blank = inventedRecords().map(({ back_action: _, ...snap }) => snap);
    expect(releasesOf(filmFromRecords(blank))).toEqual([]);
  });
});
