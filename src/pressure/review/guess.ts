import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { countWords, type OwnSnap, ownSnaps } from '../self-scout/snaps.ts';

/** How often a reader of our earlier film would have named the coverage of the game's snaps behind a pressure. */
export interface GameGuesses {
  /** Our earlier pressures with path and coverage that he has read. */
  readonly read: number;
  /** Naming the commonest coverage every time. */
  readonly blind: Share;
  /** Naming the coverage that mostly followed the path he sees. */
  readonly fromPath: Share;
}

/** A path seen less often on earlier film tells a reader nothing; the same as in the report's own-film chapter. */
const SEEN_ENOUGH = 3;

/**
 * The guess rate of the game: a reader who knows all our earlier film and none of this game names the coverage behind
 * each pressure. Null without earlier film.
 */
export function gameGuesses(earlier: Film | null, game: Film, cuts: SituationCuts): GameGuesses | null {
  const read = earlier ? charted(ownSnaps(earlier, cuts)) : [];
  if (read.length === 0) return null;
  const asked = charted(ownSnaps(game, cuts));
  const blind = commonest(read);
  const right = (guess: (snap: OwnSnap) => string | undefined) =>
    share(asked.filter((snap) => guess(snap) === snap.coverage).length, asked.length);
  const fromPath = (snap: OwnSnap) => {
    const like = read.filter(({ path }) => path === snap.path);
    return like.length >= SEEN_ENOUGH ? commonest(like) : blind;
  };
  return { read: read.length, blind: right(() => blind), fromPath: right(fromPath) };
}

function charted(snaps: readonly OwnSnap[]): OwnSnap[] {
  return snaps.filter(({ pressure, path, coverage }) => pressure && path !== undefined && coverage !== undefined);
}

function commonest(snaps: readonly OwnSnap[]): string | undefined {
  return countWords(snaps, ({ coverage }) => coverage)[0]?.[0];
}
