import type { Lane } from '../call-library.ts';

/** A rusher to be given a lane. */
export interface Starter {
  readonly role: string;
  /** Yards from the ball where he lines up, plus toward the near side. */
  readonly lateral: number;
  /** Yards off the ball. */
  readonly depth: number;
  readonly lineman: boolean;
  /** The lane he was given; undefined where the standard decides. */
  readonly lane?: Lane | undefined;
}

type Side = 'near' | 'far';
type Gap = 'A' | 'B' | 'C' | 'D';

/** A lineman this close to the ball is over it; a rusher this close to it takes the A gap when his side has two. Judgment. */
const OVER_BALL = 1;
const INSIDE = 2;

/**
 * The lanes of a standard path, from where the men line up: the widest man of a side contains (C), the next work inside
 * (B, A), and the lineman over the ball takes the A gap of the side with fewer men, the near one when they are even. Where two
 * line up at one width, the man off the line goes outside. A lane that was written stays, and is not given twice.
 *
 * @returns the lane by role; a man for whom no lane is left has none
 * @see common practice, no source
 */
export function standardLanes(starters: readonly Starter[]): ReadonlyMap<string, Lane> {
  const nose = starters.find((man) => man.lineman && man.lane === undefined && Math.abs(man.lateral) < OVER_BALL);
  const others = starters.filter((man) => man !== nose);
  const on = (side: Side) => others.filter((man) => sideOf(man) === side).sort(outsideFirst);
  const noseSide: Side = on('far').length < on('near').length ? 'far' : 'near';
  const lanes = new Map<string, Lane>(nose ? [[nose.role, `${noseSide}_A`]] : []);
  for (const side of ['near', 'far'] as const) {
    const gaps = gapsFor(on(side), nose !== undefined && noseSide === side);
    for (const [role, gap] of gaps) lanes.set(role, `${side}_${gap}`);
  }
  return lanes;
}

function sideOf({ lane, lateral }: Starter): Side {
  if (lane !== undefined) return lane.startsWith('near') ? 'near' : 'far';
  return lateral >= 0 ? 'near' : 'far';
}

function outsideFirst(a: Starter, b: Starter): number {
  return Math.abs(b.lateral) - Math.abs(a.lateral) || b.depth - a.depth || (a.role < b.role ? -1 : 1);
}

/** The gaps of one side, its men widest first. */
function gapsFor(men: readonly Starter[], withNose: boolean): readonly (readonly [string, Gap])[] {
  const written = men.flatMap(({ lane }) => lane?.slice(-1) ?? []);
  const open = patternOf(men, withNose).filter((gap) => !written.includes(gap));
  const free = men.filter(({ lane }) => lane === undefined);
  return men.flatMap((man): (readonly [string, Gap])[] => {
    const gap = (man.lane?.slice(-1) as Gap | undefined) ?? open[free.indexOf(man)];
    return gap === undefined ? [] : [[man.role, gap]];
  });
}

function patternOf(men: readonly Starter[], withNose: boolean): readonly Gap[] {
  if (withNose) return men.length > 2 ? ['D', 'C', 'B'] : ['C', 'B'];
  if (men.length === 2) return ['C', Math.abs(men[1]?.lateral ?? 0) <= INSIDE ? 'A' : 'B'];
  return men.length > 3 ? ['D', 'C', 'B', 'A'] : ['C', 'B', 'A'];
}
