import type { ContactBreach } from '../../pressure/practice/contact.ts';

/** One limit of contact passed: what was planned, the limit, and where it is set. */
export function breachWords({ limit, days, found, allowed }: ContactBreach): string {
  return `${SENTENCES[limit](days.join(', '), found, allowed)} (week.yaml: practice.contact_limits.${limit})`;
}

const SENTENCES: Readonly<Record<ContactBreach['limit'], (days: string, found: number, allowed: number) => string>> = {
  minutes_per_day: (day, found, allowed) =>
    `${day}: ${found} minutes of full contact (thud and live), the limit is ${allowed} a day`,
  minutes_per_week: (days, found, allowed) =>
    `${days}: ${found} minutes of full contact together, the limit is ${allowed} a week`,
  days_per_week: (days, found, allowed) => `${days}: full contact on ${found} days, the limit is ${allowed} a week`,
  consecutive_days: (days, found, allowed) =>
    `${days}: full contact on ${found} days in a row, the limit is ${allowed}`,
};
