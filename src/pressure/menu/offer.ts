import type { Call, GivenUp } from '../../game/call-library.ts';
import { familyFacts, THEORIES, type TheoryName } from '../../game/families.ts';
import { type MenuInput, plain, pressuresInOrder } from './input.ts';

/** Why a call cannot be on the menu at all. */
export type OutReason =
  | { readonly kind: 'banned' }
  | { readonly kind: 'not_sound'; readonly fault: string }
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
 * The sound, scored pressures that are not banned and give up nothing this opponent does often; every other pressure
 * with its reason. Calls of the four-man base are neither: the base is always carried and takes no place on the menu.
 *
 * @param lifted - names of banned calls that are offered all the same
 */
export function menuOffer(input: MenuInput, lifted: ReadonlySet<string> = new Set()): MenuOffer {
  const pressures = pressuresInOrder(input.library);
  const banned = new Set(input.settings.menu.ban.map(plain).filter((name) => !lifted.has(name)));
  const unfit = new Map(pressures.map((call) => [call, unfitness(call, input)]));
  const reason = (call: Call): OutReason | null =>
    banned.has(plain(call.name)) ? { kind: 'banned' } : (unfit.get(call) ?? null);
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

function unfitness(call: Call, { soundness, scores, holes, settings }: MenuInput): OutReason | null {
  const fault = soundness.find((found) => found.call === call.name && !found.declared);
  if (fault) return { kind: 'not_sound', fault: fault.words };
  const found = scores.calls.filter((score) => score.call === call.name);
  if (found.length === 0 || !found.every(({ points }) => Number.isFinite(points.mean))) return { kind: 'not_scored' };
  const met = holes
    .filter((hole) => hole.call === call.name && (hole.met.estimate ?? 0) > settings.menu.hole_share)
    .sort((a, b) => (b.met.estimate ?? 0) - (a.met.estimate ?? 0))[0];
  return met ? { kind: 'hole', hole: met.hole, count: met.met.count, trials: met.met.trials } : null;
}
