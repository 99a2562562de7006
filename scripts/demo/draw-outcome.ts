import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import { pick } from './pick.ts';

/** How a snap ended: yards before the goal line cuts them, and the cells a charter writes. */
export interface Outcome {
  readonly gain: number;
  readonly turnover: boolean;
  readonly cells: SnapRecord;
}

/** What a play depends on: its kind, how many rushed, and how good the offense is in yards. */
export interface Play {
  readonly kind: string;
  readonly rushers: number;
  readonly strength: number;
}

/** Draws how a run ended. */
export function runOutcome(play: Play, random: Random): Outcome {
  const burst = random.uniform() < 0.09 ? 14 * random.uniform() : 0;
  const gain = 3.1 + play.strength + 3.2 * random.normal() + burst + (play.kind === 'quarterback_run' ? 0.6 : 0);
  const fumble = random.uniform() < 0.012;
  return { gain, turnover: fumble, cells: { result: fumble ? 'fumble_lost' : 'rush' } };
}

interface Throw {
  readonly time: number;
  readonly depth: number;
  readonly caught: number;
  readonly after: number;
  readonly zones: readonly (readonly [string, number])[];
}

const DROPBACK: Throw = {
  time: 2.6,
  depth: 9,
  caught: 0.56,
  after: 3.5,
  zones: [
    ['middle', 0.4],
    ['outside', 0.4],
    ['flat', 0.2],
  ],
};
const THROWS: Readonly<Record<string, Throw>> = {
  screen: {
    time: 1.75,
    depth: -3,
    caught: 0.84,
    after: 7,
    zones: [
      ['behind', 0.8],
      ['flat', 0.2],
    ],
  },
  quick: {
    time: 1.7,
    depth: 5,
    caught: 0.66,
    after: 3,
    zones: [
      ['flat', 0.5],
      ['middle', 0.3],
      ['outside', 0.2],
    ],
  },
  dropback: DROPBACK,
  deep_shot: {
    time: 3.0,
    depth: 26,
    caught: 0.34,
    after: 6,
    zones: [
      ['deep_outside', 0.65],
      ['deep_middle', 0.35],
    ],
  },
  movement: {
    time: 3.2,
    depth: 8,
    caught: 0.58,
    after: 4,
    zones: [
      ['flat', 0.45],
      ['outside', 0.4],
      ['middle', 0.15],
    ],
  },
};

/** Draws how a pass ended: sack, scramble, interception, incompletion or catch. */
export function passOutcome(play: Play, random: Random): Outcome {
  const kind = THROWS[play.kind] ?? DROPBACK;
  const time = kind.time * Math.exp(0.22 * random.normal());
  const extra = play.rushers - 4;
  if (random.uniform() < sackShare(time, extra))
    return { gain: -4 - 4 * random.uniform(), turnover: false, cells: { result: 'sack' } };
  if (time > 2.4 && random.uniform() < 0.07)
    return { gain: 2 + 6 * random.uniform(), turnover: false, cells: { result: 'scramble' } };
  const depth = Math.round(kind.depth + 2.5 * random.normal());
  const cells = {
    time_to_throw: Math.round(time * 10) / 10,
    target_depth: depth,
    target_zone: pick(random, kind.zones),
  };
  if (random.uniform() < 0.028) return { gain: 0, turnover: true, cells: { ...cells, result: 'interception' } };
  if (random.uniform() > kind.caught - 0.03 * extra)
    return { gain: 0, turnover: false, cells: { ...cells, result: 'incomplete' } };
  return {
    gain: depth + kind.after * random.gamma(0.9) + play.strength,
    turnover: false,
    cells: { ...cells, result: 'complete' },
  };
}

function sackShare(time: number, extraRushers: number): number {
  return time > 2.1 ? 0.06 + 0.03 * extraRushers + 0.05 * (time - 2.1) : 0.005;
}
