// Mean log loss of the next game, four games to the next, for the chain and the additive model, before the look and
// with it, from own games alone and with an archive of the other offenses. Offenses are left out of the archive in
// groups of four. Usage: npx tsx bench/forecast.ts FILE PROFILE [LAST_WEEK] [ARCHIVE_GAMES]
import { readFileSync } from 'node:fs';
import { type Film, filterSnaps, numberAt, textAt } from '../src/game/film.ts';
import { weekSettingsSchema } from '../src/game/week-settings.ts';
import { profileSchema } from '../src/ingest/profile.ts';
import { readSheet } from '../src/ingest/read-sheet.ts';
import { readYaml } from '../src/ingest/yaml-file.ts';
import { fitArchive, fitOpponent } from '../src/pressure/forecast/additive/additive.ts';
import type { AdditiveBase } from '../src/pressure/forecast/additive/additive-base.ts';
import type { AdditiveReading } from '../src/pressure/forecast/additive/additive-families.ts';
import { additiveFilm } from '../src/pressure/forecast/additive/additive-film.ts';
import { fitChain } from '../src/pressure/forecast/chain.ts';
import type { ChainFit } from '../src/pressure/forecast/chain-fit.ts';
import { type ChainTally, sumTallies, tallyGame } from '../src/pressure/forecast/chain-tally.ts';
import { type ChainTree, chainTree } from '../src/pressure/forecast/chain-tree.ts';
import type { Target } from '../src/pressure/forecast/forecast-result.ts';
import { TARGET_DEFINITIONS } from '../src/pressure/forecast/target.ts';
import { TARGET_STRENGTHS } from '../src/pressure/forecast/target-strengths.ts';
import { type OffenseGame, offenseGames } from '../src/pressure/snap/offense-game.ts';
import { lineLevels, planLevels, snapCells } from '../src/pressure/snap/snap-cells.ts';
import { createRandom } from '../src/stats/random.ts';

const [file = '', profile = '', lastWeek = '18', archiveGames = 'all'] = process.argv.slice(2);
const chart = readChart();
const cuts = weekSettingsSchema.parse({ opponent: 'x' }).situations;
const cells = snapCells(chart, cuts);
const film = additiveFilm(chart, cells);
const trees = {
  plan: chainTree(planLevels(cells), chart.size),
  line: chainTree(lineLevels(cells), chart.size),
};
const games = offenseGames(chart);
const offenses = [...new Set(games.map(({ offense }) => offense))].sort();
const gamesOf = new Map(offenses.map((offense) => [offense, games.filter((game) => game.offense === offense)]));
const GROUP = 4;
const TRAINED_ON = 4;
const METHODS = ['chain, own', 'chain, archive', 'additive, own', 'both, own', 'additive, archive', 'both, archive'];

console.log(`${chart.size} snaps, ${offenses.length} offenses, archive games ${archiveGames}`);
console.log(`target, reading: ${METHODS.join(' | ')}   (games to week 11; after)`);
for (const question of questions()) for (const reading of ['plan', 'line'] as const) judge(question, reading);

interface Question {
  readonly label: string;
  readonly name: Target;
  readonly target: { readonly codes: Uint8Array; readonly classes: number };
}

function questions(): Question[] {
  const ordinary = (['run_or_pass', 'screen', 'quick_release', 'motion'] as const).map((name) => {
    const definition = TARGET_DEFINITIONS.find(({ target }) => target === name);
    if (!definition) throw new Error(name);
    const codes = name === 'screen' ? screens() : definition.codes(chart, cuts);
    return { label: name, name, target: { codes, classes: definition.classes.length } };
  });
  const concept = { label: 'four concepts', name: 'answer' as const, target: { codes: concepts(), classes: 4 } };
  return [...ordinary, concept].filter(({ name }) => !process.env['ONLY'] || process.env['ONLY'].includes(name));
}

function concepts(): Uint8Array {
  return Uint8Array.from({ length: chart.size }, (_, i) => {
    const kind = textAt(chart, 'play_kind', i);
    const concept = textAt(chart, 'concept', i);
    if (kind === 'run' || kind === 'quarterback_run') return 0;
    if (concept === 'screen') return 1;
    return concept === 'play action' || concept === 'rpo pass' ? 2 : 3;
  });
}

function screens(): Uint8Array {
  return concepts().map((concept) => (concept === 0 ? 255 : Number(concept !== 1)));
}

type Losses = readonly (readonly [early: number[], late: number[]])[];

function judge(question: Question, reading: AdditiveReading): void {
  const losses: Losses = METHODS.map(() => [[], []]);
  for (let from = 0; from < offenses.length; from += GROUP) {
    judgeGroup(question, reading, { group: offenses.slice(from, from + GROUP), losses });
  }
  const figures = losses.map(([early, late]) => `${mean([...early, ...late])} (${mean(early)}; ${mean(late)})`);
  console.log(`${question.label}, ${reading}: ${figures.join(' | ')}`);
}

interface Group {
  readonly group: readonly string[];
  readonly losses: Losses;
}

function judgeGroup(question: Question, reading: AdditiveReading, { group, losses }: Group): void {
  const others = archiveOf(group);
  const rows = others.flatMap((game) => game.rows);
  const base = fitArchive({ film, name: question.name, target: question.target, reading, own: rows }, rows);
  const tally = tallyGame(trees[reading], question.target, rows);
  const archive = { model: base, tally, offenses: new Set(others.map(({ offense }) => offense)).size };
  for (const own of group.map((offense) => gamesOf.get(offense) ?? [])) {
    own.slice(TRAINED_ON).forEach((test, i) => {
      const asked = test.rows.filter((row) => question.target.codes[row] !== 255);
      if (asked.length === 0) return;
      const forecasts = forecastsOf(question, reading, { own: own.slice(i, i + TRAINED_ON), archive, asked });
      forecasts.forEach((shares, method) => {
        losses[method]?.[test.week <= 11 ? 0 : 1].push(loss(shares, asked, question.target));
      });
    });
  }
}

interface Window {
  readonly own: readonly OffenseGame[];
  readonly archive: { readonly model: AdditiveBase | null; readonly tally: ChainTally; readonly offenses: number };
  readonly asked: readonly number[];
}

/** The shares of every method, in the order of the table. */
function forecastsOf({ name, target }: Question, reading: AdditiveReading, { own, archive, asked }: Window) {
  const tree = trees[reading];
  const games = own.map(({ rows }) => tallyGame(tree, target, rows));
  const strengths = TARGET_STRENGTHS[name][reading];
  const [plain, shifted] = [null, archive].map((other) => {
    const fit = fitChain({ tree, own: sumTallies(tree, target.classes, games), archive: other, strengths });
    return chainShares(fit, tree, asked);
  }) as [Float64Array, Float64Array];
  const task = { film, name, target, reading, own: own.flatMap(({ rows }) => rows) };
  const [alone, helped] = [null, archive.model].map((base) => fitOpponent(task, base)(asked)) as [
    Float64Array,
    Float64Array,
  ];
  return [plain, shifted, alone, between(alone, plain), helped, between(helped, shifted)];
}

function chainShares({ shares, classes }: ChainFit, { nodeOf }: ChainTree, rows: readonly number[]): Float64Array {
  return Float64Array.from(
    rows.flatMap((row) => {
      const node = nodeOf[row] as number;
      return [...shares.subarray(node * classes, (node + 1) * classes)];
    }),
  );
}

function archiveOf(group: readonly string[]) {
  const others = games.filter(({ offense }) => !group.includes(offense));
  if (archiveGames === 'all') return others;
  const numbers = createRandom(7 + offenses.indexOf(group[0] ?? '')).shuffle(others.map((_, i) => i));
  return numbers.slice(0, Number(archiveGames)).map((i) => others[i] as (typeof others)[number]);
}

/** The geometric mean of two forecasts, class by class, made to sum to 1. */
function between(one: Float64Array, other: Float64Array): Float64Array {
  return one.map((share, i) => Math.sqrt(share * (other[i] as number)));
}

function loss(shares: Float64Array, rows: readonly number[], { codes, classes }: Question['target']): number {
  let sum = 0;
  rows.forEach((row, i) => {
    const own = shares.subarray(i * classes, (i + 1) * classes);
    const total = own.reduce((all, share) => all + share, 0);
    sum -= Math.log((own[codes[row] as number] as number) / total);
  });
  return sum / rows.length;
}

function mean(values: readonly number[]): string {
  return (values.reduce((sum, value) => sum + value, 0) / values.length).toFixed(4);
}

function readChart(): Film {
  const read = readYaml(readFileSync(profile, 'utf8'), profileSchema, profile);
  if (read.kind === 'problems') throw new Error(`${profile} does not fit`);
  const sheet = readSheet({ file, bytes: readFileSync(file) }, { kind: 'opponent', profile: read.value });
  return filterSnaps(sheet.chart, (i) => (numberAt(sheet.chart, 'week', i) ?? 0) <= Number(lastWeek));
}
