import type { Answer } from '../../game/answers.ts';
import type { MenuCall } from '../menu/result.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import type { LiveForecast } from './live-forecast.ts';

/** Points saved per ten snaps against the base, Sunday and now. */
export interface PointsMove {
  readonly before: number;
  readonly now: number;
}

/** A family over the snaps still expected, best first. */
export interface RankedFamily extends PointsMove {
  readonly family: string;
  readonly rankBefore: number;
}

/** A carried call over the snaps still expected, best first, and by situation. */
export interface RankedCall extends PointsMove {
  readonly call: string;
  readonly family: string;
  readonly path: string;
  readonly coverage: string;
  readonly rankBefore: number;
  readonly bySituation: readonly (PointsMove & { readonly situation: string })[];
}

/** What the ranking is made from: Sunday's scores and the forecast of the answers as it stands now. */
export interface RankInput {
  readonly scores: ScoreChapter;
  readonly live: readonly LiveForecast[];
}

/**
 * The families ranked again: each answer's part of Sunday's score grows or shrinks with its share. The race and the
 * outcomes behind the score stay Sunday's.
 */
export function rankFamilies({ scores, live }: RankInput): readonly RankedFamily[] {
  const names = [...new Set(scores.families.map(({ family }) => family))];
  const ranked = names.map((family) => {
    const own = scores.families.filter((score) => score.family === family && score.situation !== 'all');
    const moves = own.map((score) => {
      const ratio = answerRatios(live, score.situation);
      const change = score.answers.reduce((sum, part) => sum + part.points * ((ratio.get(part.answer) ?? 1) - 1), 0);
      return { situation: score.situation, before: score.points.mean, now: score.points.mean + change };
    });
    return { family, ...overall(scores, moves) };
  });
  return withRanks(ranked);
}

/** The carried calls ranked again: Sunday's score moved by every answer's change of share times its points. */
export function rankCalls({ scores, live }: RankInput, carried: readonly MenuCall[]): readonly RankedCall[] {
  const ranked = carried.map(({ call, family, path, coverage }) => {
    const own = scores.calls.filter((score) => score.call === call && score.situation !== 'all');
    const bySituation = own.map((score) => {
      const changes = answerChanges(live, score.situation);
      const change = score.byAnswer.reduce((sum, part) => sum + part.points * (changes.get(part.answer) ?? 0), 0);
      return { situation: score.situation, before: score.points.mean, now: score.points.mean + change };
    });
    return { call, family, path, coverage, bySituation, ...overall(scores, bySituation) };
  });
  return withRanks(ranked);
}

/** Share now over share on Sunday, by answer. */
function answerRatios(live: readonly LiveForecast[], situation: string): Map<Answer, number> {
  return new Map(
    answerClasses(live, situation).map(({ name, before, share }) => [name as Answer, before > 0 ? share / before : 1]),
  );
}

/** Share now less share on Sunday, by answer. */
function answerChanges(live: readonly LiveForecast[], situation: string): Map<Answer, number> {
  return new Map(answerClasses(live, situation).map(({ name, before, share }) => [name as Answer, share - before]));
}

function answerClasses(live: readonly LiveForecast[], situation: string): LiveForecast['classes'] {
  const answers = live.filter(({ target }) => target === 'answer');
  return (answers.find((entry) => entry.situation === situation) ?? answers[0])?.classes ?? [];
}

/** Mean over situations, weighted by the snaps expected of each. */
function overall(scores: ScoreChapter, moves: readonly (PointsMove & { readonly situation: string })[]): PointsMove {
  const weighted = moves.map((move) => {
    const snaps = scores.situations.find(({ id }) => id === move.situation)?.expectedSnaps ?? 0;
    return { ...move, snaps };
  });
  const total = weighted.reduce((sum, { snaps }) => sum + snaps, 0);
  if (total === 0) return { before: 0, now: 0 };
  const mean = (when: 'before' | 'now') => weighted.reduce((sum, move) => sum + move[when] * move.snaps, 0) / total;
  return { before: mean('before'), now: mean('now') };
}

function withRanks<T extends PointsMove>(entries: readonly T[]): (T & { readonly rankBefore: number })[] {
  const before = [...entries].sort((a, b) => b.before - a.before);
  const now = [...entries].sort((a, b) => b.now - a.now);
  return now.map((entry) => ({ ...entry, rankBefore: before.indexOf(entry) + 1 }));
}
