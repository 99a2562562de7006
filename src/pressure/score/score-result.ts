import type { Answer } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import type { Spread } from '../../stats/spread.ts';
import type { OutcomeKind } from '../snap/outcome.ts';
import type { PointSource } from './cell-points.ts';
import type { Disagreement } from './disagreement.ts';
import type { ScoreNote } from './score-notes.ts';

/** What one answer adds to a family's score in a situation, in points saved per ten snaps. */
export interface AnswerPart {
  readonly answer: Answer;
  readonly share: number;
  readonly points: number;
}

/** Where a family stands among those to choose from over some snaps. */
export interface FamilyChoice {
  readonly family: Family;
  /** Points a game given away by sending this family alone where the best by points would be sent alone. */
  readonly regret: number;
  /** Chance that the best by points is better; 0 for the best itself. */
  readonly behindChance: number;
  /** What sets a family back that points rule out; null when points cannot tell it from the best. */
  readonly ruledOutBy: PointSource | null;
}

/** A pressure family in a situation, in a zone (`open_field`, `red_zone`, `goal_line`) or over all, against the base. */
export interface FamilyScore extends FamilyChoice {
  readonly situation: string;
  /** Points saved per ten snaps, 80% interval. */
  readonly points: Spread;
  /** Explosive plays per hundred snaps, 80% interval. */
  readonly explosives: Spread;
  readonly chanceBetterThanBase: number;
  readonly answers: readonly AnswerPart[];
  /** Points per ten snaps from each source; they sum to the mean. */
  readonly sources: Readonly<Record<PointSource, number>>;
  /** Chance that a rusher is home on their dropbacks, and against an average opponent; null where nothing was raced. */
  readonly race: { readonly home: number; readonly typical: number } | null;
  readonly ownSnaps: number;
  readonly verdict: 'ahead' | 'behind' | 'level';
}

/** A call in a situation: its family's score moved by its own race and side. */
export interface CallScore {
  readonly call: string;
  readonly family: Family;
  readonly situation: string;
  readonly points: Spread;
  readonly explosives: Spread;
  /** Points saved per ten snaps against each answer alone. */
  readonly byAnswer: readonly { readonly answer: Answer; readonly points: number }[];
}

/** What our own film says of a family. */
export interface OwnFamilyFilm {
  readonly family: Family;
  readonly snaps: number;
  readonly outcomes: Readonly<Record<OutcomeKind, number>>;
}

/** Chapter of the report on what pressure is worth in points. */
export interface ScoreChapter {
  readonly situations: readonly { readonly id: string; readonly expectedSnaps: number }[];
  /** The families over all snaps first, then by situation. */
  readonly families: readonly FamilyScore[];
  /** The families by field zone, over all situations. */
  readonly zones: readonly FamilyScore[];
  readonly calls: readonly CallScore[];
  /** Families of which we have film. */
  readonly ownFilm: readonly OwnFamilyFilm[];
  /** Where the open data and common practice disagree on something they do. */
  readonly disagreements: readonly Disagreement[];
  /** What the points could not be made from. */
  readonly notes: readonly ScoreNote[];
}
