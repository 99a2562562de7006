import type * as z from 'zod';
import { callLibrarySchema } from './call-library.ts';
import { type Chart, chartedCount, joinCharts } from './chart.ts';
import type { ColumnName } from './columns.ts';
import { type Profile, profileSchema } from './profile.ts';
import { readSheet } from './read-sheet.ts';
import { type GroupedProblems, groupProblems, type RowProblem } from './row-problem.ts';
import {
  profilePaths,
  roleOf,
  type SeasonFile,
  type SeasonRole,
  SHEET_GROUPS,
  type SheetGroup,
} from './season-files.ts';
import { columnsOfKind } from './sheet-kind.ts';
import type { SheetReading } from './sheet-reading.ts';
import { checkAcross } from './snap-checks.ts';
import { weekSettingsSchema } from './week-settings.ts';
import { readYaml } from './yaml-file.ts';

/** On how many of the snaps a column was charted. */
export interface ChartedShare {
  readonly group: SheetGroup;
  readonly column: ColumnName;
  readonly charted: number;
  readonly snaps: number;
}

/** A sheet of the season as read. */
export interface CheckedSheet {
  readonly path: string;
  readonly group: SheetGroup;
  readonly reading: SheetReading;
}

/**
 * Everything there is to say of a season folder before it is used. `notRead` lists files that have no part in it.
 * `shares` holds every column a group's sheets may carry, with a count of 0 where nobody charted it.
 */
export interface SeasonCheck {
  readonly problems: GroupedProblems;
  readonly faults: number;
  readonly warnings: number;
  readonly sheets: readonly CheckedSheet[];
  readonly shares: readonly ChartedShare[];
  readonly notRead: readonly string[];
}

/** Problems shown before the rest is only counted; judgement. */
const PROBLEMS_SHOWN = 200;

/** Checks all files of a season folder: sheets one by one and against each other, settings, library and profiles. */
export function checkSeason(files: readonly SeasonFile[], cap: number = PROBLEMS_SHOWN): SeasonCheck {
  const roles = files.map((file) => ({ file, role: roleOf(file.path) }));
  const profiles = readProfiles(files);
  const sheets = roles.flatMap(({ file, role }) => readOne(file, role, profiles));
  const problems = [
    ...roles.flatMap(({ file, role }) => settingsProblems(file, role)),
    ...sheets.flatMap(({ reading }) => reading.problems),
    ...repeatsAcross(sheets),
  ];
  return {
    problems: groupProblems(problems, cap),
    faults: problems.filter(({ severity }) => severity === 'fault').length,
    warnings: problems.filter(({ severity }) => severity === 'warning').length,
    sheets,
    shares: SHEET_GROUPS.flatMap((group) => sharesOf(group, sheets)),
    notRead: roles.filter(({ role }) => role.kind === 'other').map(({ file }) => file.path),
  };
}

/** The sound profiles by path; what is wrong with the others is said where settings are checked. */
function readProfiles(files: readonly SeasonFile[]): ReadonlyMap<string, Profile> {
  const profiles = new Map<string, Profile>();
  for (const { path, bytes } of files) {
    if (roleOf(path).kind !== 'profile') continue;
    const reading = readYaml(bytes, profileSchema, path);
    if (reading.kind === 'value') profiles.set(path, reading.value);
  }
  return profiles;
}

function readOne(file: SeasonFile, role: SeasonRole, profiles: ReadonlyMap<string, Profile>): CheckedSheet[] {
  if (role.kind !== 'sheet') return [];
  const { path, bytes } = file;
  const profile = profilePaths(path, role.group).flatMap((place) => profiles.get(place) ?? [])[0];
  const reading = readSheet({ file: path, bytes }, profile ? { kind: role.sheet, profile } : { kind: role.sheet });
  return [{ path, group: role.group, reading }];
}

function settingsProblems({ path, bytes }: SeasonFile, role: SeasonRole): readonly RowProblem[] {
  switch (role.kind) {
    case 'week':
      return yamlProblems(bytes, weekSettingsSchema, path);
    case 'defense':
      return yamlProblems(bytes, callLibrarySchema, path);
    case 'profile':
      return yamlProblems(bytes, profileSchema, path);
    case 'sheet':
    case 'other':
      return [];
    default:
      return role satisfies never;
  }
}

function yamlProblems<Value>(bytes: Uint8Array, schema: z.ZodType<Value>, path: string): readonly RowProblem[] {
  const reading = readYaml(bytes, schema, path);
  return reading.kind === 'problems' ? reading.problems : [];
}

/** Sheets of one folder belong together; the same game may well be scouted for two weeks. */
function repeatsAcross(sheets: readonly CheckedSheet[]): readonly RowProblem[] {
  const folders = new Map<string, Chart[]>();
  for (const { path, group, reading } of sheets) {
    const key = `${group}:${path.slice(0, Math.max(0, path.lastIndexOf('/')))}`;
    folders.set(key, [...(folders.get(key) ?? []), reading.chart]);
  }
  return [...folders.values()].flatMap(checkAcross);
}

function sharesOf(group: SheetGroup, sheets: readonly CheckedSheet[]): ChartedShare[] {
  const charts = sheets.filter((sheet) => sheet.group === group).map(({ reading }) => reading.chart);
  if (charts.length === 0) return [];
  const chart = joinCharts(charts);
  const kind = group === 'archive' ? 'opponent' : group;
  return columnsOfKind(kind).map((column) => ({
    group,
    column,
    charted: chartedCount(chart, column),
    snaps: chart.size,
  }));
}
