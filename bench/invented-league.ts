import type { Answer } from '../src/game/answers.ts';
import type { SnapRecord } from '../src/game/film.ts';
import { dirichletDraw } from '../src/stats/dirichlet-draw.ts';
import { nextUniform, type RandomState, randomState } from '../src/stats/random-state.ts';

/** An invented league, the opponent in it, and the games there are. */
export interface InventedLeague {
  readonly seed: string;
  /** Standard deviation of the run share over the league's offenses; other answers differ likewise. */
  readonly spread: number;
  /** Other offenses, four games each. */
  readonly archive: number;
  /** `average`: drawn from the league. Else his run share. */
  readonly opponent: 'average' | number;
  /** Snaps one game is worth as evidence of the next: the smaller, the more offenses sway. */
  readonly gameToGame: number;
  /** Whether the opponent runs and passes alike in every situation. */
  readonly ignoresSituations?: boolean;
}

/** Down, yards to go, how many of 100 snaps, and by how much a run is likelier there, as a logit. */
const SITUATIONS = [
  { down: 1, to_go: 10, weight: 42, run: 0.3 },
  { down: 2, to_go: 2, weight: 6, run: 0.9 },
  { down: 2, to_go: 5, weight: 9, run: 0.3 },
  { down: 2, to_go: 8, weight: 16, run: -0.3 },
  { down: 3, to_go: 2, weight: 7, run: 0.6 },
  { down: 3, to_go: 5, weight: 8, run: -1.6 },
  { down: 3, to_go: 9, weight: 12, run: -2.2 },
] as const;

const WEIGHTS = SITUATIONS.map(({ weight }) => weight / 100);
const RUNS: readonly Answer[] = ['run', 'quarterback_run'];
const PASSES: readonly Answer[] = ['screen', 'quick', 'dropback', 'deep_shot', 'movement'];
const RUN_MIX = [0.88, 0.12];
const PASS_MIX = [0.13, 0.27, 0.38, 0.1, 0.12];
const LEAGUE_RUN = 0.5;
const GAMES = 4;
const SNAPS = 60;

/** What one offense does. */
interface Habits {
  readonly run: number;
  readonly runs: readonly number[];
  readonly passes: readonly number[];
}

/** The snaps of an invented league: the opponent's five games under the name `Opponent`, the others' four each. */
export function inventedLeague(league: InventedLeague): SnapRecord[] {
  const state = randomState(league.seed);
  const worth = (LEAGUE_RUN * (1 - LEAGUE_RUN)) / league.spread ** 2 - 1;
  const habits = (run: number | 'average'): Habits => ({
    run: run === 'average' ? (around(state, [LEAGUE_RUN, 1 - LEAGUE_RUN], worth)[0] as number) : run,
    runs: around(state, RUN_MIX, worth),
    passes: around(state, PASS_MIX, worth),
  });
  const others = Array.from({ length: league.archive }, (_, i) => {
    const snapAt = snapMaker(state, habits('average'), false);
    return games(state, league, { name: `Other ${i + 1}`, games: GAMES, snapAt });
  });
  const snapAt = snapMaker(state, habits(league.opponent), league.ignoresSituations ?? false);
  return [...games(state, league, { name: 'Opponent', games: GAMES + 1, snapAt }), ...others.flat()];
}

interface Schedule {
  readonly name: string;
  readonly games: number;
  readonly snapAt: ReturnType<typeof snapMaker>;
}

function games(state: RandomState, { gameToGame }: InventedLeague, { name, games: number, snapAt }: Schedule) {
  return Array.from({ length: number }, (_, at) => {
    const tonight = (run: number) => around(state, [run, 1 - run], gameToGame)[0] as number;
    const snap = snapAt(tonight);
    const game = { offense: name, game: `${name} ${at + 1}`, week: at + 1 };
    return Array.from({ length: SNAPS }, (): SnapRecord => ({ ...game, ...snap() }));
  }).flat();
}

/** How an offense calls its snaps, its run share drawn for each game. */
function snapMaker(state: RandomState, { run, runs, passes }: Habits, flat: boolean) {
  return (tonight: (run: number) => number) => {
    const share = tonight(run);
    return (): SnapRecord => {
      const place = SITUATIONS[pick(state, WEIGHTS)] as (typeof SITUATIONS)[number];
      const chance = flat ? share : logistic(logit(share) + place.run);
      const isRun = pick(state, [chance, 1 - chance]) === 0;
      const play_kind = (isRun ? RUNS[pick(state, runs)] : PASSES[pick(state, passes)]) as Answer;
      return { down: place.down, to_go: place.to_go, play_kind };
    };
  };
}

function around(state: RandomState, shares: readonly number[], worth: number): readonly number[] {
  const alpha = shares.map((share) => share * worth);
  return [...dirichletDraw(state, alpha, new Float64Array(alpha.length))];
}

function pick(state: RandomState, shares: readonly number[]): number {
  let left = nextUniform(state);
  for (let i = 0; i < shares.length - 1; i++) {
    left -= shares[i] as number;
    if (left < 0) return i;
  }
  return shares.length - 1;
}

function logit(share: number): number {
  const inside = Math.min(0.999, Math.max(0.001, share));
  return Math.log(inside / (1 - inside));
}

function logistic(x: number): number {
  return 1 / (1 + Math.exp(-x));
}
