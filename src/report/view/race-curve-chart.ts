import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { RaceLine, ReleaseCurve } from '../../pressure/protection/protection-result.ts';
import { normalCdf } from '../../stats/normal.ts';
import { type HeldCurve, type Race, raceSpec } from '../chart/race-spec.ts';
import { answerLabel } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import type { ChartView } from './block.ts';
import { isCarried } from './carried-calls.ts';
import { raceAgainst } from './race-chart.ts';
import { numberCell, numbers, type TableView, textCell, words } from './table-view.ts';

/** The race of the carried call that is home most often: how long they hold the ball against when its first man is there. */
export function raceCurveChart(plan: WeekPlan): ChartView {
  const { release, race } = plan.protection;
  const best = raceAgainst(race, 'dropback').find((line) => isCarried(plan)(line.call));
  const curves = best === undefined ? [] : heldCurves(release, best.firstArrival);
  return {
    id: 'race-curves',
    title: curveTitle(best),
    caption:
      'Curves: share of balls still held, on a dropback (solid) and on the quick game (dashed). Rule: half of the time the first man is there by then. Tinted: dropbacks on which the ball is still held when he is.',
    drawing: best === undefined || curves.length === 0 ? null : { kind: 'plot', spec: raceSpec(raceOf(best, curves)) },
    empty: 'No call was raced against their dropback, so nothing is drawn.',
    table: releaseTable(release),
  };
}

function curveTitle(best: RaceLine | undefined): string {
  if (best === undefined) return 'How long they hold the ball';
  return `${best.call}: first man there at ${fixed(best.firstArrival, 1)} s, home in time on about ${percent(best.home)} of dropbacks`;
}

function raceOf(best: RaceLine, curves: readonly HeldCurve[]): Race {
  const arrivalLabel = `first man, ${fixed(best.firstArrival, 1)} s`;
  return { curves, arrival: best.firstArrival, arrivalLabel, lastSecond: LAST_SECOND };
}

/** Hardly a ball is held longer; sacks are counted apart. */
const LAST_SECOND = 6;
const STEP = 0.1;

function heldCurves(release: readonly ReleaseCurve[], arrival: number): readonly HeldCurve[] {
  const drawn = [
    { answer: 'dropback', dash: 'solid' },
    { answer: 'quick', dash: 'dashed' },
  ] as const;
  return drawn.flatMap(({ answer, dash }) => {
    const curve = release.find((entry) => entry.answer === answer);
    if (curve === undefined) return [];
    const label = `${answerLabel(answer).toLowerCase()}: half out by ${fixed(curve.median, 1)} s`;
    return [{ id: answer, label, dash, median: curve.median, points: heldPoints(curve, arrival) }];
  });
}

/** Every tenth of a second, and the moment of the arrival itself, so that the tint begins at the rule. */
function heldPoints({ mu, sigma }: ReleaseCurve, arrival: number) {
  const tenths = Array.from({ length: Math.round(LAST_SECOND / STEP) + 1 }, (_, i) => Math.round(i * STEP * 10) / 10);
  const moments = tenths.includes(arrival) ? tenths : [...tenths, arrival].sort((a, b) => a - b);
  return moments.map((seconds) => {
    const held = seconds === 0 ? 1 : 1 - normalCdf((Math.log(seconds) - mu) / sigma);
    return { seconds, held: Math.round(held * 1e4) / 1e4 };
  });
}

function sourceWords({ timedThrows, sacks, othersTimed }: ReleaseCurve): string {
  const held = sacks === 0 ? '' : `, ${sacks} sacks counted as balls held past the usual sack`;
  return [
    'published curve of professional play',
    ...(othersTimed > 0 ? [`${othersTimed} timed throws of other opponents`] : []),
    timedThrows === 0 ? 'none of their throws timed' : `${timedThrows} of their throws timed${held}`,
  ].join(', ');
}

function releaseTable(release: readonly ReleaseCurve[]): TableView {
  return {
    id: 'release-table',
    caption: 'How long they hold the ball',
    columns: [
      words('On'),
      numbers('Half out by, 80% interval'),
      numbers('Timed throws'),
      numbers('Sacks'),
      words('From'),
    ],
    rows: release.map((curve) => ({
      name: answerLabel(curve.answer),
      cells: [
        numberCell(`${fixed(curve.median, 1)} s (${fixed(curve.low, 1)}-${fixed(curve.high, 1)})`, curve.median),
        numberCell(String(curve.timedThrows), curve.timedThrows),
        numberCell(String(curve.sacks), curve.sacks),
        textCell(sourceWords(curve)),
      ],
    })),
    empty: 'no release was timed and no curve was given',
  };
}
