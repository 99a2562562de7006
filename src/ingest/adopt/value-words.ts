import type { ColumnName } from '../../game/columns.ts';
import { slipsBetween } from '../nearest-word.ts';
import { definitionOf } from '../profile.ts';
import { plainWord } from '../read-cell.ts';

/** Trade words and short forms for the words of a column: our word, and how coaches also write it. Judgment. */
const VALUE_WORDS: Readonly<Partial<Record<ColumnName, Readonly<Record<string, readonly string[]>>>>> = {
  hash: {
    left: ['l', 'lt', 'lh', 'left hash'],
    middle: ['m', 'c', 'mid', 'center', 'centre', 'middle of field', 'middle hash', 'mof', 'mh'],
    right: ['r', 'rt', 'rh', 'right hash'],
  },
  strength: { left: ['l', 'lt'], right: ['r', 'rt'], none: ['n', 'balanced', 'even', 'bal'] },
  back_spot: {
    none: ['empty', 'no back', '0'],
    behind: ['dot', 'deep', 'directly behind'],
    strong: ['s', 'to strength', 'strong side'],
    weak: ['w', 'wk', 'away', 'weak side'],
    both: ['split', 'split backs', 'two back'],
  },
  quarterback_depth: {
    under_center: ['under', 'uc', 'u', 'under centre', 'center'],
    pistol: ['p', 'pist'],
    shotgun: ['gun', 's', 'g', 'sg'],
  },
  motion: {
    none: ['no', 'n', '0'],
    short: ['yo yo', 'return'],
    across: ['cross', 'full'],
    fast: ['jet', 'fly', 'speed sweep'],
    back_out: ['back'],
  },
  tempo: {
    huddle: ['h', 'huddled'],
    no_huddle: ['nh', 'no huddle'],
    fast: ['hurry up', 'hurry', 'up tempo', 'uptempo'],
    freeze: ['look', 'check with me'],
  },
  checked: { yes: ['y', '1', 'true', 'checked'], no: ['n', '0', 'false'] },
  play_kind: {
    run: ['r', 'rush', 'rushing', 'ru'],
    quarterback_run: ['qb run', 'qb sneak', 'sneak', 'quarterback sneak', 'qb draw', 'qb keep', 'keeper'],
    pass: ['p', 'throw', 'passing'],
    screen: ['scr'],
    quick: ['q', 'quick game', 'quick pass', 'three step', '3 step', 'quicks'],
    dropback: ['d', 'drop', 'drop back', 'five step', '5 step', 'dropback pass'],
    deep_shot: ['deep', 'shot', 'bomb'],
    movement: ['boot', 'bootleg', 'roll', 'rollout', 'roll out', 'sprint out', 'naked', 'waggle'],
    play_action: ['pa', 'pap', 'play pass', 'play action pass'],
    scramble: ['scram'],
  },
  option_tag: {
    none: ['no', 'n', '0'],
    read: ['zone read', 'ro', 'qb read'],
    run_pass: ['rpo', 'run pass option'],
    triple: ['veer', 'triple option', 'pitch'],
  },
  slide: {
    left: ['l', 'lt'],
    right: ['r', 'rt'],
    full_left: ['fl', 'full l'],
    full_right: ['fr', 'full r'],
    man: ['m', 'big on big', 'bob', 'no slide'],
  },
  back_action: {
    blocks: ['b', 'block', 'pass pro', 'protects', 'stays in', 'stays'],
    check_releases: ['check', 'check release', 'check down'],
    releases_wide: ['swing', 'flare', 'wide', 'release wide'],
    releases_inside: ['inside', 'angle', 'release inside', 'thru', 'through'],
    none: ['no back'],
  },
  coverage_faced: {
    three_deep: ['cover 3', 'cov 3', 'c3', '3', '3 deep'],
    two_deep: ['cover 2', 'cov 2', 'c2', '2', '2 deep', 'tampa'],
    four_deep: ['cover 4', 'cov 4', 'c4', '4', 'quarters'],
    man_free: ['cover 1', 'cov 1', 'c1', '1', 'man 1', 'one high man'],
    man_two_deep: ['2 man', 'two man', 'cover 5', 'c5', 'man under'],
    zero: ['cover 0', 'cov 0', 'c0', '0', 'zero blitz', 'man 0'],
    other: ['cover 6', 'cov 6', 'c6', '6', 'prevent', 'combo'],
  },
  target_zone: {
    behind: ['in the backfield', 'behind the line', 'behind los'],
    middle: ['mid', 'hook', 'inside'],
    outside: ['out', 'sideline'],
    deep_middle: ['deep mid', 'post'],
    deep_outside: ['deep out', 'go', 'corner'],
  },
  result: {
    rush: ['run', 'r', 'rushed'],
    complete: ['c', 'comp', 'completion', 'completed', 'cmp', 'caught'],
    incomplete: ['i', 'x', 'inc', 'incompletion', 'ic', 'drop', 'dropped', 'batted', 'pbu'],
    sack: ['sk', 'sacked'],
    scramble: ['scr', 'scrambled'],
    throwaway: ['ta', 'throw away', 'thrown away'],
    interception: ['int', 'pick', 'intercepted'],
    fumble_lost: ['fum', 'fumble', 'lost fumble'],
    penalty: ['pen', 'flag', 'no play'],
  },
  shown_early: { yes: ['y', '1', 'true'], no: ['n', '0', 'false'] },
  rotation: { to_rush: ['to', 'with'], away_from_rush: ['away', 'from'], none: ['no', 'n'] },
};

/** Kinds of plays from which no pressure can be learnt. */
const NO_SNAP_WORDS = [
  ...['punt', 'kick', 'kickoff', 'kick off', 'ko', 'field goal', 'fg', 'extra point', 'xp', 'pat', 'kneel', 'spike'],
  ...['two point', '2 pt', '2pt', 'special teams', 'kick return', 'punt return', 'timeout'],
];

/** What a code of his most likely is in our words, and how sure that is (0 to 1). */
export interface WordGuess {
  readonly word: string;
  readonly sure: number;
}

/** Our word for a code of his in a column of words; undefined when nothing is close. */
export function guessWord(column: ColumnName, code: string): WordGuess | undefined {
  const known = GUESSES.get(column) ?? new Map<string, WordGuess | undefined>();
  GUESSES.set(column, known);
  if (!known.has(code) && known.size < MOST_KEPT) known.set(code, freshGuess(column, code));
  return known.has(code) ? known.get(code) : freshGuess(column, code);
}

/** Guesses made before: the same few codes stand in every row. They depend on nothing but the code. */
const GUESSES = new Map<ColumnName, Map<string, WordGuess | undefined>>();

/** Guesses kept for one column, so that a column of sentences does not fill the memory. */
const MOST_KEPT = 5000;

function freshGuess(column: ColumnName, code: string): WordGuess | undefined {
  const { cell } = definitionOf(column);
  if (cell.form !== 'word') return undefined;
  const plain = plainWord(code);
  if (cell.words.includes(plain)) return { word: plain, sure: 1 };
  const named = Object.entries(VALUE_WORDS[column] ?? {});
  const synonym = named.find(
    ([word, forms]) => cell.words.includes(word) && forms.some((form) => plainWord(form) === plain),
  );
  if (synonym) return { word: synonym[0], sure: plain.length === 1 ? 0.85 : 0.95 };
  const spelled = [...cell.words, ...named.flatMap(([, forms]) => forms.map(plainWord))];
  const near =
    plain.length < 4 ? undefined : spelled.find((word) => word.length >= 5 && slipsBetween(word, plain) <= 1);
  if (near === undefined) return undefined;
  const owner = named.find(([, forms]) => forms.some((form) => plainWord(form) === near))?.[0];
  return { word: cell.words.includes(near) ? near : (owner ?? near), sure: 0.75 };
}

/** Whether a code names a kick, a kneel or another play that we do not chart as a snap. */
export function isNoSnapWord(code: string): boolean {
  const plain = plainWord(code);
  return NO_SNAP_WORDS.some((word) => plainWord(word) === plain);
}
