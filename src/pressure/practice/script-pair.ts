import { FAMILIES, type Family } from '../../game/families.ts';
import { LOOK_KINDS, type LookKind } from '../../game/look-kinds.ts';
import type { MenuCall } from '../menu/result.ts';
import { type LookSplits, lookShares } from './look-card-share.ts';
import type { RepPair } from './rep-count.ts';
import { type RepReason, type RequiredLook, requiredLooks } from './rep-look.ts';
import type { ScriptInput } from './script-input.ts';

/** A call of the menu against one kind of look. */
export interface ScriptPair extends RepPair {
  readonly call: string;
  readonly look: LookKind;
  readonly path: string;
  readonly family: Family;
  readonly coverage: string;
  readonly sentFrom: string;
  readonly isNew: boolean;
  readonly reasons: readonly RepReason[];
  /** Worth of each situation for this pair: snaps expected, times the call's mix, times the look's share. */
  readonly situations: ReadonlyMap<string, number>;
}

/**
 * Part of the repetitions beyond installing that follows how often the menu calls each call; the other part follows what
 * defense.yaml asks for to keep the calls we have. Judgment: a call that is called most must be repped most, and one
 * that is called once a game must still be kept.
 */
export const MIX_PART = 0.5;

/**
 * Every call of the menu against every kind of look, with its weight: its part in the week's repetitions, times the
 * look's share where the call is called. New calls come first.
 */
export function scriptPairs(input: ScriptInput, splits: LookSplits): readonly ScriptPair[] {
  const calls = input.menu.calls.map((call) => ({ call, isNew: isNewCall(input, call.call) }));
  const ordered = [...calls.filter(({ isNew }) => isNew), ...calls.filter(({ isNew }) => !isNew)];
  const called = ordered.reduce((sum, { call }) => sum + call.expectedCalls, 0);
  const kept = ordered.reduce((sum, { call, isNew }) => sum + (isNew ? 0 : call.reps), 0);
  return ordered.flatMap(({ call, isNew }) => {
    const byMix = called === 0 ? 0 : (MIX_PART * call.expectedCalls) / called;
    const toKeep = kept === 0 || isNew ? 0 : ((1 - MIX_PART) * call.reps) / kept;
    return pairsOfCall(input, splits, { call, isNew, part: byMix + toKeep });
  });
}

interface CallPart {
  readonly call: MenuCall;
  readonly isNew: boolean;
  /** Part of the repetitions beyond installing. */
  readonly part: number;
}

function pairsOfCall(input: ScriptInput, splits: LookSplits, { call, isNew, part }: CallPart): ScriptPair[] {
  const family = FAMILIES.find((name) => name === call.family) ?? 'base';
  const situations = callSituations(input, call);
  const shares = sharesOfCall(input, splits, situations);
  const required = requiredLooks({ call: call.call, family, shares: shares.overall, scores: input.scores, situations });
  const pairs = LOOK_KINDS.map(({ id }): ScriptPair => {
    const found = required.find(({ look }) => look === id);
    return {
      call: call.call,
      look: id,
      path: call.path,
      family,
      coverage: call.coverage,
      sentFrom: input.library.calls.find(({ name }) => name === call.call)?.sent_from ?? 'either',
      isNew,
      reasons: found?.reasons ?? ['forecast'],
      install: isNew ? call.reps * (shares.overall.get(id) ?? 0) : 0,
      weight: part * (shares.overall.get(id) ?? 0),
      need: found ? needOf(found, required, isNew) : null,
      situations: shares.bySituation.get(id) ?? situations,
    };
  });
  return pairs.sort(neededFirst);
}

/** Looks that must be seen, in their order; then the others, the likelier first. */
function neededFirst(a: ScriptPair, b: ScriptPair): number {
  const need = (pair: ScriptPair) => pair.need ?? Number.MAX_SAFE_INTEGER;
  return need(a) - need(b) || b.weight - a.weight;
}

/** Where a call is called: snaps expected times its share of the mix; every situation when it is in no mix. */
function callSituations(input: ScriptInput, call: MenuCall): ReadonlyMap<string, number> {
  const snaps = new Map(input.menu.situations.map(({ id, expectedSnaps }) => [id, expectedSnaps]));
  const called = call.mix
    .filter(({ situation }) => situation !== 'all')
    .map(({ situation, share }): [string, number] => [situation, share * (snaps.get(situation) ?? 0)]);
  const present = called.filter(([, weight]) => weight > 0);
  if (present.length > 0) return new Map(present);
  return new Map([...snaps].filter(([id, count]) => id !== 'all' && count > 0));
}

interface CallShares {
  readonly overall: ReadonlyMap<LookKind, number>;
  readonly bySituation: ReadonlyMap<LookKind, ReadonlyMap<string, number>>;
}

function sharesOfCall(input: ScriptInput, splits: LookSplits, situations: ReadonlyMap<string, number>): CallShares {
  const total = [...situations.values()].reduce((sum, weight) => sum + weight, 0);
  const overall = new Map<LookKind, number>();
  const bySituation = new Map<LookKind, Map<string, number>>();
  for (const [situation, weight] of situations) {
    for (const [look, share] of lookShares(input.forecast, situation, splits)) {
      overall.set(look, (overall.get(look) ?? 0) + (weight * share) / total);
      if (share > 0) bySituation.set(look, (bySituation.get(look) ?? new Map()).set(situation, weight * share));
    }
  }
  return { overall, bySituation };
}

/** Every call is served once before any is served twice: its make-or-break look first, then the worst, then the likeliest. */
function needOf(found: RequiredLook, required: readonly RequiredLook[], isNew: boolean): number {
  const ranked = [...required].sort((a, b) => rankOf(a) - rankOf(b));
  return 2 * ranked.indexOf(found) + (isNew ? 0 : 1);
}

function rankOf({ reasons }: RequiredLook): number {
  if (reasons.includes('make_or_break')) return 0;
  return reasons.includes('worst') ? 1 : 2;
}

function isNewCall(input: ScriptInput, name: string): boolean {
  return input.library.calls.find((call) => call.name === name)?.installed === false;
}
