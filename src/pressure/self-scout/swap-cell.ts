import type { Call, CallLibrary } from '../../game/call-library.ts';
import { plainName } from '../../game/plain-name.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import { type FilmPath, favorite } from './film-path.ts';

/** Snaps of a path in one situation that could be played in another coverage. */
export interface SwapCell {
  readonly path: string;
  readonly situation: string;
  readonly instead: string;
  readonly coverage: string;
  /** Such snaps on our film. */
  readonly snaps: number;
  /** Points one swapped snap costs by the scores; below 0 it gains. 0 where nothing was scored. */
  readonly cost: number;
}

/** What tells which calls could be swapped, and at what cost. */
export interface SwapSource {
  readonly library: CallLibrary;
  readonly scores: ScoreChapter | null;
  /** Calls that may not be called. */
  readonly ban: readonly string[];
}

/** The swaps a path offers: in each situation the other coverage that the scores like best there. */
export function swapCells(path: FilmPath, { library, scores, ban }: SwapSource): SwapCell[] {
  const banned = new Set(ban.map(plainName));
  const ofPath = library.calls.filter(
    (call) =>
      call.family !== 'base' && plainName(call.path) === plainName(path.path) && !banned.has(plainName(call.name)),
  );
  const usual = ofPath.find(({ coverage }) => plainName(coverage) === plainName(favorite(path)));
  const others = ofPath.filter(({ coverage }) => plainName(coverage) !== plainName(favorite(path)));
  if (others.length === 0) return [];
  return path.favoriteBySituation.map(({ situation, snaps }) => {
    const worth = (call: Call | undefined) => pointsASnap(scores, call?.name, situation);
    const best = others.reduce((most, call) => (worth(call) > worth(most) ? call : most));
    const cost = usual ? worth(usual) - worth(best) : 0;
    return { path: path.path, situation, instead: favorite(path), coverage: best.coverage, snaps, cost };
  });
}

function pointsASnap(scores: ScoreChapter | null, call: string | undefined, situation: string): number {
  const scored = scores?.calls.filter((score) => score.call === call) ?? [];
  const found =
    scored.find((score) => score.situation === situation) ?? scored.find((score) => score.situation === 'all');
  return (found?.points.mean ?? 0) / 10;
}
