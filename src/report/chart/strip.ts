import type { IntervalAxis, IntervalRow } from './interval-row.ts';

/** Size of a strip's drawing in its own units; it scales with its place. */
const STRIP = { width: 300, height: 20, edge: 7 } as const;
const MIDDLE = STRIP.height / 2;

/**
 * One row of an interval chart: a thin line over the whole scale, a gray tick for each other offense, the interval as a
 * bar with two ends, the value as a dot, a second value as an open diamond. A thin row is open and dashed, a row
 * without snaps hatched.
 *
 * @returns SVG markup; the numbers stand beside it as text
 */
export function stripDrawing(row: IntervalRow, axis: IntervalAxis): string {
  const marks = row.state === 'none' ? hatch() : interval(row, axis) + second(row, axis) + dot(row, axis);
  const parts = [scaleLine(), ticks(row.others ?? [], axis), reference(axis), marks];
  return `<svg class="draw" aria-hidden="true" viewBox="0 0 ${STRIP.width} ${STRIP.height}">${parts.join('')}</svg>`;
}

/**
 * Where a value stands on a strip, in the drawing's units; values beyond the scale stand at its end.
 *
 * @example stripPlace(0.5, [0, 1]) // 150
 */
export function stripPlace(value: number, [low, high]: IntervalAxis['domain']): number {
  const share = Math.min(1, Math.max(0, (value - low) / (high - low)));
  return round(STRIP.edge + share * (STRIP.width - 2 * STRIP.edge));
}

function scaleLine(): string {
  return `<path class="scale" d="M${STRIP.edge},${MIDDLE}H${STRIP.width - STRIP.edge}"/>`;
}

function ticks(others: readonly number[], { domain }: IntervalAxis): string {
  if (others.length === 0) return '';
  return `<path class="others" d="${others.map((value) => `M${stripPlace(value, domain)},${MIDDLE - 6}v12`).join('')}"/>`;
}

function reference({ reference: rule, domain }: IntervalAxis): string {
  return rule === null ? '' : `<path class="reference" d="M${stripPlace(rule.at, domain)},0V${STRIP.height}"/>`;
}

function interval({ low, high, state }: IntervalRow, { domain }: IntervalAxis): string {
  const [from, to] = [stripPlace(low, domain), stripPlace(high, domain)];
  const line = `<path class="range${state === 'thin' ? ' thin' : ''}" d="M${from},${MIDDLE}H${to}"/>`;
  return `${line}<path class="ends" d="M${from},${MIDDLE - 4}v8M${to},${MIDDLE - 4}v8"/>`;
}

function dot({ value, state }: IntervalRow, { domain }: IntervalAxis): string {
  const look = state === 'thin' ? 'open' : 'dot';
  return `<circle class="${look}" cx="${stripPlace(value, domain)}" cy="${MIDDLE}" r="5"/>`;
}

function second({ second: value }: IntervalRow, { domain }: IntervalAxis): string {
  if (value === null) return '';
  return `<path class="second" d="M${stripPlace(value, domain)},${MIDDLE - 6}l5,6l-5,6l-5,-6Z"/>`;
}

function hatch(): string {
  const strokes = Array.from({ length: 19 }, (_, i) => `M${round(STRIP.edge + i * 15)},${STRIP.height - 3}l14,-14`);
  return `<path class="hatched" d="${strokes.join('')}"/>`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
