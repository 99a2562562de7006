import type { Call } from '../../game/call-library.ts';
import type { FitTrigger } from '../../game/fit-rules.ts';
import { type AskedRule, askTrigger } from './asked-rule.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import { FIT_LOOKS, type FitAdjustment, type FitLook, type LookCall } from './fit-result.ts';
import { netWhere } from './net-where.ts';
import type { ReadFilm, Theory } from './theory.ts';

/** How each look is recognized. */
const LOOK: Readonly<Record<FitLook, FitTrigger>> = {
  heavy: { tight_ends: ['two_or_more'] },
  two_backs: { backs: ['two_or_more'] },
  empty: { receivers: ['empty'] },
  trips: { receivers: ['trips'] },
  fast_motion: { motion: ['fast'] },
  fast_tempo: { tempo: ['fast'] },
  checked: { checked: ['yes'] },
};

/** A call with its rules read on their film. */
export interface ReadCall {
  readonly call: Call;
  readonly theory: Theory;
}

/** What adjustments are worked out from. */
export interface AdjustmentInput {
  readonly film: ReadFilm;
  readonly calls: readonly ReadCall[];
  readonly all: ExpectedSnaps;
}

/** For every look how often this opponent shows it, and which calls stay, swap with another of their path, or leave. */
export function adjustments({ film, calls, all }: AdjustmentInput): FitAdjustment[] {
  return FIT_LOOKS.map((look) => {
    const asked = askTrigger(LOOK[look], film);
    const count = asked.met.filter((met) => met === true).length;
    return {
      look,
      count,
      trials: asked.met.filter((met) => met !== undefined).length,
      calls: count > 0 ? callsOn(calls, asked, all) : [],
    };
  });
}

/** A call gives way where it is wrong more often than right by this share of such snaps; judgment. */
const GIVES_WAY = 0.25;

function callsOn(calls: readonly ReadCall[], asked: AskedRule, all: ExpectedSnaps): LookCall[] {
  const nets = calls.map(({ call, theory }) => ({ call, net: netWhere(theory, [asked], all).met ?? 0 }));
  return nets.map(({ call, net }) => {
    const givesWay = net < -GIVES_WAY;
    const swapTo = givesWay ? bestOfPath(nets, call) : null;
    return { call: call.name, net, does: doesOn(givesWay, swapTo), swapTo };
  });
}

function doesOn(givesWay: boolean, swapTo: string | null): LookCall['does'] {
  if (!givesWay) return 'stays';
  return swapTo === null ? 'leaves' : 'swaps';
}

/** The call of the same path that is most right there; null where none is right as often as wrong. */
function bestOfPath(
  nets: readonly { readonly call: Call; readonly net: number }[],
  { name, path }: Call,
): string | null {
  const [best] = nets
    .filter(({ call, net }) => call.path === path && call.name !== name && net >= 0)
    .sort((a, b) => b.net - a.net || (a.call.name < b.call.name ? -1 : 1));
  return best?.call.name ?? null;
}
