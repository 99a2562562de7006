import type { TopLevelSpec } from 'vega-lite';
import { CHART_CONFIG, PAINT, SIZE, tintOf } from './chart-config.ts';

/** One layer of a layered chart. */
type Layer = Extract<TopLevelSpec, { layer: unknown }>['layer'][number];

/** A point of a curve: seconds after the snap, and the share of balls still held then. */
export interface HeldPoint {
  readonly seconds: number;
  readonly held: number;
}

/** One curve of balls still held, with the words written beside it where half of them are out. */
export interface HeldCurve {
  readonly id: string;
  readonly label: string;
  readonly dash: 'solid' | 'dashed';
  readonly median: number;
  readonly points: readonly HeldPoint[];
}

/** A race: how long the ball is held, and when the first man is there. The first curve carries the overlap. */
export interface Race {
  readonly curves: readonly HeldCurve[];
  readonly arrival: number;
  readonly arrivalLabel: string;
  readonly lastSecond: number;
}

/** The race as curves of balls still held, the first man's arrival as a rule, and the balls he is in time for as a tint. */
export function raceSpec(race: Race): TopLevelSpec {
  return {
    config: CHART_CONFIG,
    width: SIZE.plot,
    height: SIZE.height,
    data: { values: [] },
    layer: [overlapLayer(race), ...race.curves.flatMap((curve) => curveLayers(curve, race)), ...arrivalLayers(race)],
  };
}

function overlapLayer(race: Race): Layer {
  const points = race.curves[0]?.points ?? [];
  const values = points.filter((point) => point.seconds >= race.arrival);
  return {
    data: { values },
    mark: { type: 'area', color: tintOf(1), opacity: 1, line: false },
    encoding: { x: secondsAxis(race), y: heldAxis() },
  };
}

function curveLayers(curve: HeldCurve, race: Race): readonly Layer[] {
  const dashed = curve.dash === 'dashed';
  return [
    {
      data: { values: [...curve.points] },
      mark: { type: 'line', color: PAINT.ink, strokeWidth: 2.5, ...(dashed ? { strokeDash: [6, 4] } : {}) },
      encoding: { x: secondsAxis(race), y: heldAxis() },
    },
    {
      data: { values: [dashed ? lowLeft(curve) : { seconds: curve.median, held: 0.5, label: curve.label }] },
      mark: { type: 'text', align: 'left', dx: 10, dy: -8 },
      encoding: { x: secondsAxis(race), y: heldAxis(), text: { field: 'label' } },
    },
  ];
}

/** The corner under the curves is free: no ball is out that early. */
const lowLeft = ({ label }: HeldCurve) => ({ seconds: 0, held: 0.08, label });

function arrivalLayers(race: Race): readonly Layer[] {
  const data = { values: [{ seconds: race.arrival, label: race.arrivalLabel }] };
  return [
    { data, mark: { type: 'rule', color: PAINT.ink, strokeWidth: 3 }, encoding: { x: secondsAxis(race) } },
    {
      data,
      mark: { type: 'text', baseline: 'bottom', dy: -6 },
      encoding: { x: secondsAxis(race), y: { value: 0 }, text: { field: 'label' } },
    },
  ];
}

function secondsAxis({ lastSecond }: Race) {
  const values = Array.from({ length: Math.floor(lastSecond) + 1 }, (_, second) => second);
  return {
    field: 'seconds',
    type: 'quantitative' as const,
    scale: { domain: [0, lastSecond], nice: false },
    axis: { title: 'Seconds after the snap', values, grid: false },
  };
}

function heldAxis() {
  return {
    field: 'held',
    type: 'quantitative' as const,
    scale: { domain: [0, 1], nice: false },
    axis: { title: 'Balls still held', format: '.0%', values: [0, 0.5, 1], grid: true },
  };
}
