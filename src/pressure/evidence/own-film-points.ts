import { ANSWER_TABLE, ANSWERS, type Answer } from '../../game/answers.ts';
import type { CallLibrary } from '../../game/call-library.ts';
import { FAMILIES, type Family } from '../../game/families.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { OUTCOME_KINDS, type OutcomeKind, outcomeAt } from '../snap/outcome.ts';
import { type ByFamily, eachFamily } from './by-answer.ts';
import { leaguePoints } from './league-points.ts';
import { snapPlaces } from './snap-place.ts';
import { snapPoints } from './snap-points.ts';

/**
 * Snaps of our own that count as much as what the league says. Over 64 real defenses (league of 2022, first half of the
 * season as own film) a prior of 30 snaps moved a family by a standard deviation of 0.84 points per ten snaps, and the
 * second half followed with a slope of +0.01; its best family promised +1.93 and gave +0.30. A prior of 500 lost nothing
 * against leaving own film out (squared error .196 and .195; .222 with 30). Data as in the league's figures.
 */
export const OWN_FILM_PRIOR_SNAPS = 500;

/** What our own film says, in points a snap, after the prior. */
export interface OwnFilmPoints {
  /** Snaps that could be counted, by family, and how they ended. */
  readonly snaps: ByFamily<number>;
  readonly outcomes: ByFamily<Readonly<Record<OutcomeKind, number>>>;
  /** Snaps that could not be counted: no family, no outcome, no down, or not even run or pass. */
  readonly unread: number;
  /** What all our pressures together save beyond the league's figures and our own base; what is not known of it. */
  readonly shift: number;
  readonly shiftError: number;
  /** What each family saves beyond that; what is not known of it, which is much for a family without film. */
  readonly family: ByFamily<number>;
  readonly familyError: ByFamily<number>;
}

/**
 * Reads our own film: each snap is worth what it saved beyond what the league expects of its family there. All pressures
 * together give one shift, families deviate from it; both stand behind {@link OWN_FILM_PRIOR_SNAPS}.
 *
 * @param library - tells the family of a snap on which only the call was charted
 */
export function ownFilmPoints(film: Film | null, library: CallLibrary | null, cuts: SituationCuts): OwnFilmPoints {
  const { read, unread } = film === null ? { read: [], unread: 0 } : readSnaps(film, library, cuts);
  const of = (family: Family) => read.filter((snap) => snap.family === family);
  const [base, pressures] = [of('base'), read.filter(({ family }) => family !== 'base')];
  const all = believed(pressures, base);
  const deviation = eachFamily((family) => (family === 'base' ? NOTHING : believed(of(family), pressures)));
  return {
    snaps: eachFamily((family) => of(family).length),
    outcomes: eachFamily((family) => outcomeCounts(of(family))),
    unread,
    shift: all.value,
    shiftError: all.error,
    family: eachFamily((family) => deviation[family].value),
    familyError: eachFamily((family) => deviation[family].error),
  };
}

interface ReadSnap {
  readonly family: Family;
  readonly outcome: OutcomeKind;
  /** Points saved beyond what the league expects, and the variance of such a snap. */
  readonly beyond: number;
  readonly variance: number;
}

const NOTHING: Believed = { value: 0, error: 0 };

/** Variance of a snap where we have no film to take it from: four rushers against a dropback on first down. */
const USUAL_VARIANCE = snapPoints({ family: 'base', answer: 'dropback', down: 1, outcome: 'stop' }).variance;

/**
 * How far the mean of some snaps lies beyond that of others, as far as the prior lets it be believed, and the standard
 * deviation that is left. Where there are no others the league's figures take their place.
 */
function believed(snaps: readonly ReadSnap[], others: readonly ReadSnap[]): Believed {
  const variance = snaps.reduce((sum, snap) => sum + snap.variance, 0) / Math.max(1, snaps.length) || USUAL_VARIANCE;
  const size = snaps.length === 0 ? 0 : 1 / (1 / snaps.length + (others.length === 0 ? 0 : 1 / others.length));
  const weight = size / (size + OWN_FILM_PRIOR_SNAPS);
  return {
    value: weight === 0 ? 0 : weight * (meanOf(snaps) - meanOf(others)),
    error: Math.sqrt((variance / OWN_FILM_PRIOR_SNAPS) * (1 - weight)),
  };
}

interface Believed {
  readonly value: number;
  readonly error: number;
}

function meanOf(snaps: readonly ReadSnap[]): number {
  return snaps.length === 0 ? 0 : snaps.reduce((sum, { beyond }) => sum + beyond, 0) / snaps.length;
}

function outcomeCounts(snaps: readonly ReadSnap[]): Readonly<Record<OutcomeKind, number>> {
  const count = (kind: OutcomeKind) => snaps.filter(({ outcome }) => outcome === kind).length;
  return Object.fromEntries(OUTCOME_KINDS.map((kind) => [kind, count(kind)])) as Record<OutcomeKind, number>;
}

function readSnaps(film: Film, library: CallLibrary | null, cuts: SituationCuts) {
  const families = new Map((library?.calls ?? []).map(({ name, family }) => [name, family]));
  const answers = answerCodes(film, cuts);
  const placeAt = snapPlaces(film, cuts);
  const read: ReadSnap[] = [];
  for (let i = 0; i < film.size; i++) {
    const family = familyAt(film, i, families);
    const [outcome, down] = [outcomeAt(film, i), numberAt(film, 'down', i)];
    const split = answerSplit(answers[i] ?? NOT_KNOWN, textAt(film, 'play_kind', i));
    if (family === undefined || outcome === undefined || down === undefined || split === null) continue;
    const [place, parts] = [placeAt(i), split.map(({ answer }) => snapPoints({ family, answer, down, outcome }))];
    const sum = (of: (k: number) => number) => split.reduce((total, { part }, k) => total + part * of(k), 0);
    const expected = sum((k) => leaguePoints(family, split[k]?.answer ?? 'run', place));
    const beyond = sum((k) => parts[k]?.saved ?? 0) - expected;
    read.push({ family, outcome, beyond, variance: sum((k) => parts[k]?.variance ?? 0) });
  }
  return { read, unread: film.size - read.length };
}

type AnswerSplit = readonly { readonly answer: Answer; readonly part: number }[];

/** How a bare pass splits over the pass answers. */
const BARE_PASS: AnswerSplit = ANSWERS.map((answer) => ({ answer, part: ANSWER_TABLE[answer].ofBarePasses })).filter(
  ({ part }) => part > 0,
);

function answerSplit(code: number, playKind: string | undefined): AnswerSplit | null {
  const answer = ANSWERS[code];
  if (answer !== undefined) return [{ answer, part: 1 }];
  return playKind === 'pass' ? BARE_PASS : null;
}

function familyAt(film: Film, index: number, families: ReadonlyMap<string, Family>): Family | undefined {
  const charted = FAMILIES.find((family) => family === textAt(film, 'family', index));
  return charted ?? families.get(textAt(film, 'call', index) ?? '');
}
