import { ANSWERS, BACK_ACTIONS, FAMILIES } from '../../game/vocabulary.ts';
import { cellIndex } from '../evidence/evidence-cell.ts';
import { LOOK_PARTS } from '../evidence/judgement-look-parts.ts';
import { type LookAlphas, meanShares, type OffenseLooks } from '../evidence/judgement-looks.ts';
import { OUT_JOBS } from '../protection/protection-tally.ts';
import { situationCells } from './family/family-score-means.ts';
import type { ScoreModel } from './family/family-score-model.ts';
import { SNAPS_PER_SCORE } from './family/family-score-points.ts';
import type { ScoredSituation, ScoredWeek } from './family/family-score-week.ts';
import type { BackRelease } from './score-result.ts';

/**
 * What the back's release does to every family's points, over all situations first and then in each: the same scores
 * with the back always in and always out, less the scores as forecast. His job moves the trade's marks and the race.
 *
 * @returns empty where his job was charted on no pass
 */
export function backReleases(week: ScoredWeek, model: ScoreModel): BackRelease[] {
  const charted = model.looks.film[JOB_PART] ?? new Float64Array();
  if (charted.every((count) => count === 0)) return [];
  const whenIn = changes(week, withBack(model, 'in'));
  const whenOut = changes(week, withBack(model, 'out'));
  const situations = week.situations.map((situation, s) => ({
    situation,
    whenIn: whenIn[s] as Float64Array,
    whenOut: whenOut[s] as Float64Array,
  }));
  const all = {
    situation: week.all,
    whenIn: overAll(whenIn, week, model),
    whenOut: overAll(whenOut, week, model),
  };
  return [all, ...situations].map((entry) => ({
    situation: entry.situation.id,
    out: outShare(entry.situation.looks),
    whenIn: byFamily(entry.whenIn),
    whenOut: byFamily(entry.whenOut),
  }));
}

const JOB_PART = LOOK_PARTS.findIndex(({ id }) => id === 'back_job');

/** Points a snap by cell and situation: the changed model's less those as scored. */
function changes(week: ScoredWeek, changed: ScoreModel): Float64Array[] {
  return week.situations.map(({ saved }, s) =>
    situationCells(changed, s).saved.map((points, cell) => points - (saved[cell] ?? 0)),
  );
}

function withBack(model: ScoreModel, back: 'in' | 'out'): ScoreModel {
  const race = { ...model.race, ...model.race.back[back], situations: new Map() };
  return { ...model, race, looks: looksWithBack(model.looks, back) };
}

function looksWithBack({ all, situations, film }: OffenseLooks, back: 'in' | 'out'): OffenseLooks {
  const moved = (looks: LookAlphas) =>
    looks.map((alphas, part) => (part === JOB_PART ? onlyJobs(alphas, back) : alphas));
  return { all: moved(all), situations: new Map([...situations].map(([id, looks]) => [id, moved(looks)])), film };
}

/** The jobs of one kind in their proportions, the others never; jobs never seen share evenly. */
function onlyJobs(alphas: Float64Array, back: 'in' | 'out'): Float64Array {
  const isMeant = (job: number) => isOut(job) === (back === 'out');
  const total = alphas.reduce((sum, alpha) => sum + alpha, 0);
  const meant = alphas.map((alpha, job) => (isMeant(job) ? alpha : 0));
  const sum = meant.reduce((whole, alpha) => whole + alpha, 0);
  const kinds = BACK_ACTIONS.filter((_, job) => isMeant(job)).length;
  return meant.map((alpha, job) => (sum > 0 ? (alpha * total) / sum : isMeant(job) ? total / kinds : 0));
}

function isOut(job: number): boolean {
  return OUT_JOBS.some((name) => name === BACK_ACTIONS[job]);
}

function outShare(looks: LookAlphas): number {
  const shares = meanShares(looks[JOB_PART] ?? new Float64Array());
  return shares.reduce((sum, share, job) => sum + (isOut(job) ? share : 0), 0);
}

/** Over all situations a cell's change is its change where the answer happens. */
function overAll(changed: readonly Float64Array[], week: ScoredWeek, { weights }: ScoreModel): Float64Array {
  const shareOf = ({ shares }: ScoredSituation, cell: number) => shares[cell % ANSWERS.length] ?? 0;
  return Float64Array.from({ length: changed[0]?.length ?? 0 }, (_, cell) => {
    const sum = week.situations.reduce(
      (total, situation, s) => total + (weights[s] ?? 0) * shareOf(situation, cell) * (changed[s]?.[cell] ?? 0),
      0,
    );
    return sum / (shareOf(week.all, cell) || 1);
  });
}

function byFamily(cells: Float64Array): number[][] {
  return FAMILIES.map((_, f) => ANSWERS.map((_, a) => SNAPS_PER_SCORE * (cells[cellIndex(f, a)] ?? 0)));
}
