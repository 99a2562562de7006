import type { Forecast, ForecastChapter, Target } from '../../src/pressure/forecast/forecast-result.ts';
import { TARGET_DEFINITIONS, type TargetDefinition } from '../../src/pressure/forecast/target.ts';
import { share } from '../../src/stats/share.ts';
import { normalized, wobble } from './invented-numbers.ts';

/** Situations of the invented plan with the snaps expected on Friday and those on film. */
export const INVENTED_SITUATIONS = [
  { id: 'first_ten', expectedSnaps: 22, film: 88 },
  { id: 'first_long', expectedSnaps: 2, film: 6 },
  { id: 'first_short', expectedSnaps: 1, film: 3 },
  { id: 'first_goal', expectedSnaps: 2, film: 7 },
  { id: 'second_short', expectedSnaps: 4, film: 17 },
  { id: 'second_medium', expectedSnaps: 6, film: 22 },
  { id: 'second_long', expectedSnaps: 8, film: 34 },
  { id: 'third_short', expectedSnaps: 4, film: 15 },
  { id: 'third_medium', expectedSnaps: 3, film: 13 },
  { id: 'third_long', expectedSnaps: 6, film: 25 },
  { id: 'fourth_short', expectedSnaps: 1, film: 4 },
  { id: 'fourth_medium', expectedSnaps: 0.5, film: 0 },
  { id: 'fourth_long', expectedSnaps: 0.5, film: 2 },
] as const;

/** An invented forecast chapter: every target in every situation, three tells, and a backtest. */
export function inventedForecast(): ForecastChapter {
  const all = { id: 'all', expectedSnaps: 60, film: 236 };
  const cells = [all, ...INVENTED_SITUATIONS];
  const forecasts = cells.flatMap((cell) => TARGET_DEFINITIONS.map((definition) => inventedCell(definition, cell)));
  return {
    forecasts,
    line: [],
    tells: { looked: 412, discoveryRate: 0.1, tells: TELLS },
    backtest: BACKTEST,
    archive: { used: true },
  };
}

const LEAN: Readonly<Record<string, number>> = {
  run: 5,
  quick: 3,
  dropback: 2.5,
  screen: 1.6,
  no_screen: 6,
  later: 3,
  six: 3,
};

function inventedCell(
  { target, classes: names }: TargetDefinition,
  cell: { id: string; expectedSnaps: number; film: number },
): Forecast {
  const long = cell.id.endsWith('long');
  const weights = names.map((name) => {
    const lean = (LEAN[name] ?? 1) * (long && name === 'run' ? 0.25 : 1) * (long && name === 'screen' ? 2.2 : 1);
    return lean * (0.6 + 0.8 * wobble(target, cell.id, name));
  });
  const shares = normalized(weights);
  const snaps = target === 'answer' || target === 'run_or_pass' ? cell.film : Math.floor(cell.film * 0.42);
  const concentration = 18 + snaps;
  let left = snaps;
  const classes = names.map((name, i) => {
    const mean = shares[i] ?? 0;
    const last = i === shares.length - 1;
    const count = last ? left : Math.min(left, Math.round(mean * snaps + 2 * (wobble(name, cell.id) - 0.5)));
    left -= Math.max(0, count);
    const width = 1.96 * Math.sqrt((mean * (1 - mean)) / (concentration + 1));
    return {
      name,
      share: mean,
      low: Math.max(0, mean - width),
      high: Math.min(1, mean + width),
      alpha: mean * concentration,
      film: share(Math.max(0, count), snaps),
    };
  });
  return {
    target,
    situation: cell.id,
    classes,
    ownSnaps: snaps,
    mostlyFrom: snaps < 20 ? 'all_their_snaps' : 'here',
    ownShare: snaps / (snaps + 18),
    nextSnaps: cell.expectedSnaps,
    expected:
      cell.expectedSnaps < 5
        ? []
        : classes.map((entry) => ({
            name: entry.name,
            low: Math.max(0, Math.floor(cell.expectedSnaps * entry.low - 0.6)),
            high: Math.ceil(cell.expectedSnaps * entry.high + 0.6),
          })),
    thin: snaps < 20,
  };
}

const TELLS: ForecastChapter['tells']['tells'] = [
  {
    id: 'tell-trips-weak-back-screen',
    seen: [
      { feature: 'receivers', value: 'trips' },
      { feature: 'back_spot', value: 'weak' },
    ],
    target: 'screen',
    follows: 'screen',
    film: share(9, 14),
    expected: 0.26,
    planWith: 0.39,
    p: 0.0008,
    adjusted: 0.041,
    games: [
      { game: 'w02 Alder Gap', count: 3, trials: 4 },
      { game: 'w04 Pinlow', count: 2, trials: 4 },
      { game: 'w06 Coldbrook', count: 0, trials: 0 },
      { game: 'w07 Esterline', count: 4, trials: 6 },
    ],
    standing: 'plan_with',
    gamesShown: 3,
    oneGameOnly: false,
    snaps: [4, 19, 33],
  },
  {
    id: 'tell-fast-motion-run',
    seen: [{ feature: 'motion', value: 'fast' }],
    target: 'run_or_pass',
    follows: 'run',
    film: share(21, 24),
    expected: 0.58,
    planWith: 0.68,
    p: 0.0011,
    adjusted: 0.046,
    games: [
      { game: 'w02 Alder Gap', count: 6, trials: 6 },
      { game: 'w04 Pinlow', count: 5, trials: 7 },
      { game: 'w06 Coldbrook', count: 6, trials: 6 },
      { game: 'w07 Esterline', count: 4, trials: 5 },
    ],
    standing: 'plan_with',
    gamesShown: 3,
    oneGameOnly: false,
    snaps: [7, 8, 50],
  },
  {
    id: 'tell-pistol-six',
    seen: [{ feature: 'formation', value: 'wing pistol' }],
    target: 'protectors',
    follows: 'seven_or_more',
    film: share(7, 9),
    expected: 0.3,
    planWith: 0.42,
    p: 0.0021,
    adjusted: 0.083,
    games: [
      { game: 'w02 Alder Gap', count: 0, trials: 1 },
      { game: 'w04 Pinlow', count: 7, trials: 8 },
      { game: 'w06 Coldbrook', count: 0, trials: 0 },
      { game: 'w07 Esterline', count: 0, trials: 0 },
    ],
    standing: 'so_far',
    gamesShown: 1,
    oneGameOnly: true,
    snaps: [70, 71],
  },
];

const BACKTEST: NonNullable<ForecastChapter['backtest']> = {
  targets: [
    backtestOf('answer', [1.523, 1.561, 1.588, 1.842], 3),
    backtestOf('run_or_pass', [0.601, 0.688, 0.622, 0.731], 4),
    backtestOf('screen', [0.482, 0.479, 0.511, 0.602], 1),
  ],
};

function backtestOf(target: Target, losses: readonly [number, number, number, number], gamesWon: number) {
  const [model, plainRate, downAndDistance, rawCell] = losses;
  return {
    target,
    games: 4,
    snaps: 236,
    model,
    plainRate,
    downAndDistance,
    rawCell,
    gamesWon,
    difference: model - plainRate,
    standardError: 0.021,
  };
}
