import { ANSWERS, type Answer } from '../../game/answers.ts';
import { FAMILIES, type Family } from '../../game/families.ts';
import { type Film, numberAt, rowsOf, textAt } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { snapPoints } from '../evidence/snap-points.ts';
import { answerCodes } from '../snap/answer.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { type OutcomeKind, outcomeAt } from '../snap/outcome.ts';
import { situationCodes } from '../snap/situation.ts';

/** One of our snaps in points. */
export interface GradedSnap {
  readonly call: string | undefined;
  readonly family: Family;
  readonly situation: string | undefined;
  readonly answer: Answer;
  readonly outcome: OutcomeKind;
  /** Points saved against what four rushers usually give up to that answer on that down. */
  readonly saved: number;
  /** Variance of one such snap, from the usual spread of outcomes. */
  readonly variance: number;
}

/** Our snaps with a known family, answer, down and outcome, in points; the others cannot be graded. */
export function gradeSnaps(ours: Film, cuts: SituationCuts): readonly GradedSnap[] {
  const answers = answerCodes(ours, cuts);
  const situations = situationCodes(ours, cuts);
  return rowsOf(ours).flatMap((i) => {
    const family = FAMILIES.find((name) => name === textAt(ours, 'family', i));
    const answer = ANSWERS[answers[i] ?? NOT_KNOWN];
    const [down, outcome] = [numberAt(ours, 'down', i), outcomeAt(ours, i)];
    if (!family || !answer || down === undefined || !outcome) return [];
    const situation = SITUATIONS[situations[i] ?? NOT_KNOWN]?.id;
    return [
      {
        call: textAt(ours, 'call', i),
        family,
        situation,
        answer,
        outcome,
        ...snapPoints({ family, answer, down, outcome }),
      },
    ];
  });
}
