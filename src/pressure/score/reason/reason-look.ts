import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { LOOK_PARTS, type LookPart, type LookRow, reaches } from '../../evidence/judgement-look-parts.ts';
import { lotsOf, meanShares } from '../../evidence/judgement-looks.ts';
import { sheetMark } from '../../evidence/judgement-sheet.ts';
import { percentWords } from '../../evidence/percent-words.ts';
import { signedPoints } from '../../evidence/signed-points.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import { SNAPS_PER_SCORE } from '../family/family-score-points.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';
import { sentence } from './reason-words.ts';

/** The two looks that move a family most, with what they show and what is typical. */
export function lookReasons(situation: ScoredSituation, f: number, { looks }: ScoreModel): string[] {
  return LOOK_PARTS.flatMap((part, i) => {
    const film = looks.film[i] as Float64Array;
    const shares = meanShares(situation.looks[i] as Float64Array);
    if (film.every((count) => count === 0)) return [];
    return part.rows.map((row) => {
      const points = lookPoints(situation, f, { part, row, share: shares[row.index] ?? 0 });
      return { points, words: wordsOf(part, row, { film, share: shares[row.index] ?? 0, points }) };
    });
  })
    .filter(({ points }) => Math.abs(points) >= WORTH_SAYING)
    .sort((one, other) => Math.abs(other.points) - Math.abs(one.points))
    .slice(0, 2)
    .map(({ words }) => words);
}

/** Points per ten snaps below which a look is not worth a sentence. */
const WORTH_SAYING = 0.05;

/** Points per ten snaps that one look gives a family. */
export function lookPoints(
  { shares, perMark }: ScoredSituation,
  f: number,
  { part, row, share }: { part: LookPart; row: LookRow; share: number },
): number {
  const reached = ANSWERS.reduce((sum, answer, a) => {
    return reaches(row.reach, answer) ? sum + (shares[a] ?? 0) * (perMark[a] ?? 0) : sum;
  }, 0);
  return SNAPS_PER_SCORE * reached * lotsOf(part, row, share) * sheetMark(row.row, FAMILIES[f] ?? 'base');
}

function wordsOf(part: LookPart, row: LookRow, seen: { film: Float64Array; share: number; points: number }): string {
  const trials = seen.film.reduce((sum, count) => sum + count, 0);
  const typical = percentWords(part.typical[row.index] ?? 0);
  const count = seen.film[row.index] ?? 0;
  return sentence(
    `they ${row.words} on ${count} of ${trials} charted; planned with ${percentWords(seen.share)} here where ${typical} is usual: ${signedPoints(seen.points)}`,
  );
}
