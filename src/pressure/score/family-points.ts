import { ANSWERS, type Answer, isPass } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import { normalWidth } from '../../stats/normal.ts';
import type { Spread } from '../../stats/spread.ts';
import { weighted } from '../evidence/by-answer.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME } from '../evidence/evidence-race.ts';
import { baseShares, extraExplosives } from '../evidence/open-data.ts';
import { choiceOf } from './choice.ts';
import { chanceAhead, leadOf, SCORE_LEVEL, spreadOf } from './lead.ts';
import { type PointsMix, savedAgainst } from './points-mix.ts';
import type { PointsModel } from './points-model.ts';
import type { FamilyChoice, FamilyScore } from './score-result.ts';

/** The points of all asked families over a mix of snaps against the four-man base, and which of them points tell apart. */
export function familyScores(mix: PointsMix, families: readonly Family[], model: PointsModel): FamilyScore[] {
  const choices = choiceOf(mix, families);
  return families.map((family, i) => {
    const lead = leadOf(mix, family, 'base');
    const own = mix.families[family];
    const saved = savedAgainst(own);
    return {
      ...(choices[i] as FamilyChoice),
      situation: mix.id,
      points: spreadOf(lead),
      explosives: explosivesOf(mix, family, model),
      chanceBetterThanBase: chanceAhead(lead),
      answers: ANSWERS.map((answer) => {
        return { answer, share: mix.shares[answer], points: mix.shares[answer] * saved[answer] };
      }),
      sources: {
        league: weighted(mix.shares, own.saved.league),
        race: weighted(mix.shares, own.saved.race),
        ownFilm: weighted(mix.shares, own.saved.ownFilm),
      },
      race: racedAgainstDropbacks(mix, family, model),
      ownSnaps: model.ownFilm.snaps[family],
      verdict: verdictOf(spreadOf(lead)),
    };
  });
}

/** Explosive plays per hundred snaps against a family, with what the league leaves open about it. */
export function explosivesOf(mix: PointsMix, family: Family, model: PointsModel): Spread {
  const { value, error } = extraExplosives(family);
  const edges = edgeIn(model.race, mix.id).families[family];
  const mean = ANSWERS.reduce((sum, answer) => {
    const more = isPass(answer) ? value : 0;
    return sum + mix.shares[answer] * (explosiveShare(answer) + more + explosivesLost(answer, edges[answer]));
  }, 0);
  const passes = ANSWERS.reduce((sum, answer) => sum + (isPass(answer) ? mix.shares[answer] : 0), 0);
  const half = normalWidth(SCORE_LEVEL) * passes * error;
  return { mean: 100 * mean, low: Math.max(0, 100 * (mean - half)), high: 100 * (mean + half) };
}

/** What a race edge does to the share of explosives: the losses it brings come out of everything else alike. */
export function explosivesLost(answer: Answer, edge: number): number {
  const [loss] = baseShares(answer) as unknown as readonly [number];
  return (-LOSSES_PER_RUSHER_HOME * edge * explosiveShare(answer)) / (1 - loss);
}

function explosiveShare(answer: Answer): number {
  return baseShares(answer)[EXPLOSIVE] ?? 0;
}

const EXPLOSIVE = 3; // place among the outcome kinds

function racedAgainstDropbacks({ id }: PointsMix, family: Family, { race }: PointsModel): FamilyScore['race'] {
  const [home, typical] = [edgeIn(race, id).home[family].dropback, race.typical[family].dropback];
  return home === null || typical === null ? null : { home, typical };
}

function verdictOf({ low, high }: Spread): FamilyScore['verdict'] {
  if (low > 0) return 'ahead';
  return high < 0 ? 'behind' : 'level';
}
