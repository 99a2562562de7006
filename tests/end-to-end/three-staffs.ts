import { createRandom } from '../../src/stats/random.ts';
import { makeWorkbook, type WorkbookCell } from '../ingest/make-workbook.ts';

/** An invented snap as it truly was. */
interface TrueSnap {
  readonly game: 1 | 2;
  readonly number: number;
  readonly down: number;
  readonly toGo: number;
  readonly yards: number;
  readonly isGoal: boolean;
  readonly play: (typeof PLAYS)[number];
  readonly gain: number;
  readonly strength: 'Lt' | 'Rt';
  readonly moved: boolean;
  readonly back: string;
}

/** Kinds of plays with the share of snaps in which they come, how they end, and what they are in our words. */
const PLAYS = [
  { says: 'Rush', share: 0.42, kind: 'run', ends: ['Rush'] },
  { says: 'QB Run', share: 0.08, kind: 'quarterback_run', ends: ['Rush'] },
  { says: 'Screen', share: 0.1, kind: 'screen', ends: ['C', 'C', 'X'] },
  { says: 'Quick', share: 0.2, kind: 'quick', ends: ['C', 'C', 'X'] },
  { says: 'Drop', share: 0.2, kind: 'dropback', ends: ['C', 'X', 'SK', 'INT'] },
] as const;

const BACKS = ['stays', 'swing', 'thru'];

/** Two invented games of about 90 snaps each; every downfield fact follows from the one before. */
export function trueSnaps(seed: number): readonly TrueSnap[] {
  const random = createRandom(seed);
  const pick = <T>(list: readonly T[]) => list[Math.floor(random.uniform() * list.length)] as T;
  const snaps: TrueSnap[] = [];
  let state = { down: 1, toGo: 10, yards: 70 };
  for (let i = 0; i < 182; i++) {
    const game = i < 91 ? 1 : 2;
    if (i === 91) state = { down: 1, toGo: 10, yards: 65 };
    const play = playAt(random.uniform());
    const gain = Math.min(state.yards, Math.floor(random.uniform() * 12) - (random.uniform() < 0.15 ? 6 : 0));
    snaps.push({
      ...{ game, number: game === 1 ? i + 1 : i - 90, ...state, isGoal: state.toGo === state.yards, play, gain },
      strength: pick(['Lt', 'Rt', 'Rt'] as const),
      moved: random.uniform() < 0.35,
      back: pick(BACKS),
    });
    state = nextState(state, gain);
  }
  return snaps;
}

function playAt(draw: number): TrueSnap['play'] {
  let left = draw;
  for (const play of PLAYS) {
    left -= play.share;
    if (left < 0) return play;
  }
  return PLAYS[0];
}

function nextState({ down, toGo, yards }: { down: number; toGo: number; yards: number }, gain: number) {
  const left = Math.min(99, yards - gain);
  const fresh = (at: number) => ({ down: 1, toGo: Math.min(10, at), yards: at });
  if (left <= 0) return fresh(75);
  if (gain >= toGo) return fresh(left);
  return down === 4
    ? fresh(Math.max(40, 100 - left))
    : { down: down + 1, toGo: Math.min(99, toGo - gain), yards: left };
}

/** How a snap ended, the same each time it is asked. */
export function endOf({ play, number }: TrueSnap): string {
  return play.ends[number % play.ends.length] as string;
}

const isPass = ({ play }: TrueSnap) => play.kind !== 'run' && play.kind !== 'quarterback_run';
const ordinal = (down: number) => ['1st', '2nd', '3rd', '4th'][down - 1] ?? '';
const place = (yards: number) => (yards === 50 ? '50' : yards > 50 ? `Own ${100 - yards}` : `Opp ${yards}`);

/** A staff that keeps a workbook of five columns: no yard line, no game, no snap numbers. */
export function bareWorkbook(snaps: readonly TrueSnap[]): Uint8Array {
  const rows = snaps.map((snap): WorkbookCell[] => [
    snap.down,
    snap.toGo,
    isPass(snap) ? 'Pass' : 'Run',
    snap.gain,
    endOf(snap),
  ]);
  return makeWorkbook([[['Down', 'Distance', 'R/P', 'Yards', 'Result'], ...rows]]);
}

/** A staff that pastes tabs: two games, the numbers of the second from 1, goal to go as G, a side, and motion as Y and N. */
export function middlingTsv(snaps: readonly TrueSnap[]): string {
  const rows = snaps.map((snap) => [
    snap.number,
    `${ordinal(snap.down)} & ${snap.isGoal ? 'G' : snap.toGo}`,
    place(snap.yards),
    snap.strength,
    snap.moved ? 'Y' : 'N',
    snap.play.says,
    snap.gain,
  ]);
  const head = ['Snap', 'Situation', 'Ball on', 'Side', 'Motion', 'Kind', 'Yards'];
  return [head, ...rows].map((row) => `${row.join('\t')}\n`).join('');
}

/** A staff that charts everything, in words of its own. */
export function richCsv(snaps: readonly TrueSnap[]): string {
  const rows = snaps.map((snap) => [
    `Game ${snap.game}`,
    snap.number,
    snap.down,
    snap.isGoal ? '& G' : snap.toGo,
    place(snap.yards),
    snap.strength,
    snap.number % 9 === 0 ? 'sideways' : snap.moved ? 'Jet' : 'None',
    snap.play.says,
    isPass(snap) ? snap.back : '',
    snap.gain,
    endOf(snap),
  ]);
  const head = ['Game', 'Snap', 'Down', 'Distance', 'Ball on', 'Strength', 'Motion', 'Kind', 'RB', 'Yards', 'Result'];
  return [head, ...rows].map((row) => `${row.join(',')}\n`).join('');
}
