// What they do when pressured, four games to the next: does knowing how many rushed, or which coverage was played, forecast
// the next game's snaps better than the offense's own level with the pattern of downs and distances? Every offense has the
// others as archive. Prints mean log loss of the next game less that of the forecast without it (minus is better), its
// standard error with the offense as the unit, in how many offenses it was better, and both halves of the offenses.
// With ARCHIVE_OFFENSES only so many others, four games of each, are the archive.
// Usage: npx tsx bench/pressured.ts FILE PROFILE [LAST_WEEK] [ARCHIVE_OFFENSES]
import { readFileSync } from 'node:fs';
import { type Film, filterSnaps, numberAt } from '../src/game/film.ts';
import { weekSettingsSchema } from '../src/game/week-settings.ts';
import { profileSchema } from '../src/ingest/profile.ts';
import { readSheet } from '../src/ingest/read-sheet.ts';
import { readYaml } from '../src/ingest/yaml-file.ts';
import { crossByGame } from '../src/pressure/others/cross-count.ts';
import { groupDue } from '../src/pressure/pressured/due.ts';
import {
  type Asked,
  type AskedCrossing,
  archivePattern,
  askedCrossing,
  rowsOf,
} from '../src/pressure/pressured/faced-counts.ts';
import { facedFilm, gamesFor } from '../src/pressure/pressured/faced-film.ts';
import { groupShares, type ShiftBelief } from '../src/pressure/pressured/group-shares.ts';
import { type LeagueShift, leagueShift } from '../src/pressure/pressured/league-shift.ts';
import { type Pattern, patternRow } from '../src/pressure/pressured/pattern.ts';
import { saysOf } from '../src/pressure/pressured/pressured-question.ts';
import { PRESSURED_DEFINITIONS, type PressuredDefinition } from '../src/pressure/pressured/pressured-target.ts';
import { NOT_KNOWN } from '../src/pressure/snap/not-known.ts';
import type { OffenseGame } from '../src/pressure/snap/offense-game.ts';
import { clusteredMean } from '../src/stats/clustered-mean.ts';

const [file = '', profile = '', lastWeek = '18', archiveOffenses = 'all'] = process.argv.slice(2);
const film = facedFilm(readChart(), weekSettingsSchema.parse({ opponent: 'x' }).situations);
if (film === null) throw new Error('no snaps');
const offenses = [...new Set(film.games.map(({ offense }) => offense))].sort();
const TRAINED_ON = 4;
/** Snaps of the league's level that stand beside the offense's own. */
const LEVEL = 100;

interface Method {
  readonly words: string;
  readonly splits: readonly Asked['by'][];
  readonly belief: ShiftBelief;
}

const METHODS: readonly Method[] = [
  { words: 'without', splits: [], belief: { leagueKept: 0, ownCounts: false } },
  ...([['rushers'], ['coverage'], ['rushers', 'coverage']] as const).flatMap((splits) =>
    [0, 0.5, 1].flatMap((leagueKept) =>
      [false, true].map((ownCounts) => ({
        words: `${splits.join(' and ')}: league ${leagueKept}, own ${ownCounts ? 'as learned' : 'none'}`,
        splits,
        belief: { leagueKept, ownCounts },
      })),
    ),
  ),
];

console.log(`${film.film.size} snaps, ${offenses.length} offenses`);
for (const definition of PRESSURED_DEFINITIONS) judge(definition);

interface Window {
  readonly offense: string;
  /** By method; of the snaps on which its splits are charted, the loss less that of the forecast without them. */
  readonly less: readonly (number | null)[];
}

function judge(definition: PressuredDefinition): void {
  const windows = offenses.flatMap((offense) => judgeOffense(definition, offense));
  console.log(`\n${definition.target}: ${windows.length} windows`);
  METHODS.forEach(({ words }, i) => {
    const judged = windows.filter(({ less }) => less[i] !== null);
    if (i === 0 || judged.length === 0) return;
    const less = judged.map((window) => window.less[i] as number);
    const of = (chosen: (offense: string) => boolean) => mean(less.filter((_, w) => chosen(judged[w]?.offense ?? '')));
    const { standardError } = clusteredMean(
      less,
      judged.map(({ offense }) => offense),
    );
    const better = offenses.filter((offense) => of((one) => one === offense) < 0).length;
    const halves = [0, 1].map((half) => signed(of((one) => offenses.indexOf(one) % 2 === half)));
    console.log(
      `  ${words}: ${signed(mean(less))} (${(standardError ?? 0).toFixed(4)}), better in ${better}; halves ${halves.join(', ')}`,
    );
  });
}

/** One split of one offense's season: what all other offenses do. */
interface Others {
  readonly crossing: AskedCrossing;
  readonly pattern: Pattern;
  readonly shift: LeagueShift;
  readonly charted: ReadonlySet<OffenseGame>;
  readonly question: string;
}

function judgeOffense(definition: PressuredDefinition, offense: string): Window[] {
  const others = {
    rushers: othersOf({ by: 'rushers', definition }, offense),
    coverage: othersOf({ by: 'coverage', definition }, offense),
  };
  const own = film?.games.filter((game) => game.offense === offense) ?? [];
  return own.slice(TRAINED_ON).flatMap((test, i) => {
    const games = { before: own.slice(i, i + TRAINED_ON), test };
    const less = METHODS.map((method) => lessOf(method, others, games));
    return less.every((value) => value === null) ? [] : [{ offense, less }];
  });
}

function othersOf(asked: Asked, offense: string): Others {
  if (film === null) throw new Error('no snaps');
  const crossing = askedCrossing(film, asked);
  const charted = gamesFor(film, asked.by, asked.definition);
  const names = archiveOf(offense);
  const games = names.flatMap((name) => gamesOfOther(charted.filter((game) => game.offense === name)));
  const pattern = archivePattern(crossing, rowsOf(games));
  const dues = names.map((one) => groupDue(crossing, rowsOf(games.filter((game) => game.offense === one)), pattern));
  return {
    crossing,
    pattern,
    shift: leagueShift(dues, crossing),
    charted: new Set(charted),
    question: asked.definition.target,
  };
}

/** All other offenses, or the next few in the order of their names. */
function archiveOf(offense: string): readonly string[] {
  const others = offenses.filter((one) => one !== offense);
  if (archiveOffenses === 'all') return others;
  const from = offenses.indexOf(offense);
  return Array.from({ length: Number(archiveOffenses) }, (_, i) => others[(from + i) % others.length] as string);
}

function gamesOfOther(games: readonly OffenseGame[]): readonly OffenseGame[] {
  return archiveOffenses === 'all' ? games : games.slice(0, TRAINED_ON);
}

interface Games {
  readonly before: readonly OffenseGame[];
  readonly test: OffenseGame;
}

function lessOf({ splits, belief }: Method, others: Record<Asked['by'], Others>, games: Games): number | null {
  const used = splits.map((by) => others[by]);
  const [first] = used;
  if (!first || used.some(({ charted }) => ![...games.before, games.test].every((game) => charted.has(game))))
    return null;
  const isAsked = (row: number) =>
    used.every(({ crossing }) => crossing.groupOf[row] !== NOT_KNOWN && crossing.classOf[row] !== NOT_KNOWN);
  const rows = games.test.rows.filter(isAsked);
  if (rows.length === 0) return null;
  const base = levelOf(first, games.before);
  const factors = used.map((one) => factorsOf(one, games.before, belief));
  const losses = rows.map((row) => {
    const plain = sharesAt(first, base, row);
    const moved = plain.map((share, k) =>
      used.reduce(
        (product, { crossing }, u) => product * (factors[u]?.[crossing.groupOf[row] as number]?.[k] ?? 1),
        share,
      ),
    );
    return lossOf(moved, first.crossing.classOf[row] as number) - lossOf(plain, first.crossing.classOf[row] as number);
  });
  return mean(losses);
}

/** Own level over the league's on the same snaps, the league's counting LEVEL snaps. */
function levelOf({ crossing, pattern }: Others, before: readonly OffenseGame[]): number[] {
  const known = rowsOf(before).filter((row) => crossing.classOf[row] !== NOT_KNOWN);
  return Array.from({ length: crossing.classes }, (_, k) => {
    const came = known.filter((row) => crossing.classOf[row] === k).length;
    const usual = known.reduce((sum, row) => sum + usualAt(pattern, crossing, { row, k }), 0);
    const added = (LEVEL * usual) / Math.max(1, known.length);
    return usual + added > 0 ? (came + added) / (usual + added) : 1;
  });
}

function usualAt(pattern: Pattern, { situationOf }: AskedCrossing, { row, k }: { row: number; k: number }): number {
  return pattern[patternRow(situationOf[row] as number)]?.[k] ?? 0;
}

function factorsOf(
  { crossing, pattern, shift, question }: Others,
  before: readonly OffenseGame[],
  belief: ShiftBelief,
): number[][] {
  const due = groupDue(crossing, rowsOf(before), pattern);
  const say = saysOf({ games: crossByGame(before, crossing), due }, question);
  return groupShares({ due, shift, say }, belief).map((shares) =>
    shares.moved.map((share, k) => ((shares.due[k] as number) > 0 ? share / (shares.due[k] as number) : 1)),
  );
}

function sharesAt({ crossing, pattern }: Others, level: readonly number[], row: number): number[] {
  return level.map((factor, k) => factor * usualAt(pattern, crossing, { row, k }));
}

function lossOf(shares: readonly number[], k: number): number {
  const total = shares.reduce((sum, share) => sum + share, 0);
  return -Math.log(Math.max(1e-9, (shares[k] as number) / total));
}

function readChart(): Film {
  const read = readYaml(readFileSync(profile, 'utf8'), profileSchema, profile);
  if (read.kind === 'problems') throw new Error(`${profile} does not fit`);
  const { chart } = readSheet({ file, bytes: readFileSync(file) }, { kind: 'opponent', profile: read.value });
  return filterSnaps(chart, (i) => (numberAt(chart, 'week', i) ?? 0) <= Number(lastWeek));
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
}

function signed(value: number): string {
  return `${value < 0 ? '' : '+'}${value.toFixed(4)}`;
}
