import type { Call } from '../../game/call-library.ts';
import { familyFacts, type TheoryName } from '../../game/families.ts';
import { plainName } from '../../game/plain-name.ts';
import { closedCall } from './closed.ts';
import { quietShare, READER_GAMES, readableSnaps, uncountedCalls } from './habits.ts';
import type { MenuInput } from './input.ts';
import { mixCells } from './mix-cells.ts';
import type { MenuCandidate, MenuLimits, MenuProblem, PathLimit } from './model.ts';
import { type MenuOffer, menuOffer } from './offer.ts';
import { pressureRates } from './pressure-rates.ts';
import { repsThisWeek } from './reps.ts';
import { LEAST_CALLS, type MenuRule, menuRules, ruleKey } from './rule.ts';
import { type CallWorth, callWorths, isPlainlyWrong } from './worth.ts';

/** A situation of the week with how often pressure is sent there. */
export interface PlannedSituation {
  readonly id: string;
  readonly expectedSnaps: number;
  readonly rate: number;
}

/** A week's menu as numbers, with the limits by name and the pressures that cannot be candidates. */
export interface CompiledMenu {
  readonly problem: MenuProblem;
  readonly situations: readonly PlannedSituation[];
  readonly offer: MenuOffer;
  readonly rules: readonly MenuRule[];
}

/** A path takes no more than this of one situation's pressures, or the situation reads the path. Judgment. */
const PATH_SHARE_HERE = 0.6;

/**
 * Compiles a week's menu.
 *
 * @param lifted - limits to leave out
 */
export function compileMenu(input: MenuInput, lifted: readonly MenuRule[] = []): CompiledMenu {
  const free = new Set(lifted.map(ruleKey));
  const bans = lifted.filter(({ kind }) => kind === 'ban').map(({ of }) => plainName(of ?? ''));
  const offer = menuOffer(input, new Set(bans));
  const worths = callWorths(input, offer.calls);
  const planned = plannedSituations(input, worths);
  const mixes = mixCells(planned);
  const candidates = offer.calls.map((call, c) => candidateOf(input, call, { worth: worths[c] as CallWorth, mixes }));
  const pressures = mixes.reduce((sum, mix) => sum + mix.pressures, 0);
  const limits = limitsOf(input, { offer, pressures }, free);
  const problem = {
    candidates,
    mixes,
    baseExplosives: planned.reduce((sum, { id, expectedSnaps }) => sum + expectedSnaps * baseExplosives(input, id), 0),
    limits,
    repPrice: input.settings.menu.rep_price,
  };
  return {
    problem,
    situations: planned,
    offer,
    rules: menuRules(input.settings.menu, demandedTheories(input, offer)),
  };
}

/** Explosives a snap against the base; where the base was not scored, the mean of the families that were. */
function baseExplosives({ scores }: MenuInput, situation: string): number {
  const here = scores.families.filter((score) => score.situation === situation);
  const base = here.find(({ family }) => family === 'base');
  if (base) return base.explosives.mean / 100;
  return here.reduce((sum, { explosives }) => sum + explosives.mean / 100, 0) / Math.max(1, here.length);
}

function plannedSituations({ scores, settings, own }: MenuInput, worths: readonly CallWorth[]): PlannedSituation[] {
  const situations = scores.situations.filter(({ id, expectedSnaps }) => id !== 'all' && expectedSnaps > 0);
  const rated = situations.map(({ id, expectedSnaps }) => {
    const net = worths.reduce((sum, worth) => sum + (worth.get(id)?.fit ?? 0), 0) / Math.max(1, worths.length);
    return { expectedSnaps, net };
  });
  const rates = pressureRates(rated, settings.menu.pressure_rate, own?.pressureRate ?? null);
  return situations.map((situation, s) => ({ ...situation, rate: rates[s] as number }));
}

/** Installed calls that never were on film, and new ones, lose a little: they are not yet run as drawn. Judgment. */
const UNFAMILIAR = { unseen: 0.01, isNew: 0.03 } as const;

function candidateOf(
  input: MenuInput,
  call: Call,
  { worth, mixes }: { readonly worth: CallWorth; readonly mixes: ReturnType<typeof mixCells> },
): MenuCandidate {
  const seen = input.own?.callsOnFilm.has(plainName(call.name)) ?? true;
  const shut = closedCall(input, call).situations;
  const insisted = input.settings.menu.must.map(plainName).includes(plainName(call.name));
  const staysHome = (id: string) => shut.has(id) || (!insisted && worth.get(id)?.plainlyWrong === true);
  const lost = call.installed ? (seen ? 0 : UNFAMILIAR.unseen) : UNFAMILIAR.isNew;
  const over = (of: (id: string) => number) =>
    mixes.map(({ parts, pressures }) =>
      pressures === 0 ? 0 : parts.reduce((sum, part) => sum + part.pressures * of(part.id), 0) / pressures,
    );
  return {
    call,
    theory: familyFacts(call.family).theory,
    reps: repsThisWeek(call),
    isNew: !call.installed,
    points: over((id) => worth.get(id)?.points ?? 0),
    givenUp: over((id) => worth.get(id)?.givenUp ?? 0),
    fit: over((id) => (worth.get(id)?.fit ?? 0) - lost),
    explosives: over((id) => (worth.get(id)?.explosives ?? 0) - baseExplosives(input, id)),
    closed: over((id) => Number(staysHome(id))).map((part) => part > 0.5),
  };
}

interface OfferedWeek {
  readonly offer: MenuOffer;
  /** Pressures expected in a game. */
  readonly pressures: number;
}

function limitsOf(input: MenuInput, { offer, pressures }: OfferedWeek, free: ReadonlySet<string>): MenuLimits {
  const { menu } = input.settings;
  const unless = (key: string, limit: number) => (free.has(key) ? null : limit);
  const paths = free.has('pairing') ? [] : pathLimits(input, offer);
  return {
    size: unless('size', menu.size),
    newCalls: unless('new_calls', menu.new_calls),
    reps: unless('reps', menu.reps),
    leastCalls: free.has('use') ? 0 : LEAST_CALLS,
    pathShare: menu.path_share >= 1 ? null : unless('path', menu.path_share),
    pathShareHere: menu.path_share >= 1 ? null : unless('path', Math.max(menu.path_share, PATH_SHARE_HERE)),
    addOnShare: unless('add_on', menu.add_on_share),
    explosives: menu.explosives === undefined ? null : unless('explosives', menu.explosives),
    paths,
    readable: readableSnaps(menu.pairing_cap) / READER_GAMES,
    read: paths.length === 0 ? null : quietShare(menu.pairing_cap, pressures),
    theories: demandedTheories(input, offer).filter((theory) => !free.has(ruleKey({ kind: 'theory', of: theory }))),
    musts: new Set(menu.must.map(plainName).filter((name) => !free.has(`must ${name}`))),
  };
}

/** Theories of which a call is on offer that is not plainly wrong against them: none is forced in for its theory's sake. */
function demandedTheories({ fit }: MenuInput, { calls, theories }: MenuOffer): TheoryName[] {
  const nets = new Map(fit.calls.filter(({ situation }) => situation === 'all').map(({ call, net }) => [call, net]));
  const held = calls.filter(({ name }) => !isPlainlyWrong(nets.get(name)));
  return theories.filter((theory) => held.some(({ family }) => familyFacts(family).theory === theory));
}

/** What the pairing cap and our film ask of every path. */
function pathLimits({ settings, own }: MenuInput, { calls }: MenuOffer): PathLimit[] {
  const cap = settings.menu.pairing_cap;
  if (cap >= 1) return [];
  const habits = new Map((own?.paths ?? []).map((habit) => [plainName(habit.path), habit]));
  return [...new Set(calls.map(({ path }) => path))].map((path) => {
    const habit = habits.get(plainName(path));
    const coverages = [...new Set(calls.filter((call) => call.path === path).map(({ coverage }) => coverage))];
    const uncounted = uncountedCalls(cap, habit?.snaps ?? 0);
    return { path, coverages, most: cap, uncounted, changeUp: habit?.changeUp ?? null };
  });
}
