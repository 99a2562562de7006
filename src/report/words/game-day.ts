const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/**
 * A calendar day as a coach writes it. The day is taken as written: no time zone moves it.
 *
 * @param day - YYYY-MM-DD
 * @returns the text unchanged when it is not a day
 * @example gameDay('2026-11-06') // "Fri Nov 6, 2026"
 */
export function gameDay(day: string): string {
  const [year = Number.NaN, month = Number.NaN, date = Number.NaN] = day.split('-').map(Number);
  const weekday = new Date(Date.UTC(year, month - 1, date)).getUTCDay();
  return Number.isNaN(weekday) ? day : `${DAYS[weekday]} ${MONTHS[month - 1]} ${date}, ${year}`;
}

/** The day a page carries: the game's where week.yaml gives it, else the day the page was made, said as such. */
export function pageDay({
  settings,
  date,
}: {
  readonly settings: { readonly date?: string | undefined };
  readonly date: string;
}): string {
  return settings.date === undefined ? `made ${gameDay(date)}` : gameDay(settings.date);
}
