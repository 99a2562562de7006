import { type Choice, type ChosenMenu, callsAGame, choose } from './chosen.ts';
import { type CompiledMenu, compileMenu } from './compile.ts';
import { difference } from './difference.ts';
import type { MenuInput, MenuSettings } from './input.ts';
import type { LimitPrice, LimitStep } from './result.ts';
import type { MenuRule, RuleKind } from './rule.ts';

/** A limit loosened by a step a staff could really take. */
interface Loosened {
  readonly limit: LimitPrice['limit'];
  readonly of?: string;
  readonly step: LimitStep;
  readonly change?: Partial<MenuSettings>;
  readonly lift?: MenuRule;
  /** Points a game that may be given up more. */
  readonly morePoints?: number;
}

/** Points a game a menu may give up, what the limits force of it, and whether a better fit would give up more. */
export interface RegretLimit {
  readonly most: number;
  readonly forced: number;
  readonly binds: boolean;
}

/** The chosen menu and the points it may give up. */
export interface PricedMenu {
  readonly compiled: CompiledMenu;
  readonly choice: Choice;
  readonly regret: RegretLimit;
}

/** What each limit that binds costs, found by choosing again with that limit loosened by one step. */
export function limitPrices(input: MenuInput, priced: PricedMenu): LimitPrice[] {
  return steps(input, priced).map((loosened) => priceOf(input, priced, loosened));
}

function priceOf(input: MenuInput, { choice, regret }: PricedMenu, loosened: Loosened): LimitPrice {
  const { limit, of, step, change = {}, lift, morePoints = 0 } = loosened;
  const settings = { ...input.settings, menu: { ...input.settings.menu, ...change } };
  const { problem } = compileMenu({ ...input, settings }, lift ? [lift] : []);
  const again = choose({ problem, aim: { kind: 'fit', mostGivenUp: regret.most + morePoints } }, input.exact);
  const gain = Math.max(0, (again?.menu.worth ?? choice.menu.worth) - choice.menu.worth);
  const same = { added: [], dropped: [] };
  const moved = again === null || gain < NOTHING ? same : difference(problem, again.menu, nameSet(input, choice));
  return { limit, ...(of === undefined ? {} : { of }), step, gain: gain < NOTHING ? 0 : gain, ...moved };
}

/** Less than this many snaps a game is the solver's rounding. */
const NOTHING = 1e-4;

function nameSet(input: MenuInput, { menu }: Choice): ReadonlySet<string> {
  const { problem } = compileMenu(input);
  return new Set(menu.set.map((c) => problem.candidates[c]?.call.name ?? ''));
}

/** A limit that is a number, with the next number a staff would take. */
interface NumberStep {
  readonly limit: RuleKind & LimitPrice['limit'];
  readonly by: number;
  readonly change: Partial<MenuSettings>;
}

/** The limits that bind: loosening any other leaves the menu as it is, as far as one step goes. */
function steps({ settings }: MenuInput, { compiled, choice, regret }: PricedMenu): Loosened[] {
  const { menu } = settings;
  const bound = bindingKinds(compiled, choice);
  const numbers: readonly NumberStep[] = [
    { limit: 'size', by: 1, change: { size: menu.size + 1 } },
    { limit: 'new_calls', by: 1, change: { new_calls: menu.new_calls + 1 } },
    { limit: 'reps', by: 10, change: { reps: menu.reps + 10 } },
    { limit: 'path', by: 0.1, change: { path_share: Math.min(1, menu.path_share + 0.1) } },
    { limit: 'add_on', by: 0.1, change: { add_on_share: Math.min(1, menu.add_on_share + 0.1) } },
  ];
  const more = numbers
    .filter(({ limit }) => bound.has(limit))
    .map(({ limit, by, change }): Loosened => ({ limit, step: { kind: 'more', by }, change }));
  const lifts = compiled.rules
    .filter(({ kind, of = '' }) => bound.has(`${kind} ${of}`) || (of === '' && kind === 'pairing' && bound.has(kind)))
    .map(({ kind, of, ...rule }): Loosened => {
      const lift = { kind, ...rule, ...(of === undefined ? {} : { of }) };
      return { limit: kind, ...(of === undefined ? {} : { of }), step: { kind: 'lift' }, lift };
    });
  const morePoints: Loosened = { limit: 'regret', step: { kind: 'more', by: 0.2 }, morePoints: 0.2 };
  return [...more, ...lifts, ...(regret.binds ? [morePoints] : [])];
}

/** The kinds of limits that leave no room at the chosen menu; theories, musts and bans with their name. */
function bindingKinds({ problem, rules }: CompiledMenu, { menu }: Choice): ReadonlySet<string> {
  const { limits } = problem;
  const carried = menu.set.map((c) => problem.candidates[c]);
  const total = menu.set.reduce((sum, _, i) => sum + callsAGame(menu, i), 0);
  const onPath = (path: string) =>
    menu.set.reduce((sum, _, i) => sum + (carried[i]?.call.path === path ? callsAGame(menu, i) : 0), 0);
  const tight = (value: number, limit: number | null) => limit !== null && value >= limit - ROOM;
  const paths = [...new Set(carried.map((candidate) => candidate?.call.path ?? ''))];
  const found = new Set<string>();
  if (tight(menu.set.length, limits.size)) found.add('size');
  if (tight(carried.filter((candidate) => candidate?.isNew).length, limits.newCalls)) found.add('new_calls');
  if (tight(menu.reps + LEAST_REPS, limits.reps)) found.add('reps');
  if (paths.some((path) => tight(onPath(path) / total, limits.pathShare))) found.add('path');
  if (limits.paths.length > 0) found.add('pairing');
  for (const { kind, of = '' } of rules) {
    const few = carried.filter((candidate) => candidate?.theory === of).length === 1;
    if (kind === 'must' || kind === 'ban' || (kind === 'theory' && few && isForced(problem, menu, of))) {
      found.add(`${kind} ${of}`);
    }
  }
  return found;
}

/** Whether the only call of a theory is called no more than it has to be: then the theory holds it in. */
function isForced({ candidates, limits }: CompiledMenu['problem'], menu: ChosenMenu, theory: string): boolean {
  return menu.set.some((c, i) => candidates[c]?.theory === theory && callsAGame(menu, i) <= limits.leastCalls + ROOM);
}

const ROOM = 1e-3;

/** Reps are tight when what is left would teach hardly a call. Judgment. */
const LEAST_REPS = 10;
