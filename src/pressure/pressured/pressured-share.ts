import { share } from '../../stats/share.ts';
import { againstOthers, sumOf } from '../others/against-others.ts';
import { gameCells, offenseCells } from '../others/cross-count.ts';
import { clusteredP } from '../others/tails.ts';
import { askedCrossing } from './faced-counts.ts';
import { type FacedFilm, gamesFor } from './faced-film.ts';
import type { GroupShares } from './group-shares.ts';
import type { FittedQuestion } from './pressured-question.ts';
import type { PressuredShare } from './pressured-result.ts';

/** A share before the correction over everything looked at, and whether it was looked at. */
export type UntestedShare = Omit<PressuredShare, 'adjusted' | 'sure'> & { readonly looked: boolean };

/** One class in one group. */
interface Place {
  readonly group: number;
  readonly k: number;
}

/** Fewer charted snaps are not tested: the filter that is set without looking at the outcome, as for tells. */
const LEAST_TESTED = 8;

/** What came of one class against one group; null where the question was not charted there. */
export function pressuredShare(film: FacedFilm, question: FittedQuestion, { group, k }: Place): UntestedShare | null {
  const { definition, own, others } = question;
  const games = gameCells(own.games, group, k);
  const { count, trials } = sumOf(games);
  if (trials === 0) return null;
  const planned = question.planned[group] as GroupShares;
  const expected = planned.due[k] as number;
  const looked = trials >= LEAST_TESTED && (definition.classes.length > 2 || k === 0);
  return {
    target: definition.target,
    name: definition.classes[k] as string,
    film: share(count, trials),
    expected,
    planWith: planned.moved[k] as number,
    p: looked ? clusteredP(games, { expected, question: definition.target }) : 1,
    looked,
    games,
    others: againstOthers({ games, question: definition.target }, offenseCells(others.offenses, group, k)),
    snaps: snapsOf(film, question, group),
  };
}

function snapsOf(film: FacedFilm, question: FittedQuestion, group: number): number[] {
  const { groupOf, classOf, classes } = askedCrossing(film, question);
  const rows = gamesFor(film, question.by, question.definition).flatMap((game) => game.rows);
  return rows.filter((row) => groupOf[row] === group && (classOf[row] as number) < classes).sort((a, b) => a - b);
}
