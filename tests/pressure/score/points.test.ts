import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS, PASS_ANSWERS } from '../../../src/game/answers.ts';
import { FAMILIES } from '../../../src/game/families.ts';
import { filmFromRecords } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { LOSSES_PER_RUSHER_HOME } from '../../../src/pressure/evidence/evidence-race.ts';
import { leaguePoints } from '../../../src/pressure/evidence/league-points.ts';
import { lossWorth } from '../../../src/pressure/score/cell-points.ts';
import { choiceOf, RULED_OUT_CHANCE } from '../../../src/pressure/score/choice.ts';
import { leadOf, pointsOf } from '../../../src/pressure/score/lead.ts';
import { scoreChapter } from '../../../src/pressure/score/score-chapter.ts';
import { inventedRecords, inventedSettings } from '../invented-offense.ts';
import { inventedCalls, raced, raceLine } from '../protection/invented-race.ts';
import { inventedWeek, plainInput, racedInput } from './invented-week.ts';

const chart = filmFromRecords(inventedRecords({ scrambles: 0.2 }));
const chapter = scoreChapter(racedInput(chart));
const library = inventedCalls({ Stay: 'base', Ember: 'hot', Kiln: 'hot', Forge: 'zero' });

describe('the chapter of points', () => {
  it('holds every family over all snaps, in every situation, and in every zone', () => {
    expect(chapter.families).toHaveLength(FAMILIES.length * (1 + SITUATIONS.length));
    expect(chapter.families.slice(0, FAMILIES.length).map(({ family }) => family)).toEqual([...FAMILIES]);
    expect(chapter.families[0]?.situation).toBe('all');
    expect(new Set(chapter.zones.map(({ situation }) => situation))).toEqual(
      new Set(['open_field', 'red_zone', 'goal_line']),
    );
  });

  it('adds up: parts by answer and sources to the mean', () => {
    for (const { answers, sources, points } of [...chapter.families, ...chapter.zones]) {
      expect(answers.reduce((sum, part) => sum + part.points, 0)).toBeCloseTo(points.mean, 9);
      expect(sources.league + sources.race + sources.ownFilm).toBeCloseTo(points.mean, 9);
    }
  });

  it('is over all snaps the mean of its situations by their snaps', () => {
    const snaps = (id: string) => chapter.situations.find((one) => one.id === id)?.expectedSnaps ?? 0;
    for (const family of FAMILIES) {
      const [all, ...own] = chapter.families.filter((score) => score.family === family);
      const total = own.reduce((sum, { situation }) => sum + snaps(situation), 0);
      const mean = own.reduce((sum, { situation, points }) => sum + snaps(situation) * points.mean, 0) / total;
      expect(mean).toBeCloseTo(all?.points.mean ?? Number.NaN, 9);
    }
  });

  it('takes the base as its own measure', () => {
    for (const score of chapter.families.filter(({ family }) => family === 'base')) {
      expect(score.points).toEqual({ mean: 0, low: 0, high: 0 });
    }
  });

  it('says no clear difference exactly where the 80% interval holds nothing', () => {
    for (const { points, verdict } of chapter.families) {
      const clear = points.low > 0 ? 'ahead' : points.high < 0 ? 'behind' : 'level';
      expect(verdict).toBe(clear);
    }
  });

  it('scores only the families asked for with the base, the same each time', () => {
    const few = plainInput(chart, { settings: inventedSettings({ families: ['hot'] }) });
    expect(JSON.stringify(scoreChapter(few))).toBe(JSON.stringify(scoreChapter(few)));
    expect(new Set(scoreChapter(few).families.map(({ family }) => family))).toEqual(new Set(['base', 'hot']));
  });

  it('says what it could not be made from', () => {
    const kinds = scoreChapter(plainInput(chart)).notes.map(({ kind }) => kind);
    expect(kinds).toEqual(['runs', 'no_own_film', 'no_library']);
    const bare = filmFromRecords(Array.from({ length: 40 }, () => ({ down: 1, to_go: 10, ball_on: 60 })));
    expect(scoreChapter(plainInput(bare)).notes[0]?.kind).toBe('answers_not_charted');
    expect(chapter.notes.map(({ kind }) => kind)).toContain('six_rushers');
  });
});

describe('the league part', () => {
  it('is that of the place for an offense that always throws straight from the open field', () => {
    const { week } = inventedWeek({ answers: dropbacksOnly, downs: { '1/10': 1 }, snaps: 5000 });
    const first = week.situations.find(({ id }) => id === 'first_ten');
    const league = leaguePoints('man_free', 'dropback', { zone: 'open_field', distance: 'first' });
    // 5,000 snaps leave twelve snaps' worth of the usual zones.
    expect(first && pointsOf(first, 'man_free')).toBeCloseTo(10 * league, 2);
  });

  it('falls with every run, on which nobody charts who rushed', () => {
    const mean = (run: number) => pointsOf(inventedWeek({ answers: { run, dropback: 50 } }).week.all, 'man_free');
    expect(mean(10)).toBeGreaterThan(mean(50));
  });
});

describe('the opponent part', () => {
  it('is the race alone: more rushers home than against an average opponent are losses, worth what a loss is', () => {
    const protection = raced([raceLine('Ember', 'dropback', [0.6, 0.4]), raceLine('Kiln', 'dropback', [0.4, 0.4])]);
    const { week } = inventedWeek({}, { library, protection });
    const third = week.situations.find(({ id }) => id === 'third_long');
    const expected = LOSSES_PER_RUSHER_HOME * 0.1 * lossWorth('dropback', 3);
    expect(third?.families.hot.saved.race.dropback).toBeCloseTo(10 * expected, 12);
    expect(third?.families.zero.saved.race.dropback).toBe(0);
  });

  it('never falls when more of our rushers get home', () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(chance, chance, chance, (home, more, typical) => {
        const mean = (now: number) => {
          const protection = raced([raceLine('Ember', 'dropback', [now, typical])]);
          return pointsOf(inventedWeek({ snaps: 40 }, { library, protection }).week.all, 'hot');
        };
        expect(mean(Math.max(home, more))).toBeGreaterThanOrEqual(mean(Math.min(home, more)) - 1e-12);
      }),
      { numRuns: 20 },
    );
  });

  it('expects no fewer than no big plays of a call, however often its own rushers are home', () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(chance, chance, chance, (ember, kiln, typical) => {
        const protection = raced(
          PASS_ANSWERS.flatMap((answer) => [
            raceLine('Ember', answer, [ember, typical]),
            raceLine('Kiln', answer, [kiln, typical]),
          ]),
        );
        const { input } = inventedWeek({ snaps: 40 }, { library, protection });
        for (const { explosives } of scoreChapter(input).calls) {
          expect(explosives.low).toBeGreaterThanOrEqual(0);
          expect(explosives.mean).toBeGreaterThanOrEqual(explosives.low);
          expect(explosives.high).toBeGreaterThanOrEqual(explosives.mean);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('does not know their looks: trips, backs and motion leave points as they are', () => {
    const usual = inventedWeek().week.all;
    const odd = inventedWeek({ receivers: { '3x1': 1 }, personnel: { '22': 1 }, backAction: { releases_wide: 1 } });
    const zones = (mix: typeof usual) => FAMILIES.map((family) => pointsOf(mix, family));
    zones(odd.week.all).forEach((points, f) => {
      expect(points).toBeCloseTo(zones(usual)[f] ?? Number.NaN, 1);
    });
  });

  it('sets calls of a family apart by their own race', () => {
    const protection = raced([raceLine('Ember', 'dropback', [0.6, 0.4]), raceLine('Kiln', 'dropback', [0.4, 0.4])]);
    const { input } = inventedWeek({}, { library, protection });
    const scores = scoreChapter(input).calls.filter(({ situation }) => situation === 'all');
    const [ember, kiln] = ['Ember', 'Kiln'].map((name) => scores.find(({ call }) => call === name));
    expect(ember?.points.mean).toBeGreaterThan(kiln?.points.mean ?? Number.NaN);
    expect(ember?.explosives.mean).toBeLessThan(kiln?.explosives.mean ?? Number.NaN);
  });

  it('follows the race of the situation where that was told apart', () => {
    const protection = raced(
      [raceLine('Ember', 'dropback', [0.6, 0.5]), raceLine('Kiln', 'dropback', [0.5, 0.3])].map((line) => ({
        ...line,
        bySituation: [{ situation: 'third_long', home: line.call === 'Kiln' ? 0.9 : line.home }],
      })),
    );
    const { input } = inventedWeek({}, { library, protection });
    const { calls } = scoreChapter(input);
    const meanIn = (name: string, id: string) =>
      calls.find(({ call, situation }) => call === name && situation === id)?.points.mean ?? Number.NaN;
    expect(meanIn('Kiln', 'third_long')).toBeGreaterThan(meanIn('Ember', 'third_long'));
    expect(meanIn('Kiln', 'first_ten')).toBeLessThan(meanIn('Ember', 'first_ten'));
  });
});

const dropbacksOnly = { run: 0, quarterback_run: 0, screen: 0, quick: 0, dropback: 1, deep_shot: 0, movement: 0 };

describe('what points tell apart', () => {
  const { week } = inventedWeek();

  it('has nothing separate two families but what is not known of both alike', () => {
    const lead = leadOf(week.all, 'hot', 'zero');
    const apart = Math.hypot(leadOf(week.all, 'hot', 'base').error, leadOf(week.all, 'zero', 'base').error);
    expect(lead.error).toBeLessThan(apart);
    expect(leadOf(week.all, 'hot', 'hot')).toMatchObject({ mean: 0, error: 0 });
  });

  it('rules out no pressure for an ordinary offense: no evidence tells them apart', () => {
    for (const mix of [week.all, ...week.situations]) {
      const out = choiceOf(mix, FAMILIES).filter(({ family, ruledOutBy }) => family !== 'base' && ruledOutBy !== null);
      expect(out).toEqual([]);
    }
  });

  it('rules out a family by the race when its rushers never get home and the others always do', () => {
    const calls = inventedCalls({ Stay: 'base', Ember: 'hot', Forge: 'zero' });
    const home = (call: string, now: number) =>
      ANSWERS.filter((answer) => !answer.includes('run')).map((answer) => raceLine(call, answer, [now, 0.5]));
    const protection = raced([...home('Stay', 0.5), ...home('Ember', 1), ...home('Forge', 0)]);
    const { all } = inventedWeek({ answers: dropbacksOnly }, { library: calls, protection }).week;
    const found = choiceOf(all, ['hot', 'zero']);
    expect(found[0]).toMatchObject({ family: 'hot', regret: 0, ruledOutBy: null });
    expect(found[1]?.ruledOutBy).toBe('race');
    expect(found[1]?.behindChance).toBeGreaterThan(RULED_OUT_CHANCE);
  });

  it('counts regret in points a game', () => {
    const best = Math.max(...FAMILIES.map((other) => pointsOf(week.all, other)));
    for (const { regret, family } of choiceOf(week.all, FAMILIES)) {
      expect(regret).toBeCloseTo((week.all.expectedSnaps * (best - pointsOf(week.all, family))) / 10, 9);
    }
  });
});
