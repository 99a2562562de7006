import type { Level } from '../../game/call-library.ts';
import { escapeText, type Html, trusted } from '../page/html.ts';
import type { CallPicture, CoverPath, RushPath } from './call-picture.ts';
import { DRAWN_SIZE, type DrawnPoint, drawnAt } from './field-scale.ts';
import { FIELD_WIDTH, type FieldPoint, HASH_TO_SIDELINE, insideField } from './field-size.ts';

/** Where a point of the field stands on this drawing. */
type Place = (point: FieldPoint) => DrawnPoint;

/**
 * A call drawn on the field to the level's hash marks: rushers as filled discs with solid arrows, cover men as open
 * discs with dashed lines to a bar (zone) or dotted lines to a ring (man). The offense stands below the line. The yards
 * around the ball are stretched, so that nobody stands on anybody.
 *
 * @param words - what the drawing shows, for those who do not see it
 */
export function fieldDrawing(picture: CallPicture, level: Level, words: string): Html {
  const place: Place = (point) => drawnAt(point, picture.offense.ball.across);
  const parts = [
    ground(level, place),
    offense(picture, place),
    ...picture.cover.map((man) => coverLine(man, place)),
    ...picture.rush.map((man) => rushLine(man, place)),
    ...picture.cover.map((man) => disc(place(man.from), man.letters, 'open')),
    ...picture.rush.map((man) => disc(place(man.from), man.letters, 'filled')),
  ];
  return trusted(
    `<svg class="field" role="img" aria-label="${escapeText(words)}" viewBox="0 0 ${n(DRAWN_SIZE.width)} ${n(DRAWN_SIZE.height)}"><g aria-hidden="true">${parts.join('')}</g></svg>`,
  );
}

function ground(level: Level, place: Place): string {
  const across = HASH_TO_SIDELINE[level];
  const lineAt = (past: number) => `M0,${n(place({ across, past }).y)}H${n(DRAWN_SIZE.width)}`;
  const marks = [across, FIELD_WIDTH - across].flatMap((hash) =>
    [5, 10, 15, -5].map((past) => {
      const { x, y } = place({ across: hash, past });
      return `M${n(x)},${n(y - 5)}v10`;
    }),
  );
  const yards = stroke([5, 10, 15, -5].map(lineAt).join(''), 'g');
  return `${yards}${stroke(marks.join(''), 'h')}${stroke(lineAt(0), 'l')}`;
}

function offense({ offense: set }: CallPicture, place: Place): string {
  const squares = set.line.map(place).map(({ x, y }) => `M${n(x - 7)},${n(y - 7)}h14v14h-14Z`);
  const round = [...set.field, ...set.boundary, set.passer, set.back]
    .map(place)
    .map(({ x, y }) => `M${n(x - 7)},${n(y)}a7,7 0 1 0 14,0a7,7 0 1 0 -14,0`);
  return `<path class="o" d="${[...squares, ...round].join('')}"/>`;
}

function rushLine({ from, crosses, to, way, peels }: RushPath, place: Place): string {
  const [lane, end] = [place(crosses), place(to)];
  const line = way === 'loop' ? `Q${at(place(behindTheLine(from, crosses)))} ${at(lane)}` : `L${at(lane)}`;
  const late = way === 'late_if_back_blocks' ? 'r late' : 'r';
  const path = stroke(`M${at(place(from))}${line}L${at(end)}`, late);
  const head = `<path class="a" d="${arrowHead(lane, end)}"/>`;
  return path + head + (peels ? peelMark(crosses, lane) : '');
}

/** A looper goes behind the line first, then through his lane. */
function behindTheLine(from: FieldPoint, crosses: FieldPoint): FieldPoint {
  return { across: crosses.across, past: Math.max(2.6, from.past * 0.7) };
}

/** A small hook outward where a peeling rusher turns off with the back. */
function peelMark({ across }: FieldPoint, { x, y }: DrawnPoint): string {
  const out = across > FIELD_WIDTH / 2.6 ? 1 : -1;
  return stroke(`M${n(x)},${n(y + 10)}q${out * 9},12 ${out * 26},10`, 'p');
}

/** Half of a zone's bar, in drawing units. */
const HALF_BAR = 13;

function coverLine({ from, spot, adds }: CoverPath, place: Place): string {
  const [start, end] = [place(from), place(insideField(spot.at))];
  const plus = adds ? stroke(`M${n(start.x + 17)},${n(start.y)}h10m-5,-5v10`, 'r') : '';
  if (spot.kind === 'man') return stroke(`M${at(start)}L${at(end)}`, 'm') + ring(end) + plus;
  const barY = isAtHome(start, end) ? start.y - 18 : end.y;
  const barX = Math.min(DRAWN_SIZE.width - HALF_BAR - 2, Math.max(HALF_BAR + 2, end.x));
  const bar = stroke(`M${n(barX - HALF_BAR)},${n(barY)}h${2 * HALF_BAR}`, 'b');
  return stroke(`M${at(start)}L${at(end)}`, spot.kind === 'watch' ? 'm' : 'z') + bar + plus;
}

/** A man with his zone where he stands: his bar is drawn above his disc instead of under it. */
function isAtHome(from: DrawnPoint, to: DrawnPoint): boolean {
  return Math.hypot(to.x - from.x, to.y - from.y) < 24;
}

function ring({ x, y }: DrawnPoint): string {
  return stroke(`M${n(x - 11)},${n(y)}a11,11 0 1 0 22,0a11,11 0 1 0 -22,0`, 'c');
}

function disc({ x, y }: DrawnPoint, letters: string, look: 'open' | 'filled'): string {
  const shape = `<circle class="${look}" cx="${n(x)}" cy="${n(y)}" r="13"/>`;
  return `${shape}<text class="${look}" x="${n(x)}" y="${n(y + 5.5)}">${escapeText(letters)}</text>`;
}

function arrowHead(from: DrawnPoint, to: DrawnPoint): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const base = { x: to.x - along.x * 12, y: to.y - along.y * 12 };
  const left = { x: base.x - along.y * 5.5, y: base.y + along.x * 5.5 };
  const right = { x: base.x + along.y * 5.5, y: base.y - along.x * 5.5 };
  return `M${at(to)}L${at(left)}L${at(right)}Z`;
}

function stroke(d: string, kind: string): string {
  return `<path class="${kind}" d="${d}"/>`;
}

function at({ x, y }: DrawnPoint): string {
  return `${n(x)},${n(y)}`;
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
