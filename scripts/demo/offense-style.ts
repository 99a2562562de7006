/** How an invented offense plays; shares are 0 to 1. Every name and habit here is made up. */
export interface OffenseStyle {
  readonly name: string;
  /** Share of passes when the down is even, when it is long, and when it is short. */
  readonly pass: { readonly even: number; readonly long: number; readonly short: number };
  /** Of passes: screens, quick throws, deep shots, movement; the rest are dropbacks. */
  readonly screen: number;
  readonly quick: number;
  readonly deep: number;
  readonly movement: number;
  /** Of runs: by the quarterback. */
  readonly quarterbackRun: number;
  readonly motion: number;
  readonly shotgun: number;
  readonly trips: number;
  readonly empty: number;
  readonly twoBack: number;
  /** Share of passes on which the line turns away from the back. */
  readonly slideAwayFromBack: number;
  /** On long downs: share of passes on which the back stays in. */
  readonly backStaysLong: number;
  readonly releasesWide: number;
  readonly noHuddle: number;
  readonly looksToSideline: number;
  /** Yards a snap above or below the league's usual. */
  readonly strength: number;
}

const usual: Omit<OffenseStyle, 'name'> = {
  pass: { even: 0.47, long: 0.8, short: 0.3 },
  screen: 0.12,
  quick: 0.28,
  deep: 0.1,
  movement: 0.1,
  quarterbackRun: 0.14,
  motion: 0.38,
  shotgun: 0.72,
  trips: 0.27,
  empty: 0.06,
  twoBack: 0.2,
  slideAwayFromBack: 0.62,
  backStaysLong: 0.55,
  releasesWide: 0.3,
  noHuddle: 0.25,
  looksToSideline: 0.15,
  strength: 0,
};

/** The opponents of the demo season, week by week, and the offenses of its archive. */
export const OFFENSES: readonly OffenseStyle[] = [
  {
    ...usual,
    name: 'Brindle Hill',
    pass: { even: 0.28, long: 0.6, short: 0.12 },
    quarterbackRun: 0.3,
    twoBack: 0.5,
    shotgun: 0.4,
    strength: 0.2,
  },
  {
    ...usual,
    name: 'Tamarack Valley',
    releasesWide: 0.58,
    trips: 0.42,
    quick: 0.36,
    screen: 0.08,
    backStaysLong: 0.28,
  },
  {
    ...usual,
    name: 'Harrow Creek',
    screen: 0.2,
    quick: 0.34,
    slideAwayFromBack: 0.84,
    backStaysLong: 0.74,
    motion: 0.52,
    looksToSideline: 0.32,
    noHuddle: 0.45,
    strength: 0.4,
  },
  {
    ...usual,
    name: 'Copper Fork',
    pass: { even: 0.55, long: 0.84, short: 0.34 },
    empty: 0.16,
    trips: 0.4,
    shotgun: 0.92,
  },
  { ...usual, name: 'Alder Point', deep: 0.18, movement: 0.16, screen: 0.07 },
  { ...usual, name: 'Millrace Central', pass: { even: 0.34, long: 0.68, short: 0.18 }, twoBack: 0.4, motion: 0.55 },
  { ...usual, name: 'Stonewater', quarterbackRun: 0.26, shotgun: 0.85, releasesWide: 0.22 },
  { ...usual, name: 'Fenwick Ridge', screen: 0.16, slideAwayFromBack: 0.45, motion: 0.2, strength: -0.3 },
  { ...usual, name: 'Larkmoor', quick: 0.2, deep: 0.14, backStaysLong: 0.66, strength: -0.2 },
];

/** The invented school that plays this defense. */
export const OUR_SCHOOL = 'Oakhollow';
