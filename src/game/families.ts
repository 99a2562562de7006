import type { LookKind } from './look-kinds.ts';

/** Theories of coverage, of which at least one call each is carried (common practice, no source). */
export const THEORY_WORDS = {
  three_deep: 'three-deep zone',
  two_deep: 'two-deep zone',
  man_free: 'man-free',
  hot_or_zero: 'hot or zero',
} as const;
/** One word of {@link THEORIES}. */
export type TheoryName = keyof typeof THEORY_WORDS;

/** The words of {@link THEORY_WORDS}. */
export const THEORIES = Object.keys(THEORY_WORDS) as readonly TheoryName[];

/** Whether a word is one of the theories. */
export function isTheory(word: string): word is TheoryName {
  return word in THEORY_WORDS;
}

/** Men of one kind in a call: at the snap, joining late, deep, man to man, under, hot, spying, and sides that peel. */
export type MenKind = 'rush' | 'late' | 'deep' | 'man' | 'under' | 'hot' | 'spy' | 'peels';

/** Kinds of pressure that open play data tell apart: a count of rushers and a charted coverage, no more. */
export type OpenFamily =
  | 'base'
  | 'three_under'
  | 'four_under'
  | 'five_c6_c4'
  | 'man_free_five'
  | 'hot'
  | 'six_post'
  | 'zero'
  | 'seven_plus';

/** What a family is, for every room that asks; its rules of fit are lines of their own. */
interface FamilyFacts {
  /** As a staff says it inside a sentence. */
  readonly words: string;
  /** The theory it teaches; null for the base, which is always carried. */
  readonly theory: TheoryName | null;
  /** What it is made of; `late` counts as at least, everything else as exactly. */
  readonly men: Readonly<Partial<Record<MenKind, number>> & { rush: number }>;
  /** What open play data count in its place; null where nobody charts what makes it. */
  readonly openData: OpenFamily | null;
  /** What is played behind it, as open data count screens. */
  readonly behind: 'zone' | 'one_deep' | 'none_deep';
  /** The looks that decide whether it holds: what its rule was made for, or where it is known to give way. */
  readonly makeOrBreak: readonly LookKind[];
  /** The rules of fit that turn it, counted together, and the family it is measured against, if any. */
  readonly turns: { readonly rules: readonly string[]; readonly against: string | null };
}

/**
 * The eight pressure families and the four-man base they are measured against, in the order of the pages.
 *
 * Men: five rush with three under and three deep, and so on; judgment where a system differs. Theory: hot keeps three
 * deep but is counted with zero, since both send six and both are the answer to a protection that five cannot beat. Open
 * data: hot is six rushers with three deep, peel six with man and one deep (the peel itself is not charted), the add-on
 * seven or more (that the seventh comes late is not charted); nobody charts a spy. Make-or-break looks: the weak points
 * are common practice, no source; which of them decide is judgment.
 */
export const FAMILY_TABLE = {
  base: {
    words: 'four-man base',
    theory: null,
    men: { rush: 4, late: 0 },
    openData: 'base',
    behind: 'zone',
    makeOrBreak: ['run'],
    turns: { rules: ['base_held_back_in'], against: null },
  },
  three_under: {
    words: 'three-under',
    theory: 'three_deep',
    men: { rush: 5, under: 3, deep: 3, late: 0 },
    openData: 'three_under',
    behind: 'zone',
    makeOrBreak: ['quick', 'wide_release'],
    turns: { rules: ['three_under_flat'], against: null },
  },
  four_under: {
    words: 'four-under',
    theory: 'two_deep',
    men: { rush: 5, under: 4, deep: 2, late: 0 },
    openData: 'four_under',
    behind: 'zone',
    makeOrBreak: ['trips_deep'],
    turns: { rules: ['four_under_trips'], against: 'three_under' },
  },
  man_free: {
    words: 'man-free',
    theory: 'man_free',
    men: { rush: 5, man: 5, deep: 1, late: 0 },
    openData: 'man_free_five',
    behind: 'one_deep',
    makeOrBreak: ['quarterback_run', 'deep_shot'],
    turns: { rules: ['man_free_quarterback_run', 'man_free_scramble'], against: 'peel_spy' },
  },
  hot: {
    words: 'hot',
    theory: 'hot_or_zero',
    men: { rush: 6, hot: 2, deep: 3, late: 0 },
    openData: 'hot',
    behind: 'zone',
    makeOrBreak: ['screen', 'quick'],
    turns: { rules: ['hot_screen', 'hot_quick_outside'], against: null },
  },
  zero: {
    words: 'zero',
    theory: 'hot_or_zero',
    men: { rush: 6, man: 5, deep: 0, late: 0 },
    openData: 'zero',
    behind: 'none_deep',
    makeOrBreak: ['screen', 'quarterback_run'],
    turns: { rules: ['zero_back_wide'], against: 'peel' },
  },
  peel: {
    words: 'peel',
    theory: 'man_free',
    men: { rush: 6, man: 4, deep: 1, peels: 2, late: 0 },
    openData: 'six_post',
    behind: 'one_deep',
    makeOrBreak: ['wide_release', 'inside_release'],
    turns: { rules: ['peel_back_wide'], against: null },
  },
  peel_spy: {
    words: 'peel with a spy',
    theory: 'man_free',
    men: { rush: 5, spy: 1, man: 4, deep: 1, peels: 2, late: 0 },
    openData: null,
    behind: 'one_deep',
    makeOrBreak: ['quarterback_run', 'inside_release'],
    turns: { rules: ['spy_quarterback_run', 'spy_scramble'], against: null },
  },
  add_on: {
    words: 'add-on',
    theory: 'hot_or_zero',
    men: { rush: 6, man: 4, deep: 0, peels: 2, late: 1 },
    openData: 'seven_plus',
    behind: 'none_deep',
    makeOrBreak: ['screen', 'max_protection'],
    turns: { rules: ['add_on_screen', 'add_on_quick'], against: null },
  },
} as const satisfies Readonly<Record<string, FamilyFacts>>;
/** One word of {@link FAMILIES}. */
export type Family = keyof typeof FAMILY_TABLE;

/** The words of {@link FAMILY_TABLE}, base first. */
export const FAMILIES = Object.keys(FAMILY_TABLE) as readonly Family[];

/** Whether a word is one of the families. */
export function isFamily(word: string): word is Family {
  return word in FAMILY_TABLE;
}

/** What a family is; the same table with its general type, in which the family measured against is one of them. */
export function familyFacts(family: Family): FamilyFacts & { readonly turns: { readonly against: Family | null } } {
  return FAMILY_TABLE[family];
}
