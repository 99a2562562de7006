import type { ContactLevel, PracticeDay, WeekSettings } from '../../game/week-settings.ts';

/** Limits of full contact in a practice week; `consecutive_days` is how many days in a row may have any. */
export type ContactLimits = WeekSettings['practice']['contact_limits'] & { readonly consecutive_days?: number };

/** Full contact of one practice day, in minutes. */
export interface ContactDay {
  readonly day: PracticeDay['day'];
  readonly minutes: number;
  readonly fullContact: number;
}

/** One limit passed: which, on which days, what was found and what is allowed. */
export interface ContactBreach {
  readonly limit: keyof ContactLimits;
  readonly days: readonly PracticeDay['day'][];
  readonly found: number;
  readonly allowed: number;
}

/** Full contact of the week and every limit it passes. */
export interface ContactLoad {
  readonly days: readonly ContactDay[];
  readonly weekMinutes: number;
  readonly contactDays: number;
  readonly longestRun: number;
  readonly breaches: readonly ContactBreach[];
}

/** Contact levels that count as full contact; air, bags and control do not. @see NFHS task force 2014, as reported */
export const FULL_CONTACT: readonly ContactLevel[] = ['thud', 'live'];

/** Full contact is not for days in a row. @see NFHS task force 2014, as reported: not on consecutive days */
const CONSECUTIVE_DAYS = 1;

/** Days in the order they follow each other. */
const WEEK: readonly PracticeDay['day'][] = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/**
 * Full contact of the practice week by day, in minutes, against the limits. Only the periods in the plan are counted; a
 * day named twice is one day.
 */
export function contactLoad(practice: readonly PracticeDay[], limits: ContactLimits): ContactLoad {
  const days = WEEK.map((day) => dayLoad(day, practice)).filter(({ minutes }) => minutes > 0);
  const full = days.filter(({ fullContact }) => fullContact > 0);
  const weekMinutes = full.reduce((sum, { fullContact }) => sum + fullContact, 0);
  const run = longestRun(full.map(({ day }) => day));
  const found: ContactBreach[] = full
    .filter(({ fullContact }) => fullContact > limits.minutes_per_day)
    .map(({ day, fullContact }) => ({
      limit: 'minutes_per_day',
      days: [day],
      found: fullContact,
      allowed: limits.minutes_per_day,
    }));
  const names = full.map(({ day }) => day);
  const most = limits.consecutive_days ?? CONSECUTIVE_DAYS;
  if (weekMinutes > limits.minutes_per_week)
    found.push({ limit: 'minutes_per_week', days: names, found: weekMinutes, allowed: limits.minutes_per_week });
  if (full.length > limits.days_per_week)
    found.push({ limit: 'days_per_week', days: names, found: full.length, allowed: limits.days_per_week });
  if (run.length > most) found.push({ limit: 'consecutive_days', days: run, found: run.length, allowed: most });
  return { days, weekMinutes, contactDays: full.length, longestRun: run.length, breaches: found };
}

function dayLoad(day: PracticeDay['day'], practice: readonly PracticeDay[]): ContactDay {
  const periods = practice.filter((entry) => entry.day === day).flatMap((entry) => entry.periods);
  const total = (of: typeof periods) => of.reduce((sum, { minutes }) => sum + minutes, 0);
  return {
    day,
    minutes: total(periods),
    fullContact: total(periods.filter(({ contact }) => FULL_CONTACT.includes(contact))),
  };
}

/** The longest row of days that follow each other; the week goes round, Sunday to Monday. */
function longestRun(days: readonly PracticeDay['day'][]): PracticeDay['day'][] {
  if (days.length === WEEK.length) return [...days];
  let longest: PracticeDay['day'][] = [];
  let run: PracticeDay['day'][] = [];
  for (const day of [...WEEK, ...WEEK]) {
    run = days.includes(day) ? [...run, day] : [];
    if (run.length > longest.length) longest = run;
  }
  return longest;
}
