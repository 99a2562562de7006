import type { Call, GivenUp } from '../../game/call-library.ts';
import type { Family } from '../../game/families.ts';
import type { FitTrigger } from '../../game/fit-rules.ts';
import { type AskedRule, askTrigger, shareOf, shareSpread } from './asked-rule.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import { FIT_LOOKS, type FitAdjustment, type FitLook, type LookCall } from './fit-result.ts';
import { netWhere } from './net-where.ts';
import type { ReadFilm, Theory } from './theory.ts';

/** How each look is recognized, and what the library calls it where a call may give it up or adjust to it. */
const LOOK: Readonly<Record<FitLook, { readonly when: FitTrigger; readonly given?: GivenUp & keyof Call['adjust'] }>> =
  {
    heavy: { when: { tight_ends: ['two_or_more'] }, given: 'heavy' },
    two_backs: { when: { backs: ['two_or_more'] }, given: 'two_backs' },
    empty: { when: { receivers: ['empty'] }, given: 'empty' },
    trips: { when: { receivers: ['trips'] }, given: 'trips' },
    fast_motion: { when: { motion: ['fast'] }, given: 'fast_motion' },
    fast_tempo: { when: { tempo: ['fast'] } },
    checked: { when: { checked: ['yes'] } },
  };

/** A call with its rules read on their film. */
export interface ReadCall {
  readonly call: Call;
  readonly theory: Theory;
}

/** What adjustments are worked out from. */
export interface AdjustmentInput {
  readonly film: ReadFilm;
  readonly theories: ReadonlyMap<Family, Theory>;
  readonly calls: readonly ReadCall[];
  /** All their snaps first, then every situation. */
  readonly situations: readonly ExpectedSnaps[];
}

/** For every look how often this opponent shows it, and which calls stay, swap with another of their path, or leave. */
export function adjustments(input: AdjustmentInput): FitAdjustment[] {
  const [all, ...situations] = input.situations;
  if (!all) return [];
  return FIT_LOOKS.map((look) => {
    const asked = askTrigger(LOOK[look].when, input.film);
    const seen = asked.met.some((met) => met === true);
    return {
      look,
      share: shareSpread([asked], all),
      count: asked.met.filter((met) => met === true).length,
      trials: asked.met.filter((met) => met !== undefined).length,
      situations: situations.map((one) => ({ situation: one.situation, share: shareOf([asked], one) })),
      families: seen ? familiesOn(input, asked, all) : [],
      calls: seen ? callsOn({ calls: input.calls, look }, asked, all) : [],
    };
  });
}

function familiesOn({ theories }: AdjustmentInput, asked: AskedRule, all: ExpectedSnaps) {
  return [...theories].map(([family, theory]) => ({ family, net: netWhere(theory, [asked], all).met ?? 0 }));
}

interface LookCalls {
  readonly calls: readonly ReadCall[];
  readonly look: FitLook;
}

/** A call gives way where it is wrong more often than right by this share of such snaps; judgment. */
const GIVES_WAY = 0.25;

function callsOn({ calls, look }: LookCalls, asked: AskedRule, all: ExpectedSnaps): LookCall[] {
  const nets = calls.map(({ call, theory }) => ({ call, net: netWhere(theory, [asked], all).met ?? 0 }));
  return nets.map(({ call, net }) => {
    const givesWay = net < -GIVES_WAY;
    const swapTo = givesWay ? bestOfPath(nets, call) : null;
    return {
      call: call.name,
      family: call.family,
      library: libraryOn(call, look),
      net,
      does: doesOn(givesWay, swapTo),
      swapTo,
    };
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

function libraryOn(call: Call, look: FitLook): LookCall['library'] {
  const { given } = LOOK[look];
  if (given === undefined) return 'nothing';
  if (call.given.includes(given)) return 'given up';
  return call.adjust[given] === undefined ? 'nothing' : 'adjusted';
}
