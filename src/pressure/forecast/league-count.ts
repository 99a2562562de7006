import { countBy } from '../../game/by-word.ts';
import { SITUATIONS } from '../../game/situations.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { OffenseGame } from '../snap/offense-game.ts';
import type { TargetCodes } from './chain-tally.ts';
import type { LeagueOffense } from './league-worth.ts';

/** The archive's snaps, with whom each belongs to. */
export interface LeagueSnaps {
  readonly target: TargetCodes;
  /** Situation of every snap; 255 where it was not charted. */
  readonly situation: Uint8Array;
  /** Games of other offenses on which the target was charted. */
  readonly games: readonly OffenseGame[];
  /** The snaps of each offense, one after another; the same snaps as the games' where no tallies are among them. */
  readonly rowsOf: ReadonlyMap<string, readonly ArrayLike<number>[]>;
}

/** Counts every offense of an archive by situation, in order of name, so that film and tallies of it say the same. */
export function countLeague({ target, situation, games, rowsOf }: LeagueSnaps): readonly LeagueOffense[] {
  return [...countBy(games, ({ offense }) => offense)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([offense, number]) => ({
      counts: countSituations(target, situation, rowsOf.get(offense) ?? []),
      games: number,
    }));
}

function countSituations(
  { codes, classes, weights }: TargetCodes,
  situation: Uint8Array,
  lists: readonly ArrayLike<number>[],
): Float64Array {
  const counts = new Float64Array((SITUATIONS.length + 1) * classes);
  for (const rows of lists) {
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i] as number;
      const code = codes[row] as number;
      if (code === NOT_KNOWN) continue;
      const at = Math.min(situation[row] as number, SITUATIONS.length) * classes + code;
      counts[at] = (counts[at] as number) + (weights?.[row] ?? 1);
    }
  }
  return counts;
}
