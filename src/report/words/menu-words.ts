import { isTheory, THEORY_WORDS } from '../../game/families.ts';
import type { LeftOutReason } from '../../pressure/menu/left-out.ts';
import type {
  ImpossibleMust,
  LimitPrice,
  LimitStep,
  MenuNote,
  MenuResult,
  PlanRead,
} from '../../pressure/menu/result.ts';
import type { MenuRule } from '../../pressure/menu/rule.ts';
import { plainWords } from './label.ts';
import { counted, fixed, listed, signed } from './number-words.ts';
import { percent } from './percent.ts';
import { situationName } from './situation-label.ts';
import { failureWords } from './soundness-words.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** A limit of the menu by name. */
export function ruleWords(rule: MenuRule | ImpossibleMust): string {
  if (rule.kind === 'impossible_must') {
    return rule.why === null
      ? `${rule.of} must be carried, but defense.yaml has no such call`
      : `${rule.of} must be carried, but it is out: ${leftOutWords(rule.why)}`;
  }
  return limitWords(rule.kind, rule.of, rule.limit);
}

function limitWords(kind: LimitPrice['limit'], of = '', limit?: number): string {
  if (kind === 'theory') return `one call of ${isTheory(of) ? THEORY_WORDS[of] : of}`;
  if (kind === 'must') return `${of} must be carried`;
  if (kind === 'ban') return `${of} may not be carried`;
  return limit === undefined ? LIMIT_NAMES[kind] : LIMIT_WORDS[kind](limit);
}

type NumberedLimit = Exclude<LimitPrice['limit'], 'theory' | 'must' | 'ban'>;

const LIMIT_NAMES: Readonly<Record<NumberedLimit, string>> = {
  size: 'calls carried',
  new_calls: 'new calls',
  reps: 'practice reps',
  pairing: 'pairing cap',
  path: 'share of one path',
  add_on: 'share of the add-on',
  explosives: 'explosive plays',
  use: 'each carried call at least once a game',
  regret: 'points that may be given up',
};

const LIMIT_WORDS: Readonly<Record<NumberedLimit, (limit: number) => string>> = {
  size: (limit) => `at most ${limit} calls carried`,
  new_calls: (limit) => `at most ${limit} new calls`,
  reps: (limit) => `at most ${limit} practice reps`,
  pairing: (limit) => `no path followed by one coverage on more than ${percent(limit)} of its calls`,
  path: (limit) => `no path on more than ${percent(limit)} of our pressures`,
  add_on: (limit) => `an add-on on at most ${percent(limit)} of a situation’s snaps`,
  explosives: (limit) => `at most ${limit} explosive plays a game`,
  use: () => LIMIT_NAMES.use,
  regret: (limit) => `at most ${limit} points given up`,
};

/** The limit a price is about. */
export function priceLimitWords({ limit, of }: LimitPrice): string {
  return limitWords(limit, of);
}

/** By how much a limit is loosened. */
export function stepWords(step: LimitStep): string {
  switch (step.kind) {
    case 'more':
      return step.by < 1 ? `${fixed(step.by, 1)} more` : `${step.by} more`;
    case 'lift':
      return 'lifted';
    default:
      return step satisfies never;
  }
}

/** What a loosened limit would change. */
export function changeWords({ added, dropped }: Pick<LimitPrice, 'added' | 'dropped'>): string {
  if (added.length === 0 && dropped.length === 0) return 'same calls';
  if (dropped.length === 0) return `add ${listed(added)}`;
  if (added.length === 0) return `drop ${listed(dropped)}`;
  return `${listed(added)} for ${listed(dropped)}`;
}

/** Why a call is not carried. */
export function leftOutWords(why: LeftOutReason): string {
  switch (why.kind) {
    case 'banned':
      return 'banned in week.yaml';
    case 'not_sound':
      return `not sound: ${failureWords(why.failure)}`;
    case 'not_scored':
      return 'not scored this week';
    case 'hole':
      return `gives up ${HOLE_WORDS[why.hole] ?? why.hole} on purpose; they show it on ${why.count} of ${why.trials} (${percent(why.count / why.trials)})`;
    case 'costs_reps':
      return `new, ${counted(why.reps, 'rep', 'reps')} to install: it does not earn them (net ${signed(10 * why.fit)} of 10 at its best)`;
    case 'plainly_wrong':
      return `wrong far more often than right everywhere (net ${signed(10 * why.fit)} of 10 at its best, ${situationName(why.situation)})`;
    case 'nowhere_better':
      return `a call we carry does the job everywhere (net ${signed(10 * why.fit)} of 10 at its best, ${situationName(why.situation)})`;
    default:
      return why satisfies never;
  }
}

const HOLE_WORDS: Readonly<Record<string, string>> = {
  quarterback_run: 'the quarterback run',
  deep_middle: 'the deep middle',
  back: 'the back',
  trips: 'trips',
  empty: 'empty',
  two_backs: 'two backs',
  fast_motion: 'fast motion',
  heavy: 'heavy sets',
};

/** How far the menu is known to be the best, and how near the next one comes. */
export function proofWords({ proof, nextBest }: Menu): string {
  const proved = proof.proved
    ? 'No other menu within the limits is better; that is proved.'
    : `The search stopped early: another menu could be better by at most ${fixed(proof.gap, 2)} snaps a game.`;
  if (nextBest === null) return `${proved} No other menu keeps the limits.`;
  const found = nextBest.proved ? 'The next-best menu' : 'The best other menu found';
  return `${proved} ${found}: ${changeWords(nextBest)}, ${fixed(nextBest.less, 2)} snaps a game behind, ${signed(nextBest.points)} points.`;
}

/**
 * Something a reader must know of how the menu came about.
 *
 * @param labelOf - the staff's word for a situation id
 */
export function menuNoteWords(note: MenuNote, labelOf: (situation: string) => string): string {
  switch (note.kind) {
    case 'no_theory':
      return `No ${THEORY_WORDS[note.theory]} call fits this week, so none is asked for; the table of calls left out says why.`;
    case 'uncounted_paths':
      return `Barely on film, fine a couple of times a game without a change-up: ${listed(note.paths)}.`;
    case 'no_own_rate':
      return `No film of our own: the pressure rate is planned around ${percent(note.rate)}, the middle of what week.yaml allows.`;
    case 'closed':
      return `${note.call} gives up ${HOLE_WORDS[note.hole] ?? note.hole} on purpose. It stays home where they do that most: ${listed(note.situations.map(labelOf))}.`;
    case 'short':
      return `The limits leave calls for ${fixed(note.sent, 1)} of the ${fixed(note.planned, 1)} pressures planned; the rest is base.`;
    default:
      return note satisfies never;
  }
}

/** How far the plan itself can be read off its paths. */
export function planReadWords({ share, blind, most, lone }: PlanRead): string {
  const read = `On this week’s mix our path names the coverage on ${percent(share)} of our pressures (cap ${percent(most)}), a blind guess on ${percent(blind)}`;
  if (share <= most) return `${read}.`;
  if (share <= blind + ROUNDED) return `${read}: we play one coverage most of the time, and the path adds nothing.`;
  const readable = lone.filter(({ calls }) => calls >= READABLE);
  const paths = readable.map(
    ({ path, coverage, calls }) => `${path} is always ${coverage} (${fixed(calls, 0)} a game)`,
  );
  const taught = readable.flatMap(({ path, others }) =>
    others.slice(0, 1).map(({ coverage }) => `${coverage} behind ${path}`),
  );
  const cure = taught.length === 0 ? '' : ` Sound, and worth teaching: ${listed(taught)}.`;
  return paths.length === 0 ? `${read}.` : `${read}: ${listed(paths)}.${cure}`;
}

/** Who would play what, for each coverage that could be taught behind a path with one. */
export function secondWordSentences({ lone }: PlanRead, titleOf: (role: string) => string): string[] {
  return lone.flatMap(({ path, calls, others }) =>
    (calls < READABLE ? [] : others).map(({ coverage, men, net }) => {
      const jobs = men.map(({ role, job }) => `${titleOf(role)} ${plainWords(job).toLowerCase()}`);
      return `${path} with ${coverage} would be sound (net ${signed(10 * net)} of 10 against them): ${listed(jobs)}. To add it, give a call in defense.yaml path: ${path} and coverage: ${coverage}.`;
    }),
  );
}

/** Calls a game from which on a path is named as one that is read. */
const READABLE = 2;

/** Half of the last digit shown. */
const ROUNDED = 0.005;
