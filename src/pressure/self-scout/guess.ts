import { clusteredMean } from '../../stats/clustered-mean.ts';
import { share } from '../../stats/share.ts';
import { studentWidth } from '../../stats/student.ts';
import type { LeftOutShares } from '../forecast/left-out-shares.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { planLevels, type SnapCells } from '../snap/snap-cells.ts';
import { OWN_STRENGTHS, ownLeftOut } from './own-chain.ts';
import type { GuessRate } from './result.ts';
import { codesOf, type OwnSnap, pairedPressures } from './snaps.ts';

/** What a reader may know before he guesses. */
const READERS = ['nothing', 'situation', 'path', 'path_and_situation'] as const;

/** Fewer games make no interval over games. Judgment: the spread of three numbers says nothing. */
const FEWEST_GAMES = 4;

/**
 * How often a reader of our film, who has all games but the one he guesses in, names the coverage behind a pressure: he
 * fits to our film the very chain we fit to an opponent's, and names the likeliest class. Empty when nothing was charted
 * or there is one game only.
 *
 * @param cells - situation and moment of every snap, in the order of `snaps`
 */
export function guessRates(snaps: readonly OwnSnap[], cells: SnapCells): GuessRate[] {
  const charted = pairedPressures(snaps);
  const games = [...new Set(charted.map(({ game }) => game))];
  if (games.length < 2) return [];
  const rows = games.map((game) => charted.filter((snap) => snap.game === game).map(({ index }) => index));
  const coverages = coverageCodes(snaps, charted);
  const guesses = READERS.map((knows) => {
    const question = { target: coverages, ...knowledge(knows, snaps, cells) };
    const expected = ownLeftOut(question, rows, snaps.length);
    return {
      knows,
      right: charted.map(({ index }) => hit(expected, index, coverages.codes[index] as number)),
      expected,
    };
  });
  const clusters = charted.map(({ game }) => game);
  return guesses.map(({ knows, right, expected }) => ({
    knows,
    share: share(
      right.reduce((sum, one) => sum + one, 0),
      charted.length,
    ),
    byGame: overGames(right, clusters, [0, 1]),
    gain: knows === 'nothing' ? null : gainOver(guesses[0]?.right ?? [], right, clusters),
    doubtBits: meanDoubt(expected, charted, coverages.codes),
  }));
}

function coverageCodes(snaps: readonly OwnSnap[], charted: readonly OwnSnap[]) {
  const asked = new Set(charted);
  const { codes, words } = codesOf(
    snaps.map((snap) => (asked.has(snap) ? snap.coverage : undefined)),
    NOT_KNOWN,
  );
  return { codes: Uint8Array.from(codes), classes: words.length };
}

function knowledge(knows: GuessRate['knows'], snaps: readonly OwnSnap[], cells: SnapCells) {
  const { codes } = codesOf(
    snaps.map(({ path }) => path),
    NOT_KNOWN,
  );
  const path = Uint8Array.from(codes);
  const situation = planLevels(cells);
  switch (knows) {
    case 'nothing':
      return { levels: [], strengths: [] };
    case 'situation':
      return { levels: situation, strengths: OWN_STRENGTHS.coverageBySituation };
    case 'path':
      return { levels: [path], strengths: OWN_STRENGTHS.coverageByPath };
    case 'path_and_situation':
      return { levels: [path, ...situation], strengths: OWN_STRENGTHS.coverageByPath };
    default:
      return knows satisfies never;
  }
}

/** 1 when the likeliest class is the one that came; of equal ones the first seen on film is named. */
function hit({ classes, shares }: LeftOutShares, row: number, came: number): number {
  let best = 0;
  for (let k = 1; k < classes; k++) {
    if ((shares[row * classes + k] as number) > (shares[row * classes + best] as number) + SAME) best = k;
  }
  return best === came ? 1 : 0;
}

const SAME = 1e-12;

function meanDoubt({ classes, shares }: LeftOutShares, charted: readonly OwnSnap[], codes: Uint8Array): number {
  const total = charted.reduce((sum, { index }) => {
    return sum - Math.log2(Math.max(LEAST, shares[index * classes + (codes[index] as number)] as number));
  }, 0);
  return total / charted.length;
}

const LEAST = 1e-15; // log of nothing; the chain's prior keeps every class above it

/** 95% interval of a mean over snaps with the game as the unit; null under four games. */
function overGames(values: readonly number[], games: readonly string[], [least, most]: readonly [number, number]) {
  const { mean, standardError, clusters } = clusteredMean(values, games);
  if (mean === null || standardError === null || clusters < FEWEST_GAMES) return null;
  const width = studentWidth(0.95, clusters - 1) * standardError;
  return { low: Math.max(least, mean - width), high: Math.min(most, mean + width) };
}

function gainOver(blind: readonly number[], right: readonly number[], games: readonly string[]) {
  const gains = right.map((one, i) => one - (blind[i] as number));
  const interval = overGames(gains, games, [-1, 1]);
  return interval && { difference: gains.reduce((sum, one) => sum + one, 0) / gains.length, ...interval };
}
