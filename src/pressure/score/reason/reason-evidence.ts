import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { percentWords } from '../../evidence/percent-words.ts';
import { OUTCOME_KINDS } from '../../snap/outcome.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';
import { sentence } from './reason-words.ts';

/** Share of the snaps above which it is said that nothing but judgement speaks on them. */
const MUCH = 0.25;

/** On how much of what they do nothing but the trade's judgement speaks; null when it is little. */
export function evidenceReason({ shares, known }: ScoredSituation, f: number, { evidence }: ScoreModel): string | null {
  if (!known)
    return 'What they do with the ball was not charted: an ordinary offense stands in, so this ranks nothing.';
  const alone = ANSWERS.reduce((sum, _, a) => {
    const cell = cellIndex(f, a);
    const others = (evidence.openData[cell] ?? 0) + (evidence.ownFilm[cell] ?? 0);
    return others < 1 ? sum + (shares[a] ?? 0) : sum;
  }, 0);
  if (alone < MUCH) return null;
  const why = FAMILIES[f] === 'peel_spy' ? 'open data know no spy' : 'open data cannot tell a family on a run';
  return sentence(`on ${percentWords(alone)} of their snaps nothing but judgement speaks (${why})`);
}

/** What our own film holds of the family; null when it holds nothing. */
export function ownFilmReason(f: number, { ownFilm }: ScoreModel): string | null {
  const snaps = ownFilm.snaps[f] ?? 0;
  if (snaps === 0) return null;
  const counted = OUTCOME_KINDS.map((_, kind) => Math.round(familyTotal(ownFilm.counts, f, kind)));
  const [losses, , , explosives, takeaways] = counted as unknown as readonly [number, number, number, number, number];
  const thin = snaps < 20 ? ', a thin sample' : '';
  return sentence(
    `ours so far: ${snaps} snaps with ${losses} for a loss, ${explosives} explosive and ${takeaways} taken away${thin}`,
  );
}

function familyTotal(counts: Float64Array, f: number, kind: number): number {
  return ANSWERS.reduce((sum, _, a) => sum + (counts[cellIndex(f, a) * OUTCOME_KINDS.length + kind] ?? 0), 0);
}
