import { FIELD_WIDTH, type FieldPoint } from './field-size.ts';

/** A place on the drawing, in drawing units: right of the left edge, down from the top. */
export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
}

/** Drawing units for a yard where nothing is stretched; the drawing is as wide as the field. */
const UNIT = 10;
/** Yards to each side of the ball, and past the line, within which the drawing is stretched, and by how much. */
const [CLOSE_ACROSS, STRETCH_ACROSS] = [7, 1.65];
const [CLOSE_PAST, STRETCH_PAST] = [6, 1.55];
/** Drawing units for a yard beyond that depth, and behind the line. */
const [DEEP_UNIT, BEHIND_UNIT] = [8, 11];
/** Yards shown past and behind the line of scrimmage. */
const SHOWN = { past: 17.5, behind: 6.6 } as const;

const LINE_Y = CLOSE_PAST * UNIT * STRETCH_PAST + (SHOWN.past - CLOSE_PAST) * DEEP_UNIT;

/** Width and height of a drawing, in drawing units. */
export const DRAWN_SIZE = { width: FIELD_WIDTH * UNIT, height: LINE_Y + SHOWN.behind * BEHIND_UNIT } as const;

/**
 * Where a point of the field stands on the drawing. Eleven men stand within a few yards of the ball, so the drawing is
 * stretched there and squeezed outside; sidelines and the order from left to right stay.
 *
 * @param ball - yards from the left sideline to the ball
 */
export function drawnAt({ across, past }: FieldPoint, ball: number): DrawnPoint {
  return { x: drawnAcross(across, ball), y: drawnDown(past) };
}

function drawnAcross(across: number, ball: number): number {
  const yards = across - ball;
  const side = yards < 0 ? -1 : 1;
  const room = side < 0 ? ball : FIELD_WIDTH - ball;
  const close = CLOSE_ACROSS * STRETCH_ACROSS;
  const rest = (room - close) / (room - CLOSE_ACROSS);
  const away = Math.abs(yards);
  const stretched = away <= CLOSE_ACROSS ? away * STRETCH_ACROSS : close + (away - CLOSE_ACROSS) * rest;
  return UNIT * (ball + side * stretched);
}

function drawnDown(past: number): number {
  if (past < 0) return LINE_Y - past * BEHIND_UNIT;
  const close = Math.min(past, CLOSE_PAST) * UNIT * STRETCH_PAST;
  return LINE_Y - close - Math.max(0, past - CLOSE_PAST) * DEEP_UNIT;
}
