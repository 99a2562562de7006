import type { ColumnSource, Profile } from './profile.ts';

/** The headers of the foreign sheet that a profile names anywhere. */
export function profileHeaders(profile: Profile): readonly string[] {
  const sources = Object.values(profile.columns);
  const conditions = [...profile.keep_when, ...profile.drop_when, ...sources.flatMap(conditionsOf)];
  const named = [...sources.flatMap(headersOf), ...conditions.map(({ header }) => header)];
  return [...new Set(named)];
}

/** The headers that feed a column: one, or two that belong together. */
export function headersOf(source: ColumnSource): readonly string[] {
  return [source.header, source.with, source.restarts?.header].flatMap((header) => header ?? []);
}

function conditionsOf({ rules }: ColumnSource) {
  return (rules ?? []).flatMap(({ when }) => when);
}
