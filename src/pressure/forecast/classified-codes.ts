import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';
import type { TargetDefinition } from './target.ts';

/**
 * The class of every snap of a chart that counts for a target: as charted, without the answers of games that do not tell
 * their passes apart.
 *
 * @param cuts - the staff's cut-offs
 */
export function classifiedCodes({ target, codes }: TargetDefinition, chart: Film, cuts: SituationCuts): Uint8Array {
  const charted = codes(chart, cuts);
  return target === 'answer' ? classifiedAnswers(charted, runOrPassCodes(chart), offenseGames(chart)) : charted;
}
