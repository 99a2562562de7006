import type { Answer } from '../../src/game/answers.ts';
import type { Film, SnapRecord } from '../../src/game/film.ts';
import { SITUATIONS } from '../../src/game/situations.ts';
import { type WeekSettings, weekSettingsSchema } from '../../src/game/week-settings.ts';
import type { Forecast, ForecastChapter, Target } from '../../src/pressure/forecast/forecast-result.ts';
import { TARGET_DEFINITIONS } from '../../src/pressure/forecast/target.ts';
import type { ProtectionChapter } from '../../src/pressure/protection/protection-result.ts';
import { situationCodes } from '../../src/pressure/snap/situation.ts';
import { createRandom, type Random } from '../../src/stats/random.ts';
import { share } from '../../src/stats/share.ts';

type Mix = Readonly<Record<string, number>>;

/** An invented offense as mixes; each column is spread over the snaps on its own. */
export interface InventedOffense {
  readonly answers?: Partial<Record<Answer, number>>;
  readonly receivers?: Mix;
  readonly personnel?: Mix;
  readonly backAction?: Mix;
  readonly protectors?: Mix;
  readonly targetZone?: Mix;
  /** `down/toGo` to weight. */
  readonly downs?: Mix;
  readonly snaps?: number;
  /** Share of the dropbacks on which the quarterback takes off. */
  readonly scrambles?: number;
}

/** What the plain offense leaves blank; a mix that is not given stays uncharted. */
export interface ChartedMore {
  readonly motion?: Mix;
  readonly tempo?: Mix;
  readonly checked?: Mix;
  readonly optionTag?: Mix;
  readonly concept?: Mix;
  readonly formation?: Mix;
  /** Share of the dropbacks and deep shots on which the ball is held three seconds; the rest is out after two. */
  readonly held?: number;
}

/** An offense like any other; single mixes are replaced to give one a habit. */
export const ORDINARY: Required<InventedOffense> = {
  answers: { run: 40, quarterback_run: 8, screen: 7, quick: 14, dropback: 20, deep_shot: 5, movement: 6 },
  receivers: { '2x2': 40, '3x1': 32, '3x2': 8, '2x1': 20 },
  personnel: { '11': 62, '10': 20, '12': 10, '21': 8 },
  backAction: { blocks: 40, check_releases: 15, releases_wide: 17, releases_inside: 20, none: 8 },
  protectors: { 5: 40, 6: 50, 7: 10 },
  targetZone: { flat: 20, deep_middle: 10, middle: 30, outside: 40 },
  downs: { '1/10': 40, '2/8': 20, '2/5': 8, '2/2': 5, '3/9': 12, '3/5': 8, '3/2': 5, '4/2': 2 },
  snaps: 240,
  scrambles: 0.1,
};

const PASSES = ['screen', 'quick', 'dropback', 'deep_shot', 'movement'];

/** The snaps of {@link inventedChart} as records, to be changed by a test. */
export function inventedRecords(offense: InventedOffense = {}): SnapRecord[] {
  const all = { ...ORDINARY, ...offense };
  const random = createRandom('invented offense');
  const column = (mix: Mix) => spread(mix, all.snaps, random);
  const kinds = column(all.answers as Mix);
  const [receivers, personnel, downs] = [column(all.receivers), column(all.personnel), column(all.downs)];
  const [jobs, protectors, zones] = [column(all.backAction), column(all.protectors), column(all.targetZone)];
  const held = kinds.flatMap((kind, i) => (kind === 'dropback' ? [i] : []));
  const fled = new Set(held.slice(0, Math.round(all.scrambles * held.length)));
  return kinds.map((kind, i): SnapRecord => {
    const [down, toGo] = (downs[i] as string).split('/').map(Number) as [number, number];
    const plain = { game: 'w01', down, to_go: toGo, ball_on: 60, play_kind: kind, receivers: receivers[i] as string };
    const seen = { ...plain, personnel: personnel[i] as string };
    if (!PASSES.includes(kind)) return { ...seen, gain: 4, result: 'rush' };
    const passed = { ...seen, back_action: jobs[i] as string, protectors: Number(protectors[i]) };
    if (fled.has(i)) return { ...passed, gain: 6, result: 'scramble' };
    return { ...passed, target_zone: zones[i] as string, gain: 6, result: 'complete' };
  });
}

/** The same records with more charted on them. */
export function chartedMore(records: readonly SnapRecord[], more: ChartedMore): SnapRecord[] {
  const random = createRandom('charted more');
  const columns = {
    motion: more.motion,
    tempo: more.tempo,
    checked: more.checked,
    option_tag: more.optionTag,
    concept: more.concept,
    formation: more.formation,
  };
  const drawn = Object.entries(columns).flatMap(([name, mix]) =>
    mix ? [{ name, words: spread(mix, records.length, random) }] : [],
  );
  const long = spread({ held: more.held ?? 0, out: 1 - (more.held ?? 0) }, records.length, random);
  return records.map((record, i) => ({
    ...record,
    ...Object.fromEntries(drawn.map(({ name, words }) => [name, words[i] as string])),
    ...(more.held !== undefined && record.target_zone !== undefined && { time_to_throw: secondsOf(record, long[i]) }),
  }));
}

function secondsOf({ play_kind }: SnapRecord, long: string | undefined): number {
  if (play_kind === 'quick' || play_kind === 'screen') return 1.4;
  return long === 'held' ? 3 : 2;
}

/** The forecast a plain count would make: a situation's snaps on top of fifteen snaps' worth of the whole. */
export function countedForecast(chart: Film, settings: WeekSettings = inventedSettings()): ForecastChapter {
  const situations = situationCodes(chart, settings.situations);
  const forecasts = COUNTED_TARGETS.flatMap((target) =>
    ['all', ...SITUATIONS.map(({ id }) => id)].map((id, place) =>
      countedCell(chart, { target, id, place, settings, situations }),
    ),
  );
  return {
    forecasts,
    line: [],
    tells: { looked: 0, discoveryRate: 0.1, tells: [] },
    backtest: null,
    archive: { used: false },
  };
}

const COUNTED_TARGETS = [
  'answer',
  'back_job',
  'protectors',
  'slide_to_back',
  'slide_to_field',
  'slide_to_strength',
] as const;

interface CellInput {
  readonly target: Target;
  readonly id: string;
  readonly place: number;
  readonly settings: WeekSettings;
  readonly situations: Uint8Array;
}

function countedCell(chart: Film, { target, id, place, settings, situations }: CellInput): Forecast {
  const definition = TARGET_DEFINITIONS.find((entry) => entry.target === target);
  if (!definition) throw new Error(target);
  const codes = definition.codes(chart, settings.situations);
  const whole = definition.classes.map((_, k) => codes.reduce((n, code) => n + (code === k ? 1 : 0), 0));
  const here = definition.classes.map((_, k) =>
    codes.reduce((n, code, i) => n + (code === k && situations[i] === place - 1 ? 1 : 0), 0),
  );
  const total = whole.reduce((sum, n) => sum + n, 0);
  const snaps = here.reduce((sum, n) => sum + n, 0);
  const alphas = whole.map((n, k) => (id === 'all' ? n : (here[k] as number) + (total === 0 ? 0 : (15 * n) / total)));
  const sum = alphas.reduce((one, other) => one + other, 0);
  const expected = situations.reduce((n, code) => n + (code === place - 1 ? 1 : 0), 0);
  return {
    target,
    situation: id,
    classes: definition.classes.map((name, k) => ({
      name,
      share: sum === 0 ? 0 : (alphas[k] as number) / sum,
      low: 0,
      high: 1,
      alpha: alphas[k] as number,
      film: share(here[k] as number, snaps),
    })),
    ownSnaps: id === 'all' ? total : snaps,
    mostlyFrom: 'here',
    ownShare: 1,
    nextSnaps: id === 'all' ? settings.snaps : (settings.snaps * expected) / Math.max(1, chart.size),
    expected: [],
    thin: false,
  };
}

/** A protection chapter in which nothing was raced. */
export function unraced(): ProtectionChapter {
  return {
    mix: {
      source: 'assumed',
      passes: 0,
      charted: { protectors: 0, slide: 0, back: 0 },
      assumed: [],
      protectors: [],
      slideToBack: share(0, 0),
      slideToField: share(0, 0),
      slideToStrength: share(0, 0),
      backJobs: [],
      pictures: [],
    },
    calls: [],
    race: [],
    release: [],
    soundness: [],
  };
}

/** Default settings of a week. */
export function inventedSettings(change: Partial<WeekSettings> = {}): WeekSettings {
  return { ...weekSettingsSchema.parse({ opponent: 'Invented' }), ...change };
}

/** `size` words in the proportions of the mix, shuffled. */
function spread(mix: Mix, size: number, random: Random): string[] {
  const total = Object.values(mix).reduce((sum, weight) => sum + weight, 0);
  const exact = Object.entries(mix).map(([word, weight]) => ({ word, exact: (size * weight) / total }));
  const words = exact.flatMap(({ word, exact: n }) => Array.from({ length: Math.floor(n) }, () => word));
  const rest = exact.sort((one, other) => (other.exact % 1) - (one.exact % 1));
  for (let i = 0; words.length < size; i++) words.push((rest[i % rest.length] as { word: string }).word);
  return random.shuffle(words);
}
