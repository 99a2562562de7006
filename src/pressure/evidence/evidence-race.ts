import type { CallLibrary } from '../../game/call-library.ts';
import { ANSWERS, FAMILIES } from '../../game/vocabulary.ts';
import type { ProtectionChapter, RaceLine } from '../protection/protection-result.ts';
import { CELL_COUNT, cellIndex } from './evidence-cell.ts';
import type { OutcomeValues } from './outcome-value.ts';

/**
 * How many more losses one more rusher home brings. Where professional passers were pressured, 18 to 20% of those
 * dropbacks ended in a sack, by family, four rushers to six (sacks over sacks and pressured throws, open data 2019-23).
 */
export const LOSSES_PER_RUSHER_HOME = 0.19;

/** The race of our calls in one situation, or over all of them, as chances that a rusher is home in time. */
export interface SituationEdge {
  /** By cell: how much more often than against an average opponent, less the same for the four-man base. */
  readonly families: Float64Array;
  /** By cell: chance that a rusher is home, mean of the family's calls; NaN where no call was raced. */
  readonly home: Float64Array;
  /** Of each call by answer: its chance of being home less its family's mean. */
  readonly calls: ReadonlyMap<string, Float64Array>;
}

/** The race of our calls against this opponent beside the average one, over all passes and by situation. */
export interface RaceEdge extends SituationEdge {
  /** By cell: its standard deviation from what is not known of the release, which moves all families together. */
  readonly spread: Float64Array;
  /** By cell: chance that a rusher is home against an average opponent. */
  readonly typical: Float64Array;
  /** By cell: charted release times behind it; 0 where none or not raced. */
  readonly timed: Float64Array;
  /** Empty where their protection was not charted by situation. */
  readonly situations: ReadonlyMap<string, SituationEdge>;
  /** The race were the back always in, and were he always out; as over all passes where that cannot be told apart. */
  readonly back: Readonly<Record<'in' | 'out', SituationEdge>>;
  /** Whether a four-man call was raced; without one the base is taken as typical. */
  readonly baseRaced: boolean;
}

/**
 * Compares the race of every family with that against an average opponent: the mean over its calls in the library. No
 * library, or an answer nobody raced, gives no edge.
 */
export function raceEdge(library: CallLibrary | null, protection: ProtectionChapter): RaceEdge {
  const raced = racedCells(library, protection);
  const cells = Array.from(raced.keys());
  const figure = (of: (line: RaceLine) => number) => Float64Array.from(cells, (cell) => meanOf(raced[cell] ?? [], of));
  const typical = figure((line) => line.typical);
  const edgeOf = (chanceOf: (line: RaceLine) => number): SituationEdge => {
    const home = figure(chanceOf);
    const families = lessBase(home.map((chance, cell) => chance - (typical[cell] ?? Number.NaN)));
    return { families, home, calls: callEdges(library, protection, { home, chanceOf }) };
  };
  const all = edgeOf((line) => line.home);
  const spread = figure((line) => (line.high - line.low) / WIDTH_80);
  return {
    ...all,
    spread: lessBase(spread),
    typical,
    timed: figure((line) => line.timedThrows).map((throws) => (Number.isNaN(throws) ? 0 : throws)),
    situations: new Map(situationsOf(protection).map((id) => [id, edgeOf((line) => homeIn(line, id))])),
    back: { in: edgeOf((line) => line.byBack?.in ?? line.home), out: edgeOf((line) => line.byBack?.out ?? line.home) },
    baseRaced: all.home.slice(0, ANSWERS.length).some((chance) => !Number.isNaN(chance)),
  };
}

/** The race in a situation, or over all passes where it was not told by situation. */
export function edgeIn(race: RaceEdge, situation: string): SituationEdge {
  return race.situations.get(situation) ?? race;
}

/**
 * Points a snap that one more loss saves on top of everything else being as before.
 *
 * @param base - outcome shares against the four-man base
 */
export function pointsPerLoss(base: Float64Array, values: OutcomeValues): number {
  const loss = base[0] ?? 0;
  const rest = values.reduce((sum, value, kind) => (kind === 0 ? sum : sum + value * (base[kind] ?? 0)), 0);
  return rest / (1 - loss) - values[0];
}

const WIDTH_80 = 2 * 1.2815515655446004; // normal quantile of 0.9, twice

/** The race lines of every cell: those of the family's calls against the answer. */
function racedCells(library: CallLibrary | null, { race }: ProtectionChapter): RaceLine[][] {
  const cells = Array.from({ length: CELL_COUNT }, (): RaceLine[] => []);
  const families = new Map((library?.calls ?? []).map(({ name, family }) => [name, FAMILIES.indexOf(family)]));
  for (const line of race) {
    const family = families.get(line.call);
    if (family !== undefined) cells[cellIndex(family, ANSWERS.indexOf(line.answer))]?.push(line);
  }
  return cells;
}

function situationsOf({ race }: ProtectionChapter): string[] {
  return (race[0]?.bySituation ?? []).map(({ situation }) => situation);
}

function homeIn(line: RaceLine, situation: string): number {
  return line.bySituation?.find((one) => one.situation === situation)?.home ?? line.home;
}

interface RacedChances {
  readonly home: Float64Array;
  readonly chanceOf: (line: RaceLine) => number;
}

function callEdges(
  library: CallLibrary | null,
  { race }: ProtectionChapter,
  { home, chanceOf }: RacedChances,
): ReadonlyMap<string, Float64Array> {
  const edges = new Map<string, Float64Array>();
  for (const { name, family } of library?.calls ?? []) {
    const edge = new Float64Array(ANSWERS.length);
    for (const line of race) {
      if (line.call !== name) continue;
      const answer = ANSWERS.indexOf(line.answer);
      const chance = chanceOf(line);
      edge[answer] = chance - (home[cellIndex(FAMILIES.indexOf(family), answer)] ?? chance);
    }
    edges.set(name, edge);
  }
  return edges;
}

/** What was not raced counts as nothing on either side. */
function lessBase(figures: Float64Array): Float64Array {
  const known = figures.map((figure) => (Number.isNaN(figure) ? 0 : figure));
  return known.map((figure, cell) => figure - (known[cellIndex(0, cell % ANSWERS.length)] ?? 0));
}

function meanOf(lines: readonly RaceLine[], figure: (line: RaceLine) => number): number {
  if (lines.length === 0) return Number.NaN;
  return lines.reduce((sum, line) => sum + figure(line), 0) / lines.length;
}
