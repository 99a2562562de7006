/**
 * The week folders of a season before a week, earliest first: numbers in names count as numbers, so that week-9 comes
 * before week-10.
 *
 * @param names - names in the season folder, in any order
 * @param week - name of the week's own folder
 */
export function earlierWeeks(names: readonly string[], week: string): readonly string[] {
  return names.filter((name) => /^week/i.test(name) && ORDER.compare(name, week) < 0).sort(ORDER.compare);
}

const ORDER = new Intl.Collator('en', { numeric: true });
