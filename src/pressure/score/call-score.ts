import type { Call } from '../../ingest/call-library.ts';
import { ANSWERS, FAMILIES } from '../../ingest/vocabulary.ts';
import { cellIndex } from '../evidence/evidence-cell.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME } from '../evidence/evidence-race.ts';
import { baseShares } from '../evidence/open-data.ts';
import { chancesBest, spreadOf } from './family/family-score-chance.ts';
import type { ScoreModel } from './family/family-score-model.ts';
import { centred, SNAPS_PER_SCORE } from './family/family-score-points.ts';
import type { ScoredSituation } from './family/family-score-week.ts';
import type { CallScore } from './score-result.ts';

/** A call's score in a situation with the draws behind it. */
export interface DrawnCall {
  readonly score: CallScore;
  /** Points saved per ten snaps by draw, on the family's own draws. */
  readonly points: Float64Array;
}

/**
 * The scores of calls in one situation: the family's, moved by how much more or less often this call's own rushers are
 * home than those of the family's other calls. Which side a call is sent from acts through that race: it was run from
 * its side against their slide. Calls that race alike score alike.
 *
 * @param calls - the calls to compare with each other
 */
export function callScores(situation: ScoredSituation, calls: readonly Call[], model: ScoreModel): DrawnCall[] {
  const drawn = calls.map((call) => callDraws(situation, call, model));
  const best = chancesBest(drawn.map(({ points }) => points));
  return calls.map((call, c): DrawnCall => {
    const { points, mean, shifts } = drawn[c] as ReturnType<typeof callDraws>;
    const f = FAMILIES.indexOf(call.family);
    const byAnswer = ANSWERS.map((answer, a) => {
      const saved = (situation.saved[cellIndex(f, a)] ?? 0) + (shifts[a] ?? 0);
      return { answer, points: SNAPS_PER_SCORE * saved };
    });
    const score: CallScore = {
      call: call.name,
      family: call.family,
      situation: situation.id,
      points: { ...spreadOf(points), mean },
      explosives: spreadOf(callExplosives(situation, call, model)),
      chanceBest: best[c] ?? 0,
      byAnswer,
    };
    return { score, points };
  });
}

/** Points a snap by which a call's race moves it from its family, by answer. */
function raceShifts({ id, perLoss }: ScoredSituation, call: Call, { race }: ScoreModel): Float64Array {
  const edges = edgeIn(race, id).calls.get(call.name) ?? new Float64Array(ANSWERS.length);
  return edges.map((edge, a) => LOSSES_PER_RUSHER_HOME * edge * (perLoss[a] ?? 0));
}

function callDraws(situation: ScoredSituation, call: Call, model: ScoreModel) {
  const shifts = raceShifts(situation, call, model);
  const f = FAMILIES.indexOf(call.family);
  const mean =
    SNAPS_PER_SCORE *
    situation.shares.reduce(
      (sum, share, a) => sum + share * ((situation.saved[cellIndex(f, a)] ?? 0) + (shifts[a] ?? 0)),
      0,
    );
  const points = (situation.points[f] as Float64Array).slice();
  const count = points.length;
  shifts.forEach((shift, a) => {
    if (shift === 0) return;
    for (let i = 0; i < count; i++) {
      points[i] = (points[i] as number) + SNAPS_PER_SCORE * shift * (situation.answerDraws[a * count + i] as number);
    }
  });
  return { points: centred(points, mean), mean, shifts };
}

/** The family's explosives, less what the call's extra losses take from them. */
function callExplosives({ id, explosives, shares }: ScoredSituation, call: Call, { race }: ScoreModel): Float64Array {
  const edges = edgeIn(race, id).calls.get(call.name) ?? new Float64Array(ANSWERS.length);
  const shift = ANSWERS.reduce((sum, answer, a) => {
    const [loss, , , explosive] = baseShares(answer) as unknown as readonly [number, number, number, number];
    return sum - (100 * (shares[a] ?? 0) * LOSSES_PER_RUSHER_HOME * (edges[a] ?? 0) * explosive) / (1 - loss);
  }, 0);
  return (explosives[FAMILIES.indexOf(call.family)] as Float64Array).map((share) => Math.max(0, share + shift));
}
