import { FAMILIES } from '../../../game/vocabulary.ts';
import type { Share } from '../../../stats/share.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';
import { evidenceReason, ownFilmReason } from './reason-evidence.ts';
import { lookReasons } from './reason-look.ts';
import { raceReason, sideReason } from './reason-race.ts';
import { answerReason, nextReason } from './reason-score.ts';

/** What reasons are made from beside the situation's own numbers. */
export interface ReasonInput {
  readonly model: ScoreModel;
  /** How often their slide goes to the back's side, over all snaps. */
  readonly slideToBack: Share;
}

/**
 * Why a family scores as it does, in sentences made from the numbers: the answers that help and hurt most, the two
 * looks that matter most, the race, which side to send it from, what little the score rests on, who is close behind.
 */
export function familyReasons(situation: ScoredSituation, f: number, input: ReasonInput): string[] {
  if (FAMILIES[f] === 'base') return ['The yardstick: every other family is measured against it.'];
  const { model } = input;
  return [
    answerReason(situation, f),
    ...lookReasons(situation, f, model),
    raceReason(situation, f, model),
    sideReason(f, input.slideToBack),
    evidenceReason(situation, f, model),
    situation.id === 'all' ? ownFilmReason(f, model) : null,
    situation.id === 'all' ? nextReason(situation, f) : null,
  ].filter((reason) => reason !== null);
}
