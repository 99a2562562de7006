import type { Family } from './families.ts';
import type { FitRule, FitTrigger } from './fit-rules.ts';

const COVER_ONE = 'Football Fundamentals: Cover 1 Defense, Breakdown Sports, 2014';
const FIRE_TWO = 'Thompson and Zimmerman, Developing a Fire 2 Zone Cheat Blitz Package, American Football Monthly';
const WEEK_NINE = 'Blitz of the Week 9, Blitzology, 2010';
const HEAVY_RUNS = 'Erxleben, Two Deep Fire Zones That Affect Heavy Personnel Runs, 2018';
const HOT_INSTALL = 'Thakkar, Three Deep, 2 Under Pressure Package, 2016';
const HOT_ANGLES = 'McLaughlin, Outside Cage vs. Interior Pressure Angles in 3-Deep, 2-Under Fire Zones, 2020';
const HOT_ANSWERS = 'Answers versus Hot Pressures, Board Drill';
const PEEL = 'Coaching Stress Areas: Double A Gap Mug Cover 1 Peel Blitz, Blitzology, 2020';
const PEEL_SPY = 'Casey, 3-3-5 Complex Cover 1';
const SPY = 'To Spy or Not to Spy, Football Film Room';
const LATE_ADD = 'Bear Front Green Dog, Blitzology, 2019';
const MAX_PROTECT = 'The Zone Blitz, Max Pro, and the Super Bowl, Smart Football, 2006';
const EMPTY = 'Defending Empty, MatchQuarters';

const rule =
  (says: FitRule['says']) =>
  (id: string, families: Family | readonly Family[], when: FitTrigger): FitRule => ({
    id,
    families: typeof families === 'string' ? [families] : [...families],
    when,
    says,
    stands: false,
    source: 'common practice, no source',
  });
const right = rule('right');
const wrong = rule('wrong');
const from = (source: string, one: FitRule): FitRule => ({ ...one, source });

/**
 * When a kind of pressure is right and when it is wrong, as coordinators reason: one line a rule. Where a right and a
 * wrong rule meet on one snap the snap counts as wrong, unless the right rule `stands`. A snap no rule speaks of is
 * neutral. The base is judged by the same rules: seven in coverage are right when the ball is out at once, and four
 * rushers are wrong when it is held behind a full protection.
 */
export const DEFAULT_FIT_RULES: readonly FitRule[] = [
  right('base_screen', 'base', { answer: ['screen'] }),
  right('base_quick', 'base', { answer: ['quick'] }),
  from(EMPTY, right('base_empty', 'base', { receivers: ['empty'] })),
  right('base_checked', 'base', { checked: ['yes'] }),
  wrong('base_held_back_in', 'base', { back: ['blocks'], ball: ['held'] }),
  wrong('base_seven_protect', 'base', { protectors: ['seven_or_more'], ball: ['held'] }),
  from(WEEK_NINE, right('three_under_trips', 'three_under', { receivers: ['trips'] })),
  right('three_under_back_inside', 'three_under', { back: ['releases_inside'] }),
  right('three_under_crossers', 'three_under', { routes: ['crossers'] }),
  from(FIRE_TWO, wrong('three_under_flat', 'three_under', { thrown_to: ['flat'] })),
  from(FIRE_TWO, wrong('three_under_quick_out', 'three_under', { answer: ['quick'], thrown_to: ['outside'] })),
  wrong('three_under_back_wide', 'three_under', { back: ['releases_wide'] }),
  wrong('three_under_screen', 'three_under', { answer: ['screen'] }),
  from(MAX_PROTECT, wrong('three_under_seven_protect', 'three_under', { protectors: ['seven_or_more'] })),
  from(FIRE_TWO, right('four_under_flat', 'four_under', { thrown_to: ['flat'] })),
  from(WEEK_NINE, right('four_under_balanced', 'four_under', { receivers: ['balanced'] })),
  from(FIRE_TWO, right('four_under_quick', 'four_under', { answer: ['quick'] })),
  from(WEEK_NINE, right('four_under_screen', 'four_under', { answer: ['screen'] })),
  from(HEAVY_RUNS, right('four_under_heavy_run', 'four_under', { answer: ['run'], tight_ends: ['two_or_more'] })),
  from(HEAVY_RUNS, right('four_under_two_back_run', 'four_under', { answer: ['run'], backs: ['two_or_more'] })),
  from(WEEK_NINE, wrong('four_under_trips', 'four_under', { receivers: ['trips'] })),
  wrong('four_under_deep_middle', 'four_under', { thrown_to: ['deep_middle'] }),
  wrong('four_under_deep_outside', 'four_under', { thrown_to: ['deep_outside'] }),
  from(MAX_PROTECT, wrong('four_under_seven_protect', 'four_under', { protectors: ['seven_or_more'] })),
  from(COVER_ONE, right('man_free_deep_middle', 'man_free', { thrown_to: ['deep_middle'] })),
  right('man_free_run_pass', 'man_free', { option_tag: ['run_pass'] }),
  right('man_free_tempo', 'man_free', { tempo: ['fast'] }),
  right('man_free_held', 'man_free', { ball: ['held'], protectors: ['five', 'six'] }),
  from(COVER_ONE, wrong('man_free_quarterback_run', 'man_free', { answer: ['quarterback_run'] })),
  from(COVER_ONE, wrong('man_free_scramble', 'man_free', { scramble: ['yes'] })),
  from(COVER_ONE, wrong('man_free_crossers', 'man_free', { routes: ['crossers'] })),
  from(COVER_ONE, wrong('man_free_picks', 'man_free', { routes: ['picks'] })),
  from(COVER_ONE, wrong('man_free_bunch', 'man_free', { bunch: ['yes'] })),
  wrong('man_free_fast_motion', 'man_free', { motion: ['fast'] }),
  from(HOT_ANGLES, right('hot_run', 'hot', { answer: ['run'], tight_ends: ['fewer'], backs: ['fewer'] })),
  from(HOT_INSTALL, right('hot_quick_inside', 'hot', { answer: ['quick'], thrown_to: ['middle'] })),
  right('hot_bunch', 'hot', { bunch: ['yes'] }),
  from(HOT_INSTALL, wrong('hot_quick_outside', 'hot', { answer: ['quick'], thrown_to: ['flat', 'outside'] })),
  from(HOT_ANSWERS, wrong('hot_screen', 'hot', { answer: ['screen'] })),
  from(HOT_ANSWERS, wrong('hot_run_pass', 'hot', { option_tag: ['run_pass'] })),
  wrong('hot_quarterback_run', 'hot', { answer: ['quarterback_run'] }),
  wrong('hot_back_wide', 'hot', { back: ['releases_wide'] }),

  right('zero_held', 'zero', { ball: ['held'], back: ['blocks', 'check_releases'] }),
  right('zero_seven_protect', 'zero', { protectors: ['seven_or_more'] }),
  right('zero_two_back_run', 'zero', { answer: ['run'], backs: ['two_or_more'] }),
  wrong('zero_back_wide', 'zero', { back: ['releases_wide'] }),
  wrong('zero_bunch', 'zero', { bunch: ['yes'] }),
  wrong('zero_picks', 'zero', { routes: ['picks', 'crossers'] }),
  wrong('zero_quarterback_run', 'zero', { answer: ['quarterback_run'] }),
  wrong('zero_scramble', 'zero', { scramble: ['yes'] }),
  wrong('zero_screen', 'zero', { answer: ['screen'] }),
  wrong('zero_run_pass', 'zero', { option_tag: ['run_pass'] }),
  wrong('zero_fast_motion', 'zero', { motion: ['fast', 'back_out'] }),
  wrong('zero_checked', 'zero', { checked: ['yes'] }),
  from(PEEL, right('peel_back_wide', ['peel', 'peel_spy'], { back: ['releases_wide'] })),
  from(PEEL, right('peel_back_inside', ['peel', 'peel_spy'], { back: ['releases_inside'] })),
  from(PEEL, right('peel_screen', ['peel', 'peel_spy'], { answer: ['screen'] })),
  right('peel_held', 'peel', { ball: ['held'], scramble: ['no'] }),
  wrong('peel_quick', ['peel', 'peel_spy'], { answer: ['quick'], back: ['blocks', 'check_releases', 'none'] }),
  wrong('peel_crossers', 'peel', { routes: ['crossers', 'picks'] }),
  wrong('peel_bunch', ['peel', 'peel_spy'], { bunch: ['yes'] }),
  from(PEEL, wrong('peel_fast_motion', ['peel', 'peel_spy'], { motion: ['back_out'] })),
  from(PEEL, wrong('peel_scramble', 'peel', { scramble: ['yes'] })),
  wrong('peel_quarterback_run', 'peel', { answer: ['quarterback_run'] }),
  from(PEEL_SPY, right('spy_quarterback_run', 'peel_spy', { answer: ['quarterback_run'] })),
  from(PEEL_SPY, right('spy_scramble', 'peel_spy', { scramble: ['yes'] })),
  from(SPY, wrong('spy_held_in_the_pocket', 'peel_spy', { ball: ['held'], scramble: ['no'] })),
  from(LATE_ADD, right('add_on_held_back_in', 'add_on', { back: ['blocks'], ball: ['held'] })),
  right('add_on_seven_protect', 'add_on', { protectors: ['seven_or_more'], ball: ['held'] }),
  wrong('add_on_screen', 'add_on', { answer: ['screen'] }),
  wrong('add_on_quick', 'add_on', { answer: ['quick'] }),
  from(LATE_ADD, wrong('add_on_back_out', 'add_on', { back: ['releases_wide', 'releases_inside', 'none'] })),
  wrong('add_on_quarterback_run', 'add_on', { answer: ['quarterback_run'] }),
  wrong('add_on_scramble', 'add_on', { scramble: ['yes'] }),
  wrong('add_on_run_pass', 'add_on', { option_tag: ['run_pass'] }),

  from(
    EMPTY,
    wrong('any_empty', ['three_under', 'four_under', 'hot', 'zero', 'peel', 'peel_spy', 'add_on'], {
      receivers: ['empty'],
    }),
  ),
  wrong('heavy_run', ['peel_spy', 'add_on'], { answer: ['run'], tight_ends: ['two_or_more'] }),
  wrong('any_two_backs_protect', ['three_under', 'four_under'], { backs: ['two_or_more'], ball: ['held'] }),
  wrong('any_fast_tempo', ['four_under', 'peel', 'peel_spy', 'add_on'], { tempo: ['fast'] }),
];
