import { type CountRow, countedSnaps } from './count-row.ts';

/** Offenses with film at hand. */
export interface Filmed {
  readonly opponent: string;
  /** Other offenses of the archive's and the earlier weeks' film. */
  readonly others: Iterable<string>;
}

/** Tallies that may join the film, and what was left out of them, a sentence for each offense. */
export interface CountsBesideFilm {
  readonly rows: readonly CountRow[];
  readonly notes: readonly string[];
}

/**
 * Tallies without those of offenses with film here: tallies do not say which games they count, so both together
 * would count some snaps twice. The film stays, for it says more. Names are the same without regard to case and space.
 */
export function countsBesideFilm(counts: readonly CountRow[], { opponent, others }: Filmed): CountsBesideFilm {
  const [theirs, filmed] = [plain(opponent), new Set([...others].map(plain))];
  const left = counts.filter(({ offense }) => plain(offense) === theirs || filmed.has(plain(offense)));
  if (left.length === 0) return { rows: counts, notes: [] };
  const gone = new Set(left);
  const names = new Map(left.map(({ offense }) => [plain(offense), offense.trim()]));
  const notes = [...names].sort().map(([key, name]) => {
    const snaps = countedSnaps(left.filter(({ offense }) => plain(offense) === key));
    const why = key === theirs ? "this week's opponent is forecast from its film" : 'its film is here and counts';
    return `the tallies of ${name} (${snaps} snaps) are left out: ${why}, and no snap may count twice`;
  });
  return { rows: counts.filter((row) => !gone.has(row)), notes };
}

function plain(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}
