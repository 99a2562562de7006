import { describe, expect, it } from 'vitest';
import { ANSWERS, FAMILIES, type Family } from '../../../../src/game/vocabulary.ts';
import { cellIndex } from '../../../../src/pressure/evidence/evidence-cell.ts';
import { lookRow } from '../../../../src/pressure/evidence/judgement-look-parts.ts';
import { meanShares } from '../../../../src/pressure/evidence/judgement-looks.ts';
import { answerMarks, marksOf } from '../../../../src/pressure/score/family/family-score-means.ts';
import type { ScoredSituation } from '../../../../src/pressure/score/family/family-score-week.ts';
import { breakEvenOf } from '../../../../src/pressure/score/reason/break-even.ts';
import { answerTurn, type FamilyPair, lookTurn } from '../../../../src/pressure/score/reason/break-even-turn.ts';
import { inventedWeek } from '../invented-week.ts';

const pairOf = (family: Family, against: Family): FamilyPair => ({
  family: FAMILIES.indexOf(family),
  against: FAMILIES.indexOf(against),
});
const lead = ({ shares, saved }: Pick<ScoredSituation, 'shares' | 'saved'>, { family, against }: FamilyPair) =>
  ANSWERS.reduce(
    (sum, _, a) => sum + (shares[a] ?? 0) * ((saved[cellIndex(family, a)] ?? 0) - (saved[cellIndex(against, a)] ?? 0)),
    0,
  );

describe('the break-even in a share of answers', () => {
  const { week } = inventedWeek({ answers: { run: 30, screen: 8, quick: 12, dropback: 40, deep_shot: 10 } });
  const { all } = week;
  const pair = pairOf('add_on', 'base');
  const turn = answerTurn(all, pair, ['screen', 'quick']);

  it('puts the two families level when evaluated anew at its point, everything else in proportion', () => {
    const at = turn.turnsAt;
    if (at === null) throw new Error('this offense has a turn for the add-on');
    const inside = ANSWERS.map((answer) => answer === 'screen' || answer === 'quick');
    const shown = ANSWERS.reduce((sum, _, a) => sum + (inside[a] ? (all.shares[a] ?? 0) : 0), 0);
    const moved = all.shares.map((share, a) => (inside[a] ? (share * at) / shown : (share * (1 - at)) / (1 - shown)));
    expect(moved.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(lead({ ...all, shares: moved }, pair)).toBeCloseTo(0, 12);
  });

  it('shows what they show, inside its interval', () => {
    // 20 of 100 on film; a situation's own shares are smoothed, so the whole is near it.
    expect(turn.shown).toBeCloseTo(0.2, 1);
    expect(turn.low).toBeLessThan(turn.shown);
    expect(turn.high).toBeGreaterThan(turn.shown);
    expect(turn.rises).toBe(false);
    expect(turn.ahead).toBe(lead(all, pair) > 0);
  });
});

describe('the break-even in a look', () => {
  const { week } = inventedWeek({ receivers: { '2x2': 50, '3x1': 40, '2x1': 10 } });
  const { all } = week;
  const pair = pairOf('three_under', 'four_under');
  const turn = lookTurn(all, pair, 'trips');

  it('puts the two families level when the looks are evaluated anew at its point', () => {
    const at = turn.turnsAt;
    if (at === null) throw new Error('this offense has a turn for three-under');
    const { part, index } = lookRow('trips');
    const means = all.looks.map(meanShares);
    const own = means[part]?.[index] ?? 0;
    const moved = means.map((shares, i) =>
      i === part ? shares.map((share, k) => (k === index ? at : (share * (1 - at)) / (1 - own))) : shares,
    );
    const change = ANSWERS.reduce((sum, _, a) => {
      const by = (f: number) => answerMarks(marksOf(moved), f, a) - answerMarks(marksOf(means), f, a);
      return sum + (all.shares[a] ?? 0) * (all.perMark[a] ?? 0) * (by(pair.family) - by(pair.against));
    }, 0);
    expect(lead(all, pair) + change).toBeCloseTo(0, 12);
  });

  it('has no width where a class was given nothing, or everything', () => {
    const part = lookRow('trips').part;
    const looks = all.looks.map((alphas, i) => (i === part ? Float64Array.of(5, 0, 0, 0) : alphas));
    const none = lookTurn({ ...all, looks }, pair, 'trips');
    expect([none.shown, none.low, none.high]).toEqual([0, 0, 0]);
    const every = lookTurn({ ...all, looks }, pair, 'balanced');
    expect([every.shown, every.low, every.high]).toEqual([1, 1, 1]);
  });
});

describe('the break-even of every family', () => {
  const { week, model } = inventedWeek();

  it('is in words the numbers beside them, and the base has none', () => {
    expect(breakEvenOf(week.all, 'base', model)).toBeNull();
    for (const family of FAMILIES.slice(1)) {
      const found = breakEvenOf(week.all, family, model);
      if (!found) throw new Error(`no break-even for ${family}`);
      const { shown, low, high, turnsAt, words, quantity } = found;
      const whole = (share: number) => String(Math.round(100 * share));
      expect(words).toContain(`${whole(shown)}% [${whole(low)}-${whole(high)}]`);
      expect(words).toContain(quantity);
      expect(words).toContain(turnsAt === null ? 'at any share' : `${whole(turnsAt)}% ${quantity}`);
    }
  });

  it('says so where the quantity was not charted', () => {
    const { part } = lookRow('trips');
    const film = model.looks.film.map((counts, i) => (i === part ? new Float64Array(counts.length) : counts));
    const said = breakEvenOf(week.all, 'three_under', { ...model, looks: { ...model.looks, film } });
    expect(said?.words).toContain('not charted');
  });
});
