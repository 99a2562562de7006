import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../../src/game/film.ts';
import { ANSWERS, FAMILIES } from '../../../../src/game/vocabulary.ts';
import { cellIndex } from '../../../../src/pressure/evidence/evidence-cell.ts';
import { familyReasons } from '../../../../src/pressure/score/reason/reason.ts';
import { evidenceReason, ownFilmReason } from '../../../../src/pressure/score/reason/reason-evidence.ts';
import { lookReasons } from '../../../../src/pressure/score/reason/reason-look.ts';
import { raceReason, sideReason } from '../../../../src/pressure/score/reason/reason-race.ts';
import { answerReason, nextReason } from '../../../../src/pressure/score/reason/reason-score.ts';
import { share } from '../../../../src/stats/share.ts';
import { inventedCalls, raced, raceLine } from '../../protection/invented-race.ts';
import { inventedWeek } from '../invented-week.ts';

const OFFENSE = { answers: { run: 20, screen: 20, quick: 20, dropback: 40 }, backAction: { blocks: 80, none: 20 } };
const { week, model } = inventedWeek(OFFENSE);
const place = (family: (typeof FAMILIES)[number]) => FAMILIES.indexOf(family);
const signed = (points: number) => (points > 0 ? `+${points.toFixed(1)}` : points.toFixed(1).replace('-', '\u2212'));

describe('reasons say the numbers that were computed', () => {
  it('names the answers that help and hurt most, with their points and shares', () => {
    const { shares, saved } = week.all;
    const f = place('add_on');
    const parts = ANSWERS.map((answer, a) => ({
      answer,
      share: shares[a] ?? 0,
      points: 10 * (shares[a] ?? 0) * (saved[cellIndex(f, a)] ?? 0),
    })).sort((one, other) => other.points - one.points);
    const words = answerReason(week.all, f);
    for (const part of [parts[0], parts.at(-1)]) {
      expect(words).toContain(signed(part?.points ?? 0));
      expect(words).toContain(`(${Math.round(100 * (part?.share ?? 0))}% of snaps)`);
    }
    expect(words).toContain('their dropbacks');
  });

  it('counts a look as charted, not as planned', () => {
    const words = lookReasons(week.all, place('add_on'), model).find((one) => one.includes('keep the back in'));
    // 240 snaps, eight in ten of them passes, eight in ten of those with the back in.
    expect(words).toContain('They keep the back in to block on 154 of 192 charted');
    expect(words).toContain('where 40% is usual');
  });

  it('says how often a rusher is home, against whom, and nothing where nobody raced', () => {
    expect(raceReason(week.all, place('hot'), model)).toBeNull();
    const library = inventedCalls({ Stay: 'base', Ember: 'hot' });
    const protection = raced([raceLine('Stay', 'dropback', [0.3, 0.25]), raceLine('Ember', 'dropback', [0.63, 0.5])]);
    const run = inventedWeek(OFFENSE, { library, protection });
    const words = raceReason(run.week.all, place('hot'), run.model);
    expect(words).toContain('on 63% of their dropbacks, 50% against an average opponent');
  });

  it('sends the add-on opposite a clear turn, and nowhere on a thin or even one', () => {
    expect(sideReason(place('add_on'), share(6, 36))).toContain("on 30 of 36 (83% [68-92]): add on the back's side");
    expect(sideReason(place('add_on'), share(30, 36))).toContain('add on the side away from the back');
    expect(sideReason(place('add_on'), share(0, 6))).toBeNull();
    expect(sideReason(place('add_on'), share(18, 36))).toBeNull();
    expect(sideReason(place('hot'), share(30, 36))).toBeNull();
  });

  it('says on how many snaps nothing but judgement speaks', () => {
    const runs = inventedWeek({ answers: { run: 60, quarterback_run: 10, dropback: 30 } });
    const words = evidenceReason(runs.week.all, place('hot'), runs.model);
    expect(words).toContain('On 70% of their snaps nothing but judgement speaks');
    expect(evidenceReason(week.all, place('peel_spy'), model)).toContain('On 100% of their snaps');
    expect(evidenceReason(week.all, place('hot'), model)).toBeNull();
  });

  it('counts our own film and calls it thin', () => {
    const own = Array.from({ length: 9 }, (_, i) => ({
      family: 'hot',
      play_kind: 'dropback',
      result: i < 3 ? 'sack' : 'complete',
      gain: i < 3 ? -6 : 4,
      down: 1,
      to_go: 10,
      ball_on: 60,
    }));
    const run = inventedWeek(OFFENSE, { ownFilm: filmFromRecords(own) });
    expect(ownFilmReason(place('hot'), run.model)).toContain('9 snaps with 3 for a loss, 0 explosive and 0 taken away');
    expect(ownFilmReason(place('hot'), run.model)).toContain('a thin sample');
    expect(ownFilmReason(place('zero'), run.model)).toBeNull();
  });

  it('names who is next behind the leader, with the gap, and nobody behind the others', () => {
    const means = week.all.points.map((draws) => draws.reduce((sum, value) => sum + value, 0) / draws.length);
    const order = means.map((_, i) => i).sort((i, j) => (means[j] ?? 0) - (means[i] ?? 0));
    const [first = 0, second = 0] = order;
    const gap = ((means[first] ?? 0) - (means[second] ?? 0)).toFixed(1);
    expect(nextReason(week.all, first)).toContain(`${gap} behind`);
    expect(nextReason(week.all, second)).toBeNull();
  });

  it('are sentences, and the base is the yardstick', () => {
    const slideToBack = share(0, 0);
    expect(familyReasons(week.all, place('base'), { model, slideToBack })).toHaveLength(1);
    for (const [f] of FAMILIES.entries()) {
      for (const words of familyReasons(week.all, f, { model, slideToBack })) expect(words).toMatch(/^[A-Z].*\.$/);
    }
  });
});
