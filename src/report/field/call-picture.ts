import type { Call, CallLibrary, Lane, Role } from '../../game/call-library.ts';
import { type CoverSpot, coverSpot } from './cover-spot.ts';
import type { FieldPoint } from './field-size.ts';
import { type OffenseSet, offenseSet } from './offense-set.ts';
import { roleLetters } from './role-letters.ts';

/** A rusher as drawn: where he starts, where he crosses the line, where he ends. */
export interface RushPath {
  readonly letters: string;
  readonly way: Call['rush'][number]['way'];
  readonly peels: boolean;
  readonly from: FieldPoint;
  readonly crosses: FieldPoint;
  readonly to: FieldPoint;
}

/** A cover man as drawn. */
export interface CoverPath {
  readonly letters: string;
  readonly adds: boolean;
  readonly from: FieldPoint;
  readonly spot: CoverSpot;
}

/** A call laid out on the field, in yards. */
export interface CallPicture {
  readonly offense: OffenseSet;
  readonly rush: readonly RushPath[];
  readonly cover: readonly CoverPath[];
  /** Which side of the drawing the call is sent from. */
  readonly sentFrom: 'field' | 'boundary';
}

/** Lays a call out on the field with the ball on the left hash; a call sent from the boundary comes from the left. */
export function callPicture(library: CallLibrary, call: Call): CallPicture {
  const offense = offenseSet(library.level);
  const near = call.sent_from === 'boundary' ? -1 : 1;
  const letters = roleLetters(library.roles);
  const context: Context = { offense, near, letters, roles: library.roles };
  return {
    offense,
    rush: call.rush.map((rusher) => rushPath(rusher, context)),
    cover: call.cover.map((man) => coverPath(man, context)),
    sentFrom: near === 1 ? 'field' : 'boundary',
  };
}

interface Context {
  readonly offense: OffenseSet;
  readonly near: 1 | -1;
  readonly letters: ReadonlyMap<string, string>;
  readonly roles: readonly Role[];
}

/** Yards from the ball at which each lane crosses the line; usual splits of a line, judgment. */
const LANE_YARDS: Readonly<Record<Lane, number>> = {
  far_D: -6,
  far_C: -3.9,
  far_B: -2.3,
  far_A: -0.8,
  near_A: 0.8,
  near_B: 2.3,
  near_C: 3.9,
  near_D: 6,
};

/** How far inside his lane a rusher ends: enough to aim at the passer, little enough that lanes stay apart; judgment. */
const PINCH = 0.6;

function rushPath(rusher: Call['rush'][number], context: Context): RushPath {
  const { offense, near } = context;
  const lane = near * LANE_YARDS[rusher.lane];
  const crosses = { across: offense.ball.across + lane, past: 0 };
  const to = { across: offense.passer.across + lane * PINCH, past: offense.passer.past + 1.6 };
  const from = rusher.from
    ? { across: offense.ball.across + near * rusher.from.lateral, past: rusher.from.depth }
    : startOf(rusher.role, context);
  return { letters: lettersOf(rusher.role, context), way: rusher.way, peels: rusher.peels, from, crosses, to };
}

function coverPath(man: Call['cover'][number], context: Context): CoverPath {
  const spot = coverSpot(man.job, context.near, context.offense);
  return { letters: lettersOf(man.role, context), adds: man.adds, from: startOf(man.role, context), spot };
}

function startOf(id: string, { roles, offense }: Context): FieldPoint {
  const { lateral, depth } = roles.find((role) => role.id === id) as Role;
  return { across: offense.ball.across + lateral, past: depth };
}

function lettersOf(id: string, { letters }: Context): string {
  return letters.get(id) as string;
}
