import { groupBy } from '../../game/by-word.ts';
import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import type { Interval } from '../../stats/interval.ts';
import { normalWidth } from '../../stats/normal.ts';
import { type Share, share } from '../../stats/share.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import { isHeld } from '../snap/outcome.ts';
import { type GradedSnap, gradeSnaps } from './grade-snap.ts';

/** A call or a family graded on one game or more, in points saved per ten snaps against the four-man base. */
export interface Grade {
  readonly name: string;
  /** Snaps that could be graded. */
  readonly snaps: number;
  /** Losses, stops and takeaways. */
  readonly held: Share;
  /** What Sunday's scores expected of these snaps, given what the offense answered. */
  readonly expected: number;
  readonly saved: number;
  /** 95% range of `saved` by the usual spread of outcomes alone. */
  readonly low: number;
  readonly high: number;
  /** Points saved beyond what was expected, over all the snaps. */
  readonly overExpectation: number;
  readonly standing: GradeStanding;
}

/** Where what was expected lies against the range of what was saved; one game carries no more of a verdict. */
export type GradeStanding = 'too_few' | 'within' | 'above' | 'below';

/** Grades of a game by call and by family, and the sum over all graded snaps. */
export interface GameGrades {
  readonly ungraded: number;
  readonly calls: readonly Grade[];
  readonly families: readonly Grade[];
  readonly total: Grade;
}

/** Fewer snaps are not compared with what was expected; judgment, and even ten are few. */
export const LEAST_GRADED = 5;

/**
 * Grades our calls of a game. A snap saves what four rushers usually give up to that answer on that down, less what it
 * gave up; the values are points of professional scoring, so the order counts and not the decimals. Expected is what
 * Sunday's scores said of the call against that answer in that situation; the base itself is expected to save nothing.
 */
export function gradeGame(ours: Film, scores: ScoreChapter, cuts: SituationCuts): GameGrades {
  const snaps = gradeSnaps(ours, cuts).map((snap) => ({ ...snap, expected: expectedOf(snap, scores) }));
  const named = snaps.filter(({ call }) => call !== undefined);
  return {
    ungraded: ours.size - snaps.length,
    calls: gradesBy(named, ({ call }) => call ?? ''),
    families: gradesBy(snaps, ({ family }) => family),
    total: gradeOf('all', snaps),
  };
}

type Expecting = GradedSnap & { readonly expected: number };

/** Points a snap expected to be saved by the call, by its family where the call is not scored, 0 by the base. */
function expectedOf(snap: GradedSnap, scores: ScoreChapter): number {
  if (snap.family === 'base') return 0;
  const [calls, families] = [
    scores.calls.filter((score) => score.call === snap.call),
    scores.families.filter((score) => score.family === snap.family),
  ];
  const points = inSituation(calls, snap)?.byAnswer.find(({ answer }) => answer === snap.answer)?.points;
  if (points !== undefined) return points / SNAPS_PER_SCORE;
  const part = inSituation(families, snap)?.answers.find(({ answer }) => answer === snap.answer);
  return part && part.share > 0 ? part.points / part.share / SNAPS_PER_SCORE : 0;
}

/** The score of the snap's situation, or of all situations where that one is not scored. */
function inSituation<T extends { readonly situation: string }>(list: readonly T[], snap: GradedSnap): T | undefined {
  return (
    list.find(({ situation }) => situation === snap.situation) ?? list.find(({ situation }) => situation === 'all')
  );
}

/** Scores are stated per ten snaps. */
const SNAPS_PER_SCORE = 10;

function gradesBy(snaps: readonly Expecting[], keyOf: (snap: Expecting) => string): Grade[] {
  return [...groupBy(snaps, keyOf)].map(([name, group]) => gradeOf(name, group)).sort((a, b) => b.snaps - a.snaps);
}

function gradeOf(name: string, snaps: readonly Expecting[]): Grade {
  const sum = (of: (snap: Expecting) => number) => snaps.reduce((total, snap) => total + of(snap), 0);
  const perTen = snaps.length === 0 ? 0 : SNAPS_PER_SCORE / snaps.length;
  const [saved, expected] = [perTen * sum((snap) => snap.saved), perTen * sum((snap) => snap.expected)];
  const half = normalWidth(0.95) * perTen * Math.sqrt(sum((snap) => snap.variance));
  const held = snaps.filter(({ outcome }) => isHeld(outcome)).length;
  const range = { low: saved - half, high: saved + half };
  return {
    name,
    snaps: snaps.length,
    held: share(held, snaps.length),
    expected,
    saved,
    ...range,
    overExpectation: sum((snap) => snap.saved - snap.expected),
    standing: snaps.length < LEAST_GRADED ? 'too_few' : standingOf(expected, range),
  };
}

/** Where what was expected lies against the range of what was saved. */
export function standingOf(expected: number, { low, high }: Interval): GradeStanding {
  if (expected < low) return 'above';
  return expected > high ? 'below' : 'within';
}
