import type { Level } from '../../game/call-library.ts';
import { escapeText, type Html, trusted } from '../page/html.ts';
import type { CallPicture, CoverPath, RushPath } from './call-picture.ts';
import { FIELD_WIDTH, type FieldPoint, HASH_TO_SIDELINE, insideField } from './field-size.ts';

/** Drawing units for a yard, and the yards shown past and behind the line of scrimmage. */
const UNIT = 10;
const SHOWN = { past: 17.5, behind: 7 } as const;

/**
 * A call drawn on the field to the level's hash marks: rushers as filled discs with solid arrows, cover men as open
 * discs with dashed lines to a bar (zone) or dotted lines to a ring (man). The offense stands below the line.
 *
 * @param words - what the drawing shows, for those who do not see it
 */
export function fieldDrawing(picture: CallPicture, level: Level, words: string): Html {
  const width = n(FIELD_WIDTH * UNIT);
  const height = n((SHOWN.past + SHOWN.behind) * UNIT);
  const parts = [
    ground(level),
    offense(picture),
    ...picture.cover.map(coverLine),
    ...picture.rush.map(rushLine),
    ...picture.cover.map((man) => disc(man.from, man.letters, 'open')),
    ...picture.rush.map((man) => disc(man.from, man.letters, 'filled')),
  ];
  return trusted(
    `<svg class="field" role="img" aria-label="${escapeText(words)}" viewBox="0 0 ${width} ${height}"><g aria-hidden="true">${parts.join('')}</g></svg>`,
  );
}

function ground(level: Level): string {
  const hash = HASH_TO_SIDELINE[level];
  const yards = [5, 10, 15, -5].map((past) => stroke(`M0,${y(past)}H${n(FIELD_WIDTH * UNIT)}`, 'g'));
  const marks = [hash, FIELD_WIDTH - hash].flatMap((across) =>
    Array.from({ length: 23 }, (_, i) => i - 6).map((past) => `M${n(across * UNIT - 4)},${y(past)}h8`),
  );
  return `${yards.join('')}${stroke(marks.join(''), 'h')}${stroke(`M0,${y(0)}H${n(FIELD_WIDTH * UNIT)}`, 'l')}`;
}

function offense({ offense: set }: CallPicture): string {
  const squares = set.line.map((man) => `M${x(man, -5)},${y(man.past, -5)}h10v10h-10Z`);
  const round = [...set.field, ...set.boundary, set.passer, set.back].map(
    (man) => `M${x(man, -5.5)},${y(man.past)}a5.5,5.5 0 1 0 11,0a5.5,5.5 0 1 0 -11,0`,
  );
  return `<path class="o" d="${[...squares, ...round].join('')}"/>`;
}

function rushLine({ from, crosses, to, way, peels }: RushPath): string {
  const line = way === 'loop' ? looped(from, crosses) : `L${point(crosses)}`;
  const late = way === 'late_if_back_blocks' ? 'r late' : 'r';
  const path = stroke(`M${point(from)}${line}L${point(to)}`, late);
  const head = `<path class="a" d="${arrowHead(crosses, to)}"/>`;
  return path + head + (peels ? peelMark(crosses) : '');
}

/** A looper goes behind the line first, then through his lane. */
function looped(from: FieldPoint, crosses: FieldPoint): string {
  const behind = { across: crosses.across, past: Math.max(2.6, from.past * 0.7) };
  return `Q${point(behind)} ${point(crosses)}`;
}

/** A small hook outward where a peeling rusher turns off with the back. */
function peelMark(at: FieldPoint): string {
  const out = at.across > FIELD_WIDTH / 2.6 ? 1 : -1;
  return stroke(`M${x(at)},${y(-1)}q${n(out * 9)},12 ${n(out * 26)},10`, 'p');
}

function coverLine({ from, spot, adds }: CoverPath): string {
  const at = insideField(spot.at);
  const plus = adds ? stroke(`M${x(from, 17)},${y(from.past)}h10m-5,-5v10`, 'r') : '';
  if (spot.kind === 'man') return stroke(`M${point(from)}L${point(at)}`, 'm') + ring(at) + plus;
  const bar = stroke(`M${x(at, -13)},${y(isAtHome(from, at) ? from.past + 1.8 : at.past)}h26`, 'b');
  return stroke(`M${point(from)}L${point(at)}`, spot.kind === 'watch' ? 'm' : 'z') + bar + plus;
}

/** A man whose zone is where he stands: his bar is drawn above his disc instead of under it. */
function isAtHome(from: FieldPoint, at: FieldPoint): boolean {
  return Math.hypot(at.across - from.across, at.past - from.past) < 2.4;
}

function ring(at: FieldPoint): string {
  return stroke(`M${x(at, -10)},${y(at.past)}a10,10 0 1 0 20,0a10,10 0 1 0 -20,0`, 'c');
}

function disc(at: FieldPoint, letters: string, look: 'open' | 'filled'): string {
  const shape = `<circle class="${look}" cx="${x(at)}" cy="${y(at.past)}" r="12"/>`;
  return `${shape}<text class="${look}" x="${x(at)}" y="${y(at.past, 5.5)}">${escapeText(letters)}</text>`;
}

function arrowHead(from: FieldPoint, to: FieldPoint): string {
  const length = Math.hypot(to.across - from.across, to.past - from.past) || 1;
  const along = { across: (to.across - from.across) / length, past: (to.past - from.past) / length };
  const base = { across: to.across - along.across * 1.1, past: to.past - along.past * 1.1 };
  const left = { across: base.across - along.past * 0.5, past: base.past + along.across * 0.5 };
  const right = { across: base.across + along.past * 0.5, past: base.past - along.across * 0.5 };
  return `M${point(to)}L${point(left)}L${point(right)}Z`;
}

function stroke(d: string, kind: string): string {
  return `<path class="${kind}" d="${d}"/>`;
}

function point(at: FieldPoint): string {
  return `${x(at)},${y(at.past)}`;
}

function x(at: FieldPoint, shift = 0): string {
  return n(at.across * UNIT + shift);
}

function y(past: number, shift = 0): string {
  return n((SHOWN.past - past) * UNIT + shift);
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
