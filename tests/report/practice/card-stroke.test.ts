import { describe, expect, it } from 'vitest';
import { LOOK_KINDS, type LookKind } from '../../../src/game/look-kinds.ts';
import type { LookCard } from '../../../src/pressure/practice/look-card.ts';
import { cardDrawing } from '../../../src/report/practice/card-drawing.ts';
import { CARD_SIZE, type CardSpot, cardSet, LINE_Y } from '../../../src/report/practice/card-spot.ts';
import { type CardStroke, cardStrokes } from '../../../src/report/practice/card-stroke.ts';

const MIDDLE = CARD_SIZE.width / 2;

function cardOf(kind: LookKind, shows: Partial<LookCard['shows']> = {}): LookCard {
  return { number: 1, kind, filmSnaps: 0, from: null, shows };
}

function strokesOf(kind: LookKind, shows: Partial<LookCard['shows']> = {}) {
  const card = cardOf(kind, shows);
  const set = cardSet(card);
  return { set, strokes: cardStrokes(card, set) };
}

function strokeOf(kind: LookKind, stroke: CardStroke['kind'], shows: Partial<LookCard['shows']> = {}) {
  const { set, strokes } = strokesOf(kind, shows);
  const found = strokes.filter((one) => one.kind === stroke);
  const points = found.at(-1)?.points ?? [];
  return { set, count: found.length, from: points[0] as CardSpot, to: points.at(-1) as CardSpot };
}

describe('motion on a card', () => {
  const strokeIn = (motion: string) => strokeOf('dropback', 'motion', { motion });
  const tackle = Math.max(...strokesOf('dropback').set.line.map(({ x }) => x - MIDDLE));
  const fromBall = ({ x }: CardSpot) => Math.abs(x - MIDDLE);

  it.each(['short', 'shift'])('%s comes in toward the ball and stays outside the tackle', (motion) => {
    const { from, to } = strokeIn(motion);
    expect(fromBall(to)).toBeLessThan(fromBall(from));
    expect(fromBall(to)).toBeGreaterThan(tackle);
    expect(Math.sign(to.x - MIDDLE)).toBe(Math.sign(from.x - MIDDLE));
  });

  it.each(['across', 'fast'])('%s crosses the ball and stops inside the receivers of the other side', (motion) => {
    const { from, to, set } = strokeIn(motion);
    expect(Math.sign(to.x - MIDDLE)).toBe(-Math.sign(from.x - MIDDLE));
    expect(fromBall(to)).toBeLessThan(Math.min(...set.strong.slice(0, 2).map(fromBall)));
  });

  it('takes the back out of the backfield to his own side, past the receivers inside', () => {
    const { from, to, set } = strokeIn('back_out');
    expect(from).toEqual(set.backs[0]);
    expect(fromBall(to)).toBeGreaterThan(tackle);
    expect(Math.sign(to.x - MIDDLE)).toBe(Math.sign(from.x - MIDDLE));
  });

  it.each(['none', undefined])('is not drawn for %s', (motion) => {
    expect(strokeOf('dropback', 'motion', motion === undefined ? {} : { motion }).count).toBe(0);
  });
});

describe('the line and the back on a card', () => {
  it.each([
    ['left', 3, -1],
    ['right', 3, 1],
    ['full_left', 5, -1],
    ['full_right', 5, 1],
    ['man', 5, 0],
  ] as const)('a slide %s moves %i linemen', (slide, linemen, way) => {
    const { strokes } = strokesOf('quick', { slide, back_spot: 'none' });
    const steps = strokes.filter(({ kind }) => kind === 'job');
    expect(steps).toHaveLength(linemen);
    for (const { points } of steps) expect(Math.sign((points[1]?.x ?? 0) - (points[0]?.x ?? 0))).toBe(way);
  });

  it('a back who releases gets out, one who blocks stays behind the line', () => {
    const releases = (kind: LookKind) => strokeOf(kind, 'job');
    const { from, to } = releases('wide_release');
    expect(Math.abs(to.x - from.x)).toBeGreaterThan(CARD_SIZE.width / 5);
    expect(to.y).toBeLessThan(LINE_Y);
    expect(releases('inside_release').to.y).toBeLessThan(LINE_Y);
    expect(releases('max_protection').to.y).toBeGreaterThan(LINE_Y);
  });
});

describe('the ball on a card', () => {
  it.each(LOOK_KINDS.map(({ id }) => id))('%s stays on the card', (kind) => {
    const { from, to } = strokeOf(kind, 'ball');
    for (const { x, y } of [from, to]) {
      expect(Math.min(x, y)).toBeGreaterThan(0);
      expect(x).toBeLessThan(CARD_SIZE.width);
      expect(y).toBeLessThan(CARD_SIZE.height);
    }
  });

  it('crosses the line on runs and throws, goes deepest on a deep shot, and not at all on a screen or a dropback', () => {
    const end = (kind: LookKind) => strokeOf(kind, 'ball').to.y;
    for (const kind of ['run', 'quarterback_run', 'quick', 'deep_shot'] as const)
      expect(end(kind)).toBeLessThan(LINE_Y);
    for (const kind of ['run', 'quarterback_run', 'quick'] as const) expect(end('deep_shot')).toBeLessThan(end(kind));
    for (const kind of ['screen', 'dropback', 'movement'] as const) expect(end(kind)).toBeGreaterThan(LINE_Y);
  });

  it('is carried by the back on a run, and by the quarterback on his own', () => {
    const back = strokeOf('run', 'ball');
    expect(back.from).toEqual(back.set.backs[0]);
    const own = strokeOf('quarterback_run', 'ball');
    expect(own.from).toEqual(own.set.passer);
  });
});

describe('an arrow on a card', () => {
  const STROKE = /<path class="(?:motion|job|ball)" d="([^"]+)"\/><path class="tip" d="([^"]+)"\/>/g;
  const pointsOf = (path: string) =>
    [...path.matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
  type Point = readonly [x: number, y: number];
  const between = ([x, y]: Point, [toX, toY]: Point): Point => [toX - x, toY - y];
  const apart = (one: Point, other: Point) => Math.hypot(...between(one, other));

  it.each(LOOK_KINDS.map(({ id }) => id))(
    'ends every stroke of %s with a head that points on, longer than wide',
    (kind) => {
      const { text } = cardDrawing(cardOf(kind, { motion: 'fast', slide: 'left' }));
      const strokes = [...text.matchAll(STROKE)];
      expect(strokes.length).toBeGreaterThanOrEqual(3);
      for (const [, stroke = '', head = ''] of strokes) {
        const [before, last] = pointsOf(stroke).slice(-2) as [Point, Point];
        const [tip, left, right] = pointsOf(head) as [Point, Point, Point];
        expect(tip).toEqual(last);
        const back: Point = [(left[0] + right[0]) / 2, (left[1] + right[1]) / 2];
        const [way, pointing] = [between(before, last), between(back, tip)];
        const cosine = (way[0] * pointing[0] + way[1] * pointing[1]) / Math.hypot(...way) / Math.hypot(...pointing);
        expect(cosine).toBeGreaterThan(0.99);
        expect(apart(left, right)).toBeLessThan(apart(back, tip));
      }
    },
  );
});
