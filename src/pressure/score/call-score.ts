import type { Call } from '../../game/call-library.ts';
import { ANSWERS, FAMILIES } from '../../game/vocabulary.ts';
import { quantilesBetween, type TailNeighbours } from '../../stats/quantile.ts';
import { cellIndex } from '../evidence/evidence-cell.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME } from '../evidence/evidence-race.ts';
import { baseShares } from '../evidence/open-data.ts';
import { chancesBest, spreadOf } from './family/family-score-chance.ts';
import type { ScoreModel } from './family/family-score-model.ts';
import { centred, SNAPS_PER_SCORE } from './family/family-score-points.ts';
import type { ScoredSituation } from './family/family-score-week.ts';
import type { CallScore, Spread } from './score-result.ts';

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
  const races: DrawnRace[] = [];
  const drawn = calls.map((call) => raceOf(situation, call, { model, races }));
  const best = chancesBest(drawn.map(({ points }) => points));
  return calls.map((call, c): DrawnCall => {
    const { spread, explosives, byAnswer, points } = drawn[c] as DrawnRace;
    const { name, family } = call;
    const chanceBest = best[c] ?? 0;
    return {
      score: { call: name, family, situation: situation.id, points: spread, explosives, chanceBest, byAnswer },
      points,
    };
  });
}

/** What all calls of a family that race alike have in common. */
interface DrawnRace {
  readonly f: number;
  readonly edges: Float64Array;
  readonly points: Float64Array;
  readonly spread: Spread;
  readonly explosives: Spread;
  readonly byAnswer: CallScore['byAnswer'];
}

interface KnownRaces {
  readonly model: ScoreModel;
  /** Races drawn so far; new ones are added. */
  readonly races: DrawnRace[];
}

function raceOf(situation: ScoredSituation, call: Call, { model, races }: KnownRaces): DrawnRace {
  const f = FAMILIES.indexOf(call.family);
  const edges = edgeIn(model.race, situation.id).calls.get(call.name) ?? new Float64Array(ANSWERS.length);
  const known = races.find((race) => race.f === f && race.edges.every((edge, a) => edge === edges[a]));
  if (known) return known;
  const race = drawnRace(situation, f, edges);
  races.push(race);
  return race;
}

function drawnRace(situation: ScoredSituation, f: number, edges: Float64Array): DrawnRace {
  const { shares, saved, perLoss } = situation;
  const shifts = edges.map((edge, a) => LOSSES_PER_RUSHER_HOME * edge * (perLoss[a] ?? 0));
  const savedIn = (a: number) => (saved[cellIndex(f, a)] ?? 0) + (shifts[a] ?? 0);
  const mean = SNAPS_PER_SCORE * shares.reduce((sum, share, a) => sum + share * savedIn(a), 0);
  const points = callPoints(situation, { f, shifts, mean });
  return {
    f,
    edges,
    points,
    spread: spreadOf(points, mean),
    explosives: callExplosives(situation, f, edges),
    byAnswer: ANSWERS.map((answer, a) => ({ answer, points: SNAPS_PER_SCORE * savedIn(a) })),
  };
}

interface RaceShift {
  readonly f: number;
  /** Points a snap by which the race moves the call from its family, by answer. */
  readonly shifts: Float64Array;
  readonly mean: number;
}

function callPoints({ points, answerDraws }: ScoredSituation, { f, shifts, mean }: RaceShift): Float64Array {
  const drawn = (points[f] as Float64Array).slice();
  shifts.forEach((shift, a) => {
    if (shift !== 0) addShare(drawn, SNAPS_PER_SCORE * shift, answerDraws.subarray(a * drawn.length));
  });
  return centred(drawn, mean);
}

function addShare(points: Float64Array, worth: number, shares: Float64Array): void {
  for (let i = 0; i < points.length; i++) points[i] = (points[i] as number) + worth * (shares[i] as number);
}

/** The family's explosives, less what the call's extra losses take from them. */
function callExplosives(situation: ScoredSituation, f: number, edges: Float64Array): Spread {
  const { shares, explosives, explosiveTails } = situation;
  const shift = ANSWERS.reduce((sum, answer, a) => {
    const [loss, , , explosive] = baseShares(answer) as unknown as readonly [number, number, number, number];
    return sum - (100 * (shares[a] ?? 0) * LOSSES_PER_RUSHER_HOME * (edges[a] ?? 0) * explosive) / (1 - loss);
  }, 0);
  const mean = meanAboveNone(explosives[f] as Float64Array, shift);
  const tails = explosiveTails[f] as TailNeighbours;
  return { mean, ...quantilesBetween(tails, (share) => Math.max(0, share + shift)) };
}

/** Mean of draws that are moved by `shift` and no less than 0. */
function meanAboveNone(draws: Float64Array, shift: number): number {
  let sum = 0;
  for (let i = 0; i < draws.length; i++) sum += Math.max(0, (draws[i] as number) + shift);
  return sum / draws.length;
}
