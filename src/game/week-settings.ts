import * as z from 'zod';
import { LEVELS } from './call-library.ts';
import { FAMILIES } from './families.ts';
import { SITUATION_IDS } from './situations.ts';

const bucket = z.strictObject({
  short: z.number().int().min(1).max(20).describe('short is up to this many yards'),
  medium: z.number().int().min(2).max(30).describe('medium is up to this many yards; longer is long'),
});

const share = z.number().min(0).max(1);

/**
 * Contact levels of a practice period, lightest first; `thud` and `live` are full contact.
 *
 * @see USA Football, "National Practice Guidelines for Youth Tackle Football" (2015), levels of contact
 * @see NFHS Concussion Summit Task Force, "Recommendations and Guidelines for Minimizing Head Impact Exposure and
 *   Concussion Risk in Football" (2014): full contact is thud and live action
 */
export const CONTACT_LEVELS = ['air', 'bags', 'control', 'thud', 'live'] as const;

const period = z.strictObject({
  name: z.string().min(1).describe('what the period is for'),
  minutes: z.number().int().min(1).max(90),
  reps: z.number().int().min(0).max(60).describe('pressure repetitions in the period'),
  contact: z.enum(CONTACT_LEVELS).default('control'),
});

const day = z.strictObject({
  day: z.enum(['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun']),
  periods: z.array(period).min(1).max(20),
});

const situations = z
  .strictObject({
    second: bucket.default({ short: 3, medium: 6 }),
    third: bucket.default({ short: 3, medium: 6 }),
    fourth: bucket.default({ short: 3, medium: 6 }),
    backed_up: z.number().int().min(1).max(20).default(10).describe('own goal line to this own yard line'),
    coming_out: z.number().int().min(5).max(40).default(20).describe('up to this own yard line'),
    going_in: z.number().int().min(21).max(60).default(40).describe('from this opponent yard line in'),
    red_zone: z.number().int().min(6).max(40).default(20).describe('from this opponent yard line in'),
    goal_line: z.number().int().min(1).max(10).default(5).describe('from this opponent yard line in'),
    quick_seconds: z
      .number()
      .min(1)
      .max(3)
      .default(2)
      .describe('a throw out by then is quick when only "pass" was charted'),
    deep_yards: z.number().int().min(10).max(40).default(20).describe('a throw this far down the field is a deep shot'),
  })
  .prefault({})
  .describe('where the staff cuts down, distance and field');

const menu = z
  .strictObject({
    size: z.number().int().min(1).max(30).default(10).describe('most calls carried'),
    reps: z.number().int().min(0).max(1000).default(120).describe('practice repetitions for pressures this week'),
    new_calls: z.number().int().min(0).max(30).default(2).describe('most calls installed new this week'),
    rep_price: z
      .number()
      .min(0)
      .max(1)
      .default(0.02)
      .describe('what a rep must earn: snaps a game on which the theory is right rather than wrong'),
    regret: z
      .number()
      .min(0)
      .max(20)
      .default(0.2)
      .describe('points a game given up at most, where points tell calls apart'),
    trust: share.default(0.7).describe('1 counts a call at what we expect of it, 0 at the low end of its range'),
    path_share: share.default(0.45).describe('no path takes more than this share of our pressures'),
    add_on_share: share.default(0.15).describe('an add-on is called on no more than this share of a situation’s snaps'),
    hole_share: share
      .default(0.1)
      .describe(
        'a call stays home in situations where they do what it gives up on purpose on more than this share of the snaps',
      ),
    pairing_cap: share
      .default(0.7)
      .describe(
        'share of our pressures on which the path may give the coverage away; a call plainly wrong is never the price',
      ),
    pairing_games: z
      .number()
      .int()
      .min(1)
      .max(12)
      .default(3)
      .describe('games by which our film is to come under the pairing cap'),
    pressure_rate: z
      .strictObject({ least: share.default(0), most: share.default(0.6), band: share.default(0.15) })
      .prefault({})
      .describe(
        'share of snaps in a situation on which we send five or more; at most a band away from our own rate; the defaults are judgment',
      ),
    explosives: z.number().min(0).max(20).optional().describe('most explosive plays expected a game'),
    must: z.array(z.string()).default([]).describe('calls that must be carried'),
    ban: z.array(z.string()).default([]).describe('calls that may not be carried'),
  })
  .prefault({})
  .describe('limits of the menu');

const contactLimits = z
  .strictObject({
    minutes_per_day: z.number().min(0).max(180).default(30),
    minutes_per_week: z.number().min(0).max(600).default(60),
    days_per_week: z.number().int().min(0).max(7).default(3),
    consecutive_days: z.number().int().min(1).max(7).default(1),
  })
  .prefault({})
  .describe('full-contact limits; the defaults are published guidance, your state association decides');

/** What a new week.yaml calls the opponent until the staff types the name. */
export const UNNAMED_OPPONENT = 'Name of the opponent';

/** The shape of week.yaml: this week's opponent, limits and cut-offs. Everything but the opponent has a default. */
export const weekSettingsSchema = z.strictObject({
  opponent: z.string().min(1).describe('the offense we play'),
  us: z.string().min(1).default('our defense').describe('how the report names us'),
  date: z.iso
    .date('is not a day written YYYY-MM-DD, such as 2026-10-23')
    .optional()
    .describe('day of the game, YYYY-MM-DD'),
  level: z.enum(LEVELS).default('high_school').describe('level of play'),
  invented: z.boolean().default(false).describe('the snaps are made up; every page then says so'),
  seed: z.number().int().min(0).default(1).describe('any whole number; the same one gives the same plan again'),
  snaps: z.number().int().min(10).max(150).default(60).describe('their snaps expected on Friday'),
  their_speed: z
    .enum(['slow', 'average', 'fast'])
    .default('average')
    .describe('how fast they handle the ball, next to the published times'),
  situations,
  menu,
  practice: z
    .strictObject({ days: z.array(day).max(7).default([]), contact_limits: contactLimits })
    .prefault({})
    .describe('the practice week'),
  live_discount: share
    .default(1)
    .describe("worth of a snap charted tonight against one of Sunday's film: 1 pools them, 0 keeps Sunday's forecast"),
  sheet: z
    .strictObject({
      order: z
        .array(z.enum(SITUATION_IDS))
        .default([])
        .describe('situations in the order you want them; the rest follow'),
    })
    .prefault({})
    .describe('the call sheet'),
  families: z.array(z.enum(FAMILIES)).optional().describe('families to score; all when left out'),
});

/** This week's settings with every default filled in. */
export type WeekSettings = z.output<typeof weekSettingsSchema>;
/** The staff's cut-offs for situations and answers. */
export type SituationCuts = WeekSettings['situations'];
/** One practice day. */
export type PracticeDay = z.output<typeof day>;
/** One contact level of {@link CONTACT_LEVELS}. */
export type ContactLevel = (typeof CONTACT_LEVELS)[number];
