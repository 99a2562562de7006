import { lookKindLabel } from '../../game/look-kinds.ts';
import type { LookCard } from '../../pressure/practice/look-card.ts';
import { escapeText, type Html, trusted } from '../page/html.ts';
import { CARD_SIZE, type CardSpot, cardSet, LINE_Y } from './card-spot.ts';
import { type CardStroke, cardStrokes } from './card-stroke.ts';
import { cardWords } from './card-words.ts';

/**
 * A scout card drawn from behind the offense: squares are the line, open discs the eligible men, the filled disc the
 * passer. Dashed is motion, thin is protection and the back's job, thick is the ball or its carrier.
 */
export function cardDrawing(card: LookCard): Html {
  const set = cardSet(card);
  const squares = set.line.map(({ x, y }) => `<rect x="${n(x - 5.5)}" y="${n(y - 5.5)}" width="11" height="11"/>`);
  const eligible = [...set.strong, ...set.away, ...set.backs].map((spot) => disc(spot, 'e'));
  const lines = cardStrokes(card, set).map(strokeMarkup);
  const scrimmage = `<path class="s" d="M4,${LINE_Y - 3}H${CARD_SIZE.width - 4}"/>`;
  const parts = [scrimmage, ...lines, ...squares, ...eligible, disc(set.passer, 'q')].join('');
  const words = escapeText(`${lookKindLabel(card.kind)}: ${cardWords(card)}`);
  return trusted(
    `<svg class="look" role="img" aria-label="${words}" viewBox="0 0 ${CARD_SIZE.width} ${CARD_SIZE.height}"><g aria-hidden="true">${parts}</g></svg>`,
  );
}

function disc({ x, y }: CardSpot, kind: string): string {
  return `<circle class="${kind}" cx="${n(x)}" cy="${n(y)}" r="6"/>`;
}

function strokeMarkup({ kind, points, bent }: CardStroke): string {
  const [from, middle, end] = points;
  const last = points.at(-1);
  const before = points.at(-2);
  if (!from || !last || !before) return '';
  const bend =
    bent && middle && end
      ? `Q${at(middle)} ${at(end)}`
      : points
          .slice(1)
          .map((spot) => `L${at(spot)}`)
          .join('');
  return `<path class="${kind}" d="M${at(from)}${bend}"/><path class="tip" d="${tip(before, last)}"/>`;
}

/** A small arrow head at the end of a line. */
function tip(before: CardSpot, last: CardSpot): string {
  const angle = Math.atan2(last.y - before.y, last.x - before.x);
  const corner = (turn: number) => ({ x: last.x - 8 * Math.cos(angle + turn), y: last.y - 8 * Math.sin(angle + turn) });
  return `M${at(last)}L${at(corner(0.42))}L${at(corner(-0.42))}Z`;
}

function at({ x, y }: CardSpot): string {
  return `${n(x)},${n(y)}`;
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
