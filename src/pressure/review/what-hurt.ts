import { ANSWERS, type Answer } from '../../game/answers.ts';
import { type Film, numberAt, rowsOf, textAt } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { answerCodes } from '../snap/answer.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { type OutcomeKind, outcomeAt } from '../snap/outcome.ts';
import { situationCodes } from '../snap/situation.ts';
import { snapName } from '../snap/snap-name.ts';

/** A big play against us. */
export interface HurtPlay {
  readonly snap: string;
  /** Situation id; null where it is not known. */
  readonly situation: string | null;
  /** Our call; null where it was not charted. */
  readonly call: string | null;
  readonly answer: Answer | null;
  readonly gain: number | null;
}

/** How often one of our calls, or one situation, was beaten. */
export interface HurtCount {
  readonly name: string;
  /** Gains that kept them on schedule and big plays, of the snaps with a known outcome. */
  readonly beaten: Share;
  readonly bigPlays: number;
  /** The snaps on which it was beaten. */
  readonly snaps: readonly string[];
}

/** What hurt us in one game. */
export interface WhatHurt {
  /** Big plays, the longest first. */
  readonly plays: readonly HurtPlay[];
  /** By call, most often beaten first; empty where our calls were not charted. */
  readonly calls: readonly HurtCount[];
  /** By situation id, most often beaten first. */
  readonly situations: readonly HurtCount[];
}

/** Finds the big plays and counts how often each call and situation was beaten, on our sheet or else on theirs. */
export function whatHurt(film: Film, cuts: SituationCuts): WhatHurt {
  const snaps = judgedSnaps(film, cuts);
  const plays = snaps
    .filter(({ outcome }) => outcome === 'explosive')
    .map(({ outcome: _, ...play }) => play)
    .sort((a, b) => (b.gain ?? 0) - (a.gain ?? 0));
  return {
    plays,
    calls: countsBy(snaps, ({ call }) => call),
    situations: countsBy(snaps, ({ situation }) => situation),
  };
}

type JudgedSnap = HurtPlay & { readonly outcome: OutcomeKind };

function judgedSnaps(film: Film, cuts: SituationCuts): readonly JudgedSnap[] {
  const [answers, situations] = [answerCodes(film, cuts), situationCodes(film, cuts)];
  return rowsOf(film).flatMap((i) => {
    const outcome = outcomeAt(film, i);
    if (outcome === undefined) return [];
    return {
      snap: snapName(film, i),
      situation: SITUATIONS[situations[i] ?? NOT_KNOWN]?.id ?? null,
      call: textAt(film, 'call', i) ?? null,
      answer: ANSWERS[answers[i] ?? NOT_KNOWN] ?? null,
      gain: numberAt(film, 'gain', i) ?? null,
      outcome,
    };
  });
}

function countsBy(snaps: readonly JudgedSnap[], nameOf: (snap: JudgedSnap) => string | null): readonly HurtCount[] {
  const names = [...new Set(snaps.flatMap((snap) => nameOf(snap) ?? []))];
  const counts = names.map((name) => {
    const own = snaps.filter((snap) => nameOf(snap) === name);
    const beaten = own.filter(({ outcome }) => outcome === 'gain' || outcome === 'explosive');
    return {
      name,
      beaten: share(beaten.length, own.length),
      bigPlays: own.filter(({ outcome }) => outcome === 'explosive').length,
      snaps: beaten.map(({ snap }) => snap),
    };
  });
  return counts.sort((a, b) => b.beaten.count - a.beaten.count || b.bigPlays - a.bigPlays);
}
