import type { LookCard } from '../../pressure/practice/look-card.ts';

/** A place on a scout card in drawing units, seen from behind the offense; the defense is at the top. */
export interface CardSpot {
  readonly x: number;
  readonly y: number;
}

/** Size of a card's drawing. */
export const CARD_SIZE = { width: 300, height: 140 } as const;
/** Height of the line of scrimmage, and the middle of the card. */
export const LINE_Y = 50;
const MIDDLE = CARD_SIZE.width / 2;
const GAP = 17;

/** Where everybody stands on a card. `side` is 1 when the strength is to the right, -1 when to the left. */
export interface CardSet {
  readonly side: 1 | -1;
  readonly line: readonly CardSpot[];
  readonly strong: readonly CardSpot[];
  readonly away: readonly CardSpot[];
  readonly passer: CardSpot;
  readonly backs: readonly CardSpot[];
}

/**
 * The set of a look as charted. What was not charted is drawn as common practice: balanced receivers, shotgun, back to
 * the weak side, strength right.
 */
export function cardSet({ shows }: LookCard): CardSet {
  const side = shows.strength === 'left' ? -1 : 1;
  const [strong, away] = receiverCounts(shows.receivers);
  const passer = { x: MIDDLE, y: PASSER_Y[shows.quarterback_depth ?? 'shotgun'] ?? 94 };
  const backs = backSpots(shows.back_spot ?? 'weak', passer, side);
  const attached = Math.max(0, 5 - strong - away - backs.length);
  return {
    side,
    line: [-2, -1, 0, 1, 2].map((place) => ({ x: MIDDLE + place * GAP, y: LINE_Y + 6 })),
    strong: [...splitSpots(strong, side), ...attachedSpots(attached, side)],
    away: splitSpots(away, side === 1 ? -1 : 1),
    passer,
    backs,
  };
}

const PASSER_Y: Readonly<Record<string, number>> = { under_center: 68, pistol: 86, shotgun: 94 };

function receiverCounts(code: string | undefined): readonly [number, number] {
  const found = /^(\d)x(\d)$/.exec(code ?? '2x2');
  return [Number(found?.[1] ?? 2), Number(found?.[2] ?? 2)];
}

/** Outside first; the outermost on the line, the others a step off it. */
function splitSpots(count: number, side: 1 | -1): CardSpot[] {
  const outside = [130, 98, 72, 58, 48];
  return outside.slice(0, count).map((x, i) => ({ x: MIDDLE + side * x, y: LINE_Y + (i === 0 ? 6 : 14) }));
}

/** Players who are neither receivers nor backs stand beside the tackle of the strong side, then the other. */
function attachedSpots(count: number, side: 1 | -1): CardSpot[] {
  return [3, -3].slice(0, count).map((place) => ({ x: MIDDLE + side * place * GAP, y: LINE_Y + 6 }));
}

function backSpots(spot: string, passer: CardSpot, side: 1 | -1): CardSpot[] {
  const beside = (to: number) => ({ x: MIDDLE + to * 27, y: Math.max(passer.y, 92) });
  if (spot === 'none') return [];
  if (spot === 'behind') return [{ x: MIDDLE, y: Math.min(passer.y + 46, CARD_SIZE.height - 8) }];
  if (spot === 'both') return [beside(side), beside(-side)];
  return [beside(spot === 'strong' ? side : -side)];
}
