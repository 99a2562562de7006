import { betaQuantile } from '../../stats/beta.ts';
import { share } from '../../stats/share.ts';
import { againstOthers, sumOf } from '../others/against-others.ts';
import { type GameCount, gameCells, offenseCells } from '../others/cross-count.ts';
import { effectiveSnaps } from '../others/game-effect.ts';
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
  const [shown, planned] = [question.shown[group] as GroupShares, question.planned[group] as GroupShares];
  const expected = shown.due[k] as number;
  const looked = trials >= LEAST_TESTED && (definition.classes.length > 2 || k === 0);
  return {
    target: definition.target,
    name: definition.classes[k] as string,
    film: share(count, trials),
    expected,
    ...shrunkTo(shown, k, { games, question }),
    planWith: planned.moved[k] as number,
    ownWeight: shown.ownWeight,
    p: looked ? clusteredP(games, { expected, question: definition.target }) : 1,
    looked,
    games,
    others: againstOthers({ games, question: definition.target }, offenseCells(others.offenses, group, k)),
    snaps: snapsOf(film, question, group),
  };
}

/**
 * The shrunk share with the interval of a Beta: as unsure as their own snaps of the group leave it, and as their level,
 * which it leans on for the rest.
 */
function shrunkTo({ moved, ownWeight }: GroupShares, k: number, { games, question }: ShrunkFilm) {
  const shrunk = moved[k] as number;
  const { target } = question.definition;
  const seen = effectiveSnaps(
    games.map(({ trials }) => trials),
    target,
  );
  const level = question.own.games.map(({ counts }) => counts.reduce((sum, n) => sum + n, 0));
  const ofOwn = ownWeight > 0 ? ownWeight / seen : 1 / (UNLEARNED_WORTH + seen);
  const worth = 1 / (ofOwn + (1 - ownWeight) ** 2 / effectiveSnaps(level, target));
  const [low, high] = [0.025, 0.975].map((p) => quantileOf(p, shrunk, worth)) as [number, number];
  return { shrunk, low, high };
}

interface ShrunkFilm {
  readonly games: readonly GameCount[];
  readonly question: FittedQuestion;
}

/** Snaps the due share is worth where their own were given no weight: the middle of the belief. */
const UNLEARNED_WORTH = 512;

function quantileOf(p: number, mean: number, worth: number): number {
  if (mean <= 0 || mean >= 1) return mean;
  return betaQuantile(p, mean * worth, (1 - mean) * worth);
}

function snapsOf(film: FacedFilm, question: FittedQuestion, group: number): number[] {
  const { groupOf, classOf, classes } = askedCrossing(film, question);
  const rows = gamesFor(film, question.by, question.definition).flatMap((game) => game.rows);
  return rows.filter((row) => groupOf[row] === group && (classOf[row] as number) < classes).sort((a, b) => a - b);
}
