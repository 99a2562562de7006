import type {
  BacktestResult,
  CountCoverage,
  CountSize,
  MethodScore,
  PairedDifference,
  TargetScore,
} from '../pressure/forecast/backtest/backtest-result.ts';
import type { TellRecord } from '../pressure/forecast/backtest/tell-record.ts';
import { TARGET_LABELS } from '../report/words/label.ts';
import { METHOD_WORDS } from '../report/words/method-words.ts';
import { counted } from '../report/words/number-words.ts';
import { percentToTenth } from '../report/words/percent.ts';
import { tableText } from './table-text.ts';

/** A backtest as text: what was done, then one table of methods and one of intervals for every target. */
export function backtestText(result: BacktestResult, archiveWords: string): string {
  const judged = result.targets.filter(({ snaps }) => snaps > 0);
  const blank = result.targets.filter(({ snaps }) => snaps === 0).map(blankWords);
  const lines = [...blank, ...(result.tells ? [tellWords(result.tells)] : [])];
  return [headWords(result, archiveWords), ...judged.map(targetText), ...lines.map((line) => `${line}\n`)].join('\n');
}

function headWords(result: BacktestResult, archiveWords: string): string {
  const { offenses, games, snaps, singleGames } = result;
  return [
    `${counted(games, 'game', 'games')} of ${counted(offenses, 'offense', 'offenses')} forecast, ${counted(snaps, 'snap', 'snaps')} in all.`,
    ...learnedFrom(result),
    ...(singleGames > 0
      ? [`${counted(singleGames, 'offense', 'offenses')} with a single game could not be judged.`]
      : []),
    archiveWords,
    LEGEND,
    '',
  ].join('\n');
}

function learnedFrom({ games, leftOneOut, trainedOn }: BacktestResult): string[] {
  const before =
    trainedOn === 'all' ? 'all its games before' : `up to ${counted(trainedOn, 'game', 'games')} before it`;
  const inOrder = games - leftOneOut;
  return [
    ...(inOrder > 0
      ? [`${counted(inOrder, 'game', 'games')}, of each offense the fifth on: forecast from ${before}.`]
      : []),
    ...(leftOneOut > 0
      ? [
          `${counted(leftOneOut, 'game', 'games')} of offenses with fewer than five: each from all their others, later ones too.`,
        ]
      : []),
  ];
}

const LEGEND = `Log loss is the average surprise of a snap in nats, Brier the mean squared error: lower is better for both.
A difference under 0 favors the forecast of the row; in brackets its standard error, paired by game, with the offense as
unit where there are three or more. One game shows nothing.`;

function targetText(target: TargetScore): string {
  const { snaps, games, notCharted, methods, coverage } = target;
  const head = `${TARGET_LABELS[target.target]}: ${counted(snaps, 'snap', 'snaps')} in ${counted(games, 'game', 'games')}; not charted or not told on ${notCharted.toLocaleString('en-US')}`;
  const columns = [
    '',
    'log loss',
    'Brier',
    'called',
    'slope',
    ...AGAINST.map(({ words }) => words),
    'better than own rate',
  ];
  const counts = coverage.filter(({ intervals }) => intervals > 0).map(coverageCells);
  return [
    head,
    tableText(columns, methods.map(methodCells)),
    ...reliabilityLines(methods),
    tableText(['95% ranges for the next count', 'ranges', 'held', 'if right', 'mean width'], counts),
  ].join('\n');
}

const AGAINST = [
  { id: 'own_rate', words: 'less own rate' },
  { id: 'own_down_distance', words: 'less own d&d' },
  { id: 'archive_down_distance', words: "less others' d&d" },
] as const;

function methodCells(method: MethodScore): string[] {
  const slope = method.calibration?.slope;
  const find = (id: string) => method.against.find((other) => other.id === id);
  const rate = find('own_rate');
  return [
    METHOD_WORDS[method.id],
    method.logLoss.toFixed(4),
    method.brier.toFixed(4),
    percentToTenth(method.right / method.snaps),
    steep(slope) ? '' : (slope ?? 0).toFixed(2),
    ...AGAINST.map(({ id }) => differenceWords(find(id))),
    rate ? `${rate.won} of ${rate.games}` : '',
  ];
}

/** A forecast that is nearly the same on every snap has no slope worth printing. */
function steep(slope: number | null | undefined): boolean {
  return slope === null || slope === undefined || Math.abs(slope) > 10;
}

function differenceWords(paired: PairedDifference | undefined): string {
  if (!paired) return '';
  const error = paired.standardError === null ? '' : ` (${paired.standardError.toFixed(4)})`;
  return `${paired.difference >= 0 ? '+' : ''}${paired.difference.toFixed(4)}${error}`;
}

/** For the chain before the look: of the snaps for which it said so much, how many came. */
function reliabilityLines(methods: readonly MethodScore[]): string[] {
  const page =
    methods.find(({ id }) => id === 'chain_plan_archive') ?? methods.find(({ id }) => id === 'chain_plan_own');
  if (!page) return [];
  const bins = page.reliability.flatMap(({ forecasts, said, happened }) =>
    said === null ? [] : [`${percentToTenth(said)} said, ${percentToTenth(happened / forecasts)} of ${forecasts} came`],
  );
  return [`Said and came, by ${METHOD_WORDS[page.id]}: ${bins.join('; ')}\n`];
}

const SIZE_WORDS: Readonly<Record<CountSize, string>> = {
  under_5: 'under 5 snaps',
  from_5: '5 to 9 snaps',
  from_10: '10 to 19 snaps',
  from_20: '20 snaps or more',
  game: 'all snaps of a game',
};

function coverageCells({ size, intervals, covered, due, width }: CountCoverage): string[] {
  return [
    SIZE_WORDS[size],
    String(intervals),
    percentToTenth(covered / intervals),
    percentToTenth(due ?? 0),
    percentToTenth(width ?? 0),
  ];
}

function blankWords({ target, notCharted }: TargetScore): string {
  return `${TARGET_LABELS[target]}: not charted on any of ${counted(notCharted, 'snap', 'snaps')}`;
}

function tellWords(record: TellRecord): string {
  const { games, withTells, tells, neverSeen, judged, held, snaps } = record;
  const found = `Tells: found before ${withTells} of ${counted(games, 'game', 'games')}, ${tells} in all; ${neverSeen} of them could not be seen in it.`;
  if (record.came === null) return found;
  const shares = `On the ${counted(snaps, 'snap', 'snaps')} on which they could: said ${share(record.said)}, to plan with ${share(record.planWith)}, expected ${share(record.expectedThen)}; ${share(record.came)} came where ${share(record.expected)} were expected.`;
  return [
    found,
    `Of ${judged} seen three times or more ${held} stayed on their side of what was expected.`,
    shares,
    `Of the excess as said ${share(record.keptOfSaid)} came again, of the excess to plan with ${share(record.keptOfPlan)}.`,
  ].join('\n');
}

function share(part: number | null): string {
  return part === null ? 'none' : percentToTenth(part);
}
