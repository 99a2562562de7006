import type { Call, GivenUp } from '../../game/call-library.ts';
import { familyFacts, THEORIES, type TheoryName } from '../../game/families.ts';
import { plainName } from '../../game/plain-name.ts';
import type { Failure } from '../soundness/fault.ts';
import { closedCall } from './closed.ts';
import { type MenuInput, pressuresInOrder } from './input.ts';

/** Why a call cannot be on the menu at all. */
export type OutReason =
  | { readonly kind: 'banned' }
  | { readonly kind: 'not_sound'; readonly failure: Failure }
  | { readonly kind: 'not_scored' }
  | { readonly kind: 'hole'; readonly hole: GivenUp; readonly count: number; readonly trials: number };

/** The pressures a menu may be made of, in the order of their paths, and the others with the reason they are out. */
export interface MenuOffer {
  readonly calls: readonly Call[];
  readonly out: readonly { readonly call: string; readonly why: OutReason }[];
  /** Theories that the calls offered teach: one that nobody offers is not demanded. */
  readonly theories: readonly TheoryName[];
}

/**
 * The sound, scored pressures that are not banned and do not give up what this opponent does often everywhere; every
 * other pressure with its reason. Calls of the four-man base are neither: the base is always carried and takes no place on the menu.
 *
 * @param lifted - names of banned calls that are offered all the same
 */
export function menuOffer(input: MenuInput, lifted: ReadonlySet<string> = new Set()): MenuOffer {
  const pressures = pressuresInOrder(input.library);
  const banned = new Set(input.settings.menu.ban.map(plainName).filter((name) => !lifted.has(name)));
  const unfit = new Map(pressures.map((call) => [call, unfitness(call, input)]));
  const reason = (call: Call): OutReason | null =>
    banned.has(plainName(call.name)) ? { kind: 'banned' } : (unfit.get(call) ?? null);
  const calls = pressures.filter((call) => reason(call) === null);
  return {
    calls,
    out: pressures.flatMap((call) => {
      const why = reason(call);
      return why ? [{ call: call.name, why }] : [];
    }),
    theories: THEORIES.filter((theory) => calls.some((call) => familyFacts(call.family).theory === theory)),
  };
}

function unfitness(call: Call, input: MenuInput): OutReason | null {
  const { soundness, scores } = input;
  const fault = soundness.find((found) => found.call === call.name && !found.declared);
  if (fault) return { kind: 'not_sound', failure: fault.failure };
  const found = scores.calls.filter((score) => score.call === call.name);
  if (found.length === 0 || !found.every(({ points }) => Number.isFinite(points.mean))) return { kind: 'not_scored' };
  return closedEverywhere(call, input);
}

/** A call that is open on so few of their snaps that it cannot be carried. */
function closedEverywhere(call: Call, input: MenuInput): OutReason | null {
  const { hole, situations } = closedCall(input, call);
  const open = input.scores.situations.filter(({ id }) => id !== 'all' && !situations.has(id));
  const snaps = open.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  if (hole === null || snaps >= LEAST_OPEN) return null;
  return { kind: 'hole', hole: hole.hole, count: hole.met.count, trials: hole.met.trials };
}

/** Snaps a game on which a carried call must be open: it is called once, and never on every snap. Judgment. */
const LEAST_OPEN = 2;
