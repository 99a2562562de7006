import type { Lane } from '../../game/call-library.ts';
import { gapOf, sideOf } from '../../game/lane.ts';
import type { ProtectionPicture } from './protection-result.ts';

/** The five linemen from the far side to the near side. */
export const LINE_SPOTS = ['far_tackle', 'far_guard', 'center', 'near_guard', 'near_tackle'] as const;
/** One word of {@link LINE_SPOTS}. */
export type LineSpot = (typeof LINE_SPOTS)[number];

/**
 * Who has a rusher in a man protection: a lineman; the back, who reads him; or nobody, because he came from depth
 * and is not in their count.
 */
export type CountedBy = LineSpot | 'back' | 'nobody';

/** A rusher as the protection sees him. */
export interface Threat {
  readonly role: string;
  readonly lane: Lane;
  /** Joins after the blockers have engaged. */
  readonly late: boolean;
  /** Yards from where he starts, through his lane, to a passer at the depth shown; the shorter, the more dangerous. */
  readonly path: number;
  readonly countedBy: CountedBy;
}

/** One protector: whom he may take, and whom he may help once he has nobody. */
export interface Blocker {
  readonly name: LineSpot | 'back' | 'tight_end' | 'second_tight_end';
  /** Whether the rules let him take this rusher. */
  readonly takes: (threat: Threat) => boolean;
  /** He gets there late: a back who crosses the formation. */
  readonly late: boolean;
  /** Lanes in which he doubles a blocked man when nobody came to him. */
  readonly doubles: readonly Lane[];
  /** Lanes in which he may slow a free man when nobody came to him. */
  readonly squeezes: readonly Lane[];
}

/**
 * The protectors of a picture and the rules they follow.
 *
 * Half slide: center, guard and tackle of the slide side take every rusher on that side; the other tackle and the back
 * take the widest lineman and the linebackers on their side. Guard covered: he takes a man there too. Guard uncovered: he
 * turns with the slide and has the A gap alone, so that two men must hold everything outside him. Full slide: every
 * lineman has the gap to his slide side, the back the end man on the other edge. Man: five linemen on the five men of
 * the count, the back on the linebackers left, inside out. A slide protection without a slide side is played as man.
 *
 * @see Hepola, Sliding to Protect, American Football Monthly; Six-Man Slide Pass Protection, 2015; 5/6 Man Combo
 * Protection, coaches' association pages; Kuchar, Pressures to Attack Full-Slide Protection, 2015
 */
export function blockersOf(picture: ProtectionPicture): readonly Blocker[] {
  const all = picture.slide === 'none' ? manBlockers(picture) : slideBlockers(picture, picture.slide);
  return picture.back === 'in' && !picture.protection.startsWith('five')
    ? all
    : all.filter(({ name }) => name !== 'back');
}

function slideBlockers(picture: ProtectionPicture, slide: 'near' | 'far'): Blocker[] {
  const open = slide === 'near' ? 'far' : 'near';
  switch (picture.protection) {
    case 'five_man_slide':
    case 'half_slide_covered':
      return halfSlide(slide, open);
    case 'half_slide_uncovered':
      return turnedGuard(slide, open);
    case 'full_slide':
      return fullSlide(slide, open);
    case 'scan':
      return halfSlide(slide, open).map((blocker) => ({ ...blocker, late: blocker.name === 'back' }));
    case 'seven_man':
      return [...halfSlide(slide, open), extra('tight_end', open)];
    case 'max':
      return [...halfSlide(slide, open), extra('tight_end', open), extra('second_tight_end', slide)];
    case 'five_man_man':
    case 'man_dual_read':
      return manBlockers(picture);
    default:
      return picture.protection satisfies never;
  }
}

type SideWord = 'near' | 'far';

function halfSlide(slide: SideWord, open: SideWord): Blocker[] {
  const slideUnit = (['center', guard(slide), tackle(slide)] as const).map((name) => lineman(name, onSide(slide)));
  const manUnit = ([guard(open), tackle(open)] as const).map((name) => lineman(name, onSide(open)));
  return [...slideUnit, ...manUnit, back(onSide(open))];
}

/** The guard away from the slide has nobody on him and turns with it: he is gone from everything outside the A gap. */
function turnedGuard(slide: SideWord, open: SideWord): Blocker[] {
  const outside = (threat: Threat) => onSide(open)(threat) && gapOf(threat.lane) !== 'A';
  const turned = { ...lineman(guard(open), inGaps(open, 'A')), squeezes: [] };
  const slideUnit = (['center', guard(slide), tackle(slide)] as const).map((name) => lineman(name, onSide(slide)));
  return [...slideUnit, turned, lineman(tackle(open), outside), back(outside)];
}

function fullSlide(slide: SideWord, open: SideWord): Blocker[] {
  return [
    lineman('center', inGaps(slide, 'A')),
    lineman(guard(slide), inGaps(slide, 'B')),
    lineman(tackle(slide), inGaps(slide, 'C', 'D')),
    lineman(guard(open), inGaps(open, 'A')),
    lineman(tackle(open), inGaps(open, 'B')),
    back(inGaps(open, 'C', 'D')),
  ];
}

function manBlockers({ protection }: ProtectionPicture): Blocker[] {
  const line = INSIDE_OUT.map((name) => ({ ...lineman(name, ({ countedBy }) => countedBy === name), squeezes: [] }));
  const reads = ({ countedBy }: Threat) => countedBy === 'back';
  const helpers: Blocker[] = [back(reads)];
  if (protection === 'seven_man' || protection === 'max') helpers.push(reader('tight_end', reads));
  if (protection === 'max') helpers.push(reader('second_tight_end', reads));
  return [...line, ...helpers];
}

function lineman(name: LineSpot, takes: Blocker['takes']): Blocker {
  return { name, takes, late: false, doubles: BESIDE[name], squeezes: BESIDE[name] };
}

function back(takes: Blocker['takes']): Blocker {
  return { name: 'back', takes, late: false, doubles: [], squeezes: [] };
}

function extra(name: 'tight_end' | 'second_tight_end', side: SideWord): Blocker {
  return { name, takes: onSide(side), late: false, doubles: [`${side}_C`, `${side}_D`], squeezes: [] };
}

/** A tight end in man protection reads his man from either side, so he doubles nobody. */
function reader(name: 'tight_end' | 'second_tight_end', takes: Blocker['takes']): Blocker {
  return { name, takes, late: false, doubles: [], squeezes: [] };
}

/** Helpers are asked in this order, so that the mirrored picture gives the mirrored help. */
const INSIDE_OUT = ['center', 'near_guard', 'far_guard', 'near_tackle', 'far_tackle'] as const;

/** The gaps on either side of each lineman. */
const BESIDE: Readonly<Record<LineSpot, readonly Lane[]>> = {
  far_tackle: ['far_B', 'far_C'],
  far_guard: ['far_A', 'far_B'],
  center: ['near_A', 'far_A'],
  near_guard: ['near_A', 'near_B'],
  near_tackle: ['near_B', 'near_C'],
};

function onSide(side: SideWord) {
  return (threat: Threat) => sideOf(threat.lane) === side;
}

function inGaps(side: SideWord, ...gaps: readonly string[]) {
  return (threat: Threat) => onSide(side)(threat) && gaps.includes(gapOf(threat.lane));
}

function guard(side: SideWord): 'near_guard' | 'far_guard' {
  return `${side}_guard`;
}

function tackle(side: SideWord): 'near_tackle' | 'far_tackle' {
  return `${side}_tackle`;
}
