import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { percentWords } from '../../evidence/percent-words.ts';
import { signedPoints } from '../../evidence/signed-points.ts';
import { SNAPS_PER_SCORE } from '../family/family-score-points.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';
import { FAMILY_WORDS } from '../family-words.ts';
import { ANSWER_SUBJECTS, sentence } from './reason-words.ts';

/** Points per ten snaps below which a part is not worth a sentence. */
const WORTH_SAYING = 0.05;

/** The answer that helps a family most and the one that hurts it most, with their shares. */
export function answerReason(situation: ScoredSituation, f: number): string {
  const parts = ANSWERS.map((answer, a) => {
    const share = situation.shares[a] ?? 0;
    return { answer, share, points: SNAPS_PER_SCORE * share * (situation.saved[cellIndex(f, a)] ?? 0) };
  }).sort((one, other) => other.points - one.points);
  const said = [parts[0], parts.at(-1)].flatMap((part) => {
    if (!part || Math.abs(part.points) < WORTH_SAYING) return [];
    return [
      `${signedPoints(part.points)} against ${ANSWER_SUBJECTS[part.answer]} (${percentWords(part.share)} of snaps)`,
    ];
  });
  if (said.length === 0) return 'No answer of theirs moves it by a tenth of a point in ten snaps.';
  return sentence(`of its points in ten snaps, ${[...new Set(said)].join(' and ')}`);
}

/** For the leading family: who is next, how close, and that the order is not settled when it is not. */
export function nextReason({ points }: ScoredSituation, f: number): string | null {
  const means = points.map((draws) => draws.reduce((sum, value) => sum + value, 0) / draws.length);
  const order = means.map((_, i) => i).sort((i, j) => (means[j] ?? 0) - (means[i] ?? 0));
  const next = order[1];
  if (order[0] !== f || next === undefined) return null;
  const gap = (means[f] ?? 0) - (means[next] ?? 0);
  const ahead = aheadShare(points[f] as Float64Array, points[next] as Float64Array);
  const settled = ahead >= 0.9 ? 'clear' : 'too close to call';
  const name = FAMILY_WORDS[FAMILIES[next] ?? 'base'];
  return sentence(
    `next is ${name}, ${gap.toFixed(1)} behind; ahead of it in ${percentWords(ahead)} of draws, ${settled}`,
  );
}

function aheadShare(one: Float64Array, other: Float64Array): number {
  return one.reduce((count, value, i) => count + (value > (other[i] as number) ? 1 : 0), 0) / one.length;
}
