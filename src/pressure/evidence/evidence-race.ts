import type { Answer } from '../../game/answers.ts';
import { groupBy } from '../../game/by-word.ts';
import type { CallLibrary } from '../../game/call-library.ts';
import type { Family } from '../../game/families.ts';
import type { ProtectionChapter, RaceLine } from '../protection/protection-result.ts';
import { type ByAnswer, type ByFamily, eachAnswer, eachFamily } from './by-answer.ts';
import type { OutcomeValues } from './outcome-value.ts';

/**
 * How many more losses one more rusher home brings. Where professional passers were pressured, 18 to 20% of those
 * dropbacks ended in a sack, by family, four rushers to six (sacks over sacks and pressured throws, open data 2019-23).
 */
export const LOSSES_PER_RUSHER_HOME = 0.19;

/** A number, or null where no call of the family was raced against the answer. */
type Raced = Readonly<Record<Answer, number | null>>;

/** The race of our calls in one situation, or over all of them, as chances that a rusher is home in time. */
export interface SituationEdge {
  /** How much more often than against an average opponent, less the same for the four-man base. */
  readonly families: ByFamily<ByAnswer>;
  /** Chance that a rusher is home, mean of the family's calls. */
  readonly home: ByFamily<Raced>;
  /** Of each call: its chance of being home less its family's mean. */
  readonly calls: ReadonlyMap<string, ByAnswer>;
}

/** The race of our calls against this opponent beside the average one, over all passes and by situation. */
export interface RaceEdge extends SituationEdge {
  /** Its standard deviation from what is not known of the release, which moves all families together. */
  readonly spread: ByFamily<ByAnswer>;
  /** Chance that a rusher is home against an average opponent. */
  readonly typical: ByFamily<Raced>;
  /** Empty where their protection was not charted by situation. */
  readonly situations: ReadonlyMap<string, SituationEdge>;
  /** Whether a four-man call was raced; without one the base is taken as typical. */
  readonly baseRaced: boolean;
}

/**
 * Compares the race of every family with that against an average opponent: the mean over its calls in the library. No
 * library, or an answer nobody raced, gives no edge.
 */
export function raceEdge(library: CallLibrary | null, protection: ProtectionChapter): RaceEdge {
  const lines = racedLines(library, protection);
  const typical = lines.mean((line) => line.typical);
  const edgeOf = (chanceOf: (line: RaceLine) => number): SituationEdge => {
    const home = lines.mean(chanceOf);
    const more = tableOf((family, answer) => (home[family][answer] as number) - (typical[family][answer] as number));
    return { families: lessBase(more), home, calls: callEdges(library, protection, { home, chanceOf }) };
  };
  const all = edgeOf((line) => line.home);
  const spread = lines.mean((line) => (line.high - line.low) / WIDTH_80);
  const situations = (protection.race[0]?.bySituation ?? []).map(({ situation }) => situation);
  return {
    ...all,
    spread: lessBase(tableOf((family, answer) => spread[family][answer] as number)),
    typical,
    situations: new Map(situations.map((id) => [id, edgeOf((line) => homeIn(line, id))])),
    baseRaced: Object.values(all.home.base).some((chance) => chance !== null),
  };
}

/** The race in a situation, or over all passes where it was not known by situation. */
export function edgeIn(race: RaceEdge, situation: string): SituationEdge {
  return race.situations.get(situation) ?? race;
}

/**
 * Points a snap that one more loss saves on top of everything else being as before.
 *
 * @param base - outcome shares against the four-man base
 */
export function pointsPerLoss(base: Float64Array, values: OutcomeValues): number {
  const loss = base[0] as number;
  const rest = values.reduce((sum, value, kind) => (kind === 0 ? sum : sum + value * (base[kind] as number)), 0);
  return rest / (1 - loss) - values[0];
}

const WIDTH_80 = 2 * 1.2815515655446004; // normal quantile of 0.9, twice

function tableOf(of: (family: Family, answer: Answer) => number): ByFamily<ByAnswer> {
  return eachFamily((family) => eachAnswer((answer) => of(family, answer)));
}

/**
 * The race lines of each family's calls against each answer, to be averaged: in order of name, for the last digits of a
 * sum follow its order, and with them the choice among menus that are all but equal.
 */
function racedLines(library: CallLibrary | null, { race }: ProtectionChapter) {
  const families = new Map((library?.calls ?? []).map(({ name, family }) => [name, family]));
  const inOrder = [...race].sort((a, b) => (a.call < b.call ? -1 : Number(a.call > b.call)));
  const found = groupBy(inOrder, ({ call, answer }) => `${families.get(call) ?? ''} ${answer}`);
  const mean = (figure: (line: RaceLine) => number): ByFamily<Raced> =>
    eachFamily((family) => eachAnswer((answer) => meanOf(found.get(`${family} ${answer}`) ?? [], figure)));
  return { mean };
}

function meanOf(lines: readonly RaceLine[], figure: (line: RaceLine) => number): number | null {
  if (lines.length === 0) return null;
  return lines.reduce((sum, line) => sum + figure(line), 0) / lines.length;
}

function homeIn(line: RaceLine, situation: string): number {
  return line.bySituation?.find((one) => one.situation === situation)?.home ?? line.home;
}

interface RacedChances {
  readonly home: ByFamily<Raced>;
  readonly chanceOf: (line: RaceLine) => number;
}

function callEdges(
  library: CallLibrary | null,
  { race }: ProtectionChapter,
  { home, chanceOf }: RacedChances,
): ReadonlyMap<string, ByAnswer> {
  const lines = new Map<string, RaceLine>(race.map((line) => [`${line.call} ${line.answer}`, line]));
  return new Map(
    (library?.calls ?? []).map(({ name, family }) => [
      name,
      eachAnswer((answer) => {
        const line = lines.get(`${name} ${answer}`);
        return line === undefined ? 0 : chanceOf(line) - (home[family][answer] as number);
      }),
    ]),
  );
}

/** What was not raced counts as nothing on either side. */
function lessBase(figures: ByFamily<ByAnswer>): ByFamily<ByAnswer> {
  return tableOf((family, answer) => figures[family][answer] - figures.base[answer]);
}
