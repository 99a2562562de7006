import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import type { Share } from '../../../stats/share.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { edgeIn } from '../../evidence/evidence-race.ts';
import { percentWords, wholePercent } from '../../evidence/percent-words.ts';
import { signedPoints } from '../../evidence/signed-points.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import { SNAPS_PER_SCORE } from '../family/family-score-points.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';
import { sentence } from './reason-words.ts';

/** How the family's rushers fare against their dropbacks beside an average opponent's; null when nothing was raced. */
export function raceReason(
  { id, shares, race }: ScoredSituation,
  f: number,
  { race: edge }: ScoreModel,
): string | null {
  const cell = cellIndex(f, ANSWERS.indexOf('dropback'));
  const [home, typical] = [edgeIn(edge, id).home[cell] ?? Number.NaN, edge.typical[cell] ?? Number.NaN];
  if (Number.isNaN(home)) return null;
  const points = ANSWERS.reduce((sum, _, a) => sum + (shares[a] ?? 0) * (race[cellIndex(f, a)] ?? 0), 0);
  return sentence(
    `a rusher is home before the ball is out on ${percentWords(home)} of their dropbacks, ${percentWords(typical)} against an average opponent: ${movedWords(SNAPS_PER_SCORE * points)}`,
  );
}

/** What the race moves a family by, beside the base, which races the same ball. */
function movedWords(points: number): string {
  const signed = signedPoints(points);
  return signed === '0.0' ? 'no more than it moves the base' : signed;
}

/** Fewest slides seen before a side is advised. */
const ENOUGH_SLIDES = 10; // judgement

/** Which side to send the add-on from, when their slide follows the back or turns from him more often than not. */
export function sideReason(f: number, slideToBack: Share): string | null {
  if (FAMILIES[f] !== 'add_on' || slideToBack.trials < ENOUGH_SLIDES) return null;
  if (slideToBack.low <= 0.5 && slideToBack.high >= 0.5) return null;
  const away = slideToBack.high < 0.5;
  const count = away ? slideToBack.trials - slideToBack.count : slideToBack.count;
  const [low, high] = away ? [1 - slideToBack.high, 1 - slideToBack.low] : [slideToBack.low, slideToBack.high];
  const turn = away ? 'away from the back' : 'to the back';
  const add = away ? "add on the back's side" : 'add on the side away from the back';
  return sentence(
    `they turn ${turn} on ${count} of ${slideToBack.trials} (${percentWords(count / slideToBack.trials)} [${wholePercent(low)}-${wholePercent(high)}]): ${add}, opposite the turn`,
  );
}
