import { type CountRow, countedSnaps } from './count-row.ts';

/** Offenses with film at hand. */
export interface Filmed {
  readonly opponent: string;
  /** Other offenses of the archive's and the earlier weeks' film. */
  readonly others: Iterable<string>;
}

/** Tallies of one offense that do not count, because its film is here or because it is this week's opponent. */
export interface LeftOutTallies {
  readonly offense: string;
  readonly snaps: number;
  readonly why: 'opponent' | 'on_film';
}

/** Tallies that may join the film, and what was left out of them, offense by offense. */
export interface CountsBesideFilm {
  readonly rows: readonly CountRow[];
  readonly leftOut: readonly LeftOutTallies[];
}

/**
 * Tallies without those of offenses with film here: tallies do not say which games they count, so both together
 * would count some snaps twice. The film stays, for it says more. Names are the same without regard to case and space.
 */
export function countsBesideFilm(counts: readonly CountRow[], { opponent, others }: Filmed): CountsBesideFilm {
  const [theirs, filmed] = [plain(opponent), new Set([...others].map(plain))];
  const left = counts.filter(({ offense }) => plain(offense) === theirs || filmed.has(plain(offense)));
  if (left.length === 0) return { rows: counts, leftOut: [] };
  const gone = new Set(left);
  const names = new Map(left.map(({ offense }) => [plain(offense), offense.trim()]));
  const leftOut = [...names].sort().map(
    ([key, offense]): LeftOutTallies => ({
      offense,
      snaps: countedSnaps(left.filter((row) => plain(row.offense) === key)),
      why: key === theirs ? 'opponent' : 'on_film',
    }),
  );
  return { rows: counts.filter((row) => !gone.has(row)), leftOut };
}

function plain(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}
