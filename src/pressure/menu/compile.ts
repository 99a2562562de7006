import type { Call } from '../../game/call-library.ts';
import { ANSWERS } from '../../game/vocabulary.ts';
import type { CallScore, ScoreChapter } from '../score/score-result.ts';
import { type MenuOffer, menuOffer, plain } from './candidates.ts';
import { type PathHabit, uncountedCalls } from './habits.ts';
import type { MenuInput } from './input.ts';
import type { MenuCandidate, MenuLimits, MenuProblem, MenuSituation } from './model.ts';
import { repsThisWeek } from './repetitions.ts';
import { LEAST_CALLS, type MenuRule, menuRules, ruleKey } from './rule.ts';
import { theoryOf } from './theory.ts';

/** Scores come in points per ten snaps and explosives per hundred. */
const [SNAPS_PER_SCORE, SNAPS_PER_EXPLOSIVES] = [10, 100];

/** A week's menu as numbers, with the limits by name and the pressures that cannot be candidates. */
export interface CompiledMenu {
  readonly problem: MenuProblem;
  readonly offer: MenuOffer;
  readonly rules: readonly MenuRule[];
}

/**
 * Compiles a week's menu.
 *
 * @param lifted - limits to leave out
 */
export function compileMenu(input: MenuInput, lifted: readonly MenuRule[] = []): CompiledMenu {
  const bans = lifted.filter(({ kind }) => kind === 'ban').map(({ of }) => plain(of ?? ''));
  const offer = menuOffer(input, new Set(bans));
  const situations = input.scores.situations.filter(({ id, expectedSnaps }) => id !== 'all' && expectedSnaps > 0);
  const rules = menuRules(input.settings.menu, offer.theories);
  const candidates = candidatesOf(offer.calls);
  const limits = limitsOf(input, offer, new Set(lifted.map(ruleKey)));
  const numbers = scoreNumbers(input.scores, offer.calls, situations);
  const paired = { ...limits, ...pairLimits(candidates, limits.pairingCap, input.habits ?? []) };
  const problem = { candidates, situations, answers: ANSWERS.length, ...numbers, limits: paired };
  return { problem, offer, rules };
}

function candidatesOf(calls: readonly Call[]): MenuCandidate[] {
  const number = <T>(list: readonly T[]) => new Map([...new Set(list)].map((word, i) => [word, i]));
  const pairWord = ({ path, coverage }: Call) => JSON.stringify([path, coverage]);
  const paths = number(calls.map(({ path }) => path));
  const coverages = number(calls.map(({ coverage }) => coverage));
  const pairs = number(calls.map(pairWord));
  return calls.map((call) => ({
    call,
    path: paths.get(call.path) ?? 0,
    coverage: coverages.get(call.coverage) ?? 0,
    pair: pairs.get(pairWord(call)) ?? 0,
    theory: theoryOf(call.family),
    reps: repsThisWeek(call),
  }));
}

/** What the pairing cap and our film ask of every pair and path. */
function pairLimits(candidates: readonly MenuCandidate[], cap: number, habits: readonly PathHabit[]): PairLimits {
  const pairMost = new Float64Array(1 + Math.max(-1, ...candidates.map(({ pair }) => pair))).fill(1);
  const uncounted = new Float64Array(1 + Math.max(-1, ...candidates.map(({ path }) => path)));
  if (cap >= 1) return { pairMost, uncounted };
  const byPath = new Map(habits.map((habit) => [plain(habit.path), habit]));
  for (const { call, path, pair } of candidates) {
    const habit = byPath.get(plain(call.path));
    const asked = habit?.limits.find(({ coverage }) => plain(coverage) === plain(call.coverage))?.most ?? 1;
    pairMost[pair] = Math.min(cap, asked);
    uncounted[path] = uncountedCalls(cap, habit?.snaps ?? 0);
  }
  return { pairMost, uncounted };
}

type PairLimits = Pick<MenuLimits, 'pairMost' | 'uncounted'>;

function limitsOf(input: MenuInput, offer: MenuOffer, lifted: ReadonlySet<string>): Omit<MenuLimits, keyof PairLimits> {
  const { menu } = input.settings;
  const unless = <T>(key: string, free: T, limit: T) => (lifted.has(key) ? free : limit);
  const musts = menu.must.filter((of) => !lifted.has(ruleKey({ kind: 'must', of })));
  return {
    size: unless('size', offer.calls.length, menu.size),
    reps: unless('reps', Number.MAX_SAFE_INTEGER, menu.reps),
    trust: menu.trust,
    pairingCap: unless('pairing', 1, menu.pairing_cap),
    leastPressure: unless('least', 0, menu.pressure_rate.least),
    mostPressure: unless('most', 1, menu.pressure_rate.most),
    leastCalls: unless('use', 0, LEAST_CALLS),
    explosives: unless('explosives', null, menu.explosives ?? null),
    theories: offer.theories.filter((theory) => !lifted.has(ruleKey({ kind: 'theory', of: String(theory) }))),
    musts: offer.calls.flatMap(({ name }, c) => (musts.some((must) => plain(must) === plain(name)) ? [c] : [])),
  };
}

function scoreNumbers(scores: ScoreChapter, calls: readonly Call[], situations: readonly MenuSituation[]) {
  const count = situations.length;
  const found = new Map(scores.calls.map((score) => [cellKey(score.call, score.situation), score]));
  const base = situations.map(({ id }) => baseExplosives(scores, id));
  const cells = calls.flatMap(({ name }) => situations.map(({ id }) => found.get(cellKey(name, id))));
  return {
    value: Float64Array.from(cells, (score) => (score?.points.mean ?? 0) / SNAPS_PER_SCORE),
    byAnswer: Float64Array.from(cells.flatMap((score) => answerWorths(score))),
    extraExplosives: Float64Array.from(cells, (score, at) => {
      const usual = base[at % count] ?? 0;
      return (score?.explosives.mean ?? usual) / SNAPS_PER_EXPLOSIVES - usual / SNAPS_PER_EXPLOSIVES;
    }),
    baseExplosives: situations.reduce(
      (sum, { expectedSnaps }, s) => sum + (expectedSnaps * (base[s] ?? 0)) / SNAPS_PER_EXPLOSIVES,
      0,
    ),
  };
}

function cellKey(call: string, situation: string): string {
  return JSON.stringify([call, situation]);
}

function answerWorths(score: CallScore | undefined): number[] {
  return ANSWERS.map((answer) => {
    const found = score?.byAnswer.find((part) => part.answer === answer);
    return (found?.points ?? 0) / SNAPS_PER_SCORE;
  });
}

/** Explosives per hundred snaps against the base; where the base was not scored, the mean of the families that were. */
function baseExplosives(scores: ScoreChapter, situation: string): number {
  const here = scores.families.filter((score) => score.situation === situation);
  const base = here.find(({ family }) => family === 'base');
  if (base) return base.explosives.mean;
  return here.reduce((sum, { explosives }) => sum + explosives.mean, 0) / Math.max(1, here.length);
}
