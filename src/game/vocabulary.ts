/**
 * The closed word lists of a charted snap. Each list is the single place where its words are written: the column
 * schema, the data dictionary, the templates and the chart order all read it from here.
 */

/** What the offense did with the ball, as finely as the charter could tell; `run` and `pass` are the coarse words. */
export const PLAY_KINDS = [
  'run',
  'quarterback_run',
  'pass',
  'screen',
  'quick',
  'dropback',
  'deep_shot',
  'movement',
  'play_action',
  'scramble',
] as const;
/** One word of {@link PLAY_KINDS}. */
export type PlayKind = (typeof PLAY_KINDS)[number];

/** Where the ball lies across the field, seen from behind the offense. */
export const HASHES = ['left', 'middle', 'right'] as const;
/** One word of {@link HASHES}. */
export type Hash = (typeof HASHES)[number];

/** The side that carries the passing strength: receiver count, then tight end. */
export const STRENGTHS = ['left', 'right', 'none'] as const;

/** Where the back stands: none in the backfield, behind the quarterback, to the strong or weak side, or one each side. */
export const BACK_SPOTS = ['none', 'behind', 'strong', 'weak', 'both'] as const;

/** How deep the quarterback takes the snap. */
export const QUARTERBACK_DEPTHS = ['under_center', 'pistol', 'shotgun'] as const;

/** Movement before the snap: none, a shift that sets again, short, across the ball, fast (jet), or the back leaving. */
export const MOTIONS = ['none', 'shift', 'short', 'across', 'fast', 'back_out'] as const;

/** How the offense came to the line; `freeze` is the look to the sideline before the play is sent in. */
export const TEMPOS = ['huddle', 'no_huddle', 'fast', 'freeze'] as const;

/** An option on the play: a quarterback read, a run with a pass attached, or the pitch. */
export const OPTION_TAGS = ['none', 'read', 'run_pass', 'triple'] as const;

/** Where the line's slide went, seen from behind the offense; `man` means no slide. */
export const SLIDES = ['left', 'right', 'full_left', 'full_right', 'man'] as const;

/** The back's job on a pass; `none` means no back was in the backfield. */
export const BACK_ACTIONS = ['blocks', 'check_releases', 'releases_wide', 'releases_inside', 'none'] as const;

/** The coverage the charted defense showed after the snap. */
export const COVERAGES_FACED = [
  'three_deep',
  'two_deep',
  'four_deep',
  'man_free',
  'man_two_deep',
  'zero',
  'other',
] as const;
/** One word of {@link COVERAGES_FACED}. */
export type CoverageFaced = (typeof COVERAGES_FACED)[number];

/** Where the ball was thrown. */
export const TARGET_ZONES = ['behind', 'flat', 'middle', 'outside', 'deep_middle', 'deep_outside'] as const;

/** How the snap ended; a touchdown shows in gain and ball position. */
export const RESULTS = [
  'rush',
  'complete',
  'incomplete',
  'sack',
  'scramble',
  'throwaway',
  'interception',
  'fumble_lost',
  'penalty',
] as const;

/** Which way the shell turned relative to the side the pressure came from. */
export const ROTATIONS = ['to_rush', 'away_from_rush', 'none'] as const;

/** Plain yes or no. */
export const YES_NO = ['yes', 'no'] as const;
