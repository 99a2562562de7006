import type { LookCard } from '../../pressure/practice/look-card.ts';
import { CARD_SIZE, type CardSet, type CardSpot, LINE_Y } from './card-spot.ts';

/** A line on a card: `motion` before the snap, `ball` for the ball or its carrier, `job` for the line and the back. */
export interface CardStroke {
  readonly kind: 'motion' | 'ball' | 'job';
  readonly points: readonly CardSpot[];
  /** Drawn as a bend through its middle point instead of corners. */
  readonly bent?: true;
}

/** Everything that moves on a card: motion, protection, the back's job, and the ball. */
export function cardStrokes(card: LookCard, set: CardSet): readonly CardStroke[] {
  return [...motionStroke(card, set), ...slideStrokes(card, set), ...backStroke(card, set), ballStroke(card, set)];
}

const MIDDLE = CARD_SIZE.width / 2;

function motionStroke({ shows }: LookCard, set: CardSet): CardStroke[] {
  const [back] = set.backs;
  if (shows.motion === 'back_out') {
    return back ? [{ kind: 'motion', points: [back, { x: MIDDLE + outward(back) * 118, y: LINE_Y + 16 }] }] : [];
  }
  const from = set.away.at(-1) ?? set.strong[0];
  const reach = MOTION_REACH[shows.motion ?? ''];
  if (from === undefined || reach === undefined) return [];
  const start = { x: from.x, y: from.y + 8 };
  return [{ kind: 'motion', points: [start, { x: from.x - outward(from) * reach, y: from.y + 10 }] }];
}

/** How far a receiver's motion goes toward and past the ball. */
const MOTION_REACH: Readonly<Record<string, number>> = { shift: 34, short: 28, across: 120, fast: 150 };

/** -1 when a spot is left of the ball, 1 when right of it. */
function outward({ x }: CardSpot): 1 | -1 {
  return x < MIDDLE ? -1 : 1;
}

function slideStrokes({ shows }: LookCard, set: CardSet): CardStroke[] {
  const to = SLIDE_TO[shows.slide ?? ''];
  if (to === undefined) return [];
  const half = shows.slide === 'left' || shows.slide === 'right';
  const stepping = set.line.filter((_, i) => !half || (to < 0 ? i <= 2 : i >= 2));
  return stepping.map(({ x }) => ({
    kind: 'job',
    points: [
      { x, y: LINE_Y },
      { x: x + to * 9, y: LINE_Y - 9 },
    ],
  }));
}

/** A half slide moves the center and the linemen on its side; a full slide all of them; man goes straight. */
const SLIDE_TO: Readonly<Record<string, number>> = { left: -1, right: 1, full_left: -1, full_right: 1, man: 0 };

function backStroke({ shows, kind }: LookCard, set: CardSet): CardStroke[] {
  const [back] = set.backs;
  const job = BACK_JOBS[kind] ?? shows.back_action;
  if (back === undefined || job === undefined) return [];
  const to = (x: number, y: number) => ({ x: back.x + outward(back) * x, y });
  if (job === 'releases_wide') {
    return [{ kind: 'job', bent: true, points: [back, to(55, back.y + 4), to(82, LINE_Y - 6)] }];
  }
  return [{ kind: 'job', points: [back, job === 'releases_inside' ? to(2, LINE_Y - 26) : to(12, LINE_Y + 20)] }];
}

/** The back's job where the kind of look decides it. */
const BACK_JOBS: Readonly<Record<string, string>> = {
  wide_release: 'releases_wide',
  inside_release: 'releases_inside',
  max_protection: 'blocks',
};

function ballStroke(card: LookCard, set: CardSet): CardStroke {
  const { passer, side, backs } = set;
  const carrier = backs[0] ?? passer;
  const at = (x: number, y: number) => ({ x: passer.x + side * x, y });
  const bent = (...points: CardSpot[]): CardStroke => ({ kind: 'ball', bent: true, points });
  switch (card.kind) {
    case 'run':
      return { kind: 'ball', points: [carrier, at(9, LINE_Y + 12), at(12, LINE_Y - 32)] };
    case 'quarterback_run':
      return bent(passer, at(30, passer.y - 4), at(46, LINE_Y - 30));
    case 'screen':
      return bent(passer, at(20, passer.y + 22), at(88, LINE_Y + 22));
    case 'quick':
    case 'empty':
      return { kind: 'ball', points: [passer, at(92, LINE_Y - 20)] };
    case 'movement':
      return bent(passer, at(60, passer.y + 14), at(112, passer.y - 12));
    case 'deep_shot':
    case 'trips_deep':
      return { kind: 'ball', points: [at(0, passer.y + 10), at(98, 8)] };
    case 'dropback':
    case 'wide_release':
    case 'inside_release':
    case 'max_protection':
      return { kind: 'ball', points: [passer, at(0, passer.y + 22)] };
    default:
      return card.kind satisfies never;
  }
}
