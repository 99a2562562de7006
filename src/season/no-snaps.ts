import { countBy, mostFirst } from '../game/by-word.ts';
import { rowsOf, textAt } from '../game/film.ts';
import type { NamedReading } from './read-season-sheets.ts';
import type { SeasonFolder } from './season-folder.ts';
import { UserProblem } from './user-problem.ts';

/** A week with no usable snap of the opponent on film. */
interface EmptyWeek {
  readonly opponent: string;
  readonly film: readonly NamedReading[];
  /** What else is wrong in its files, in words. */
  readonly rest: readonly string[];
}

/** Why there is no snap to plan from: the teams on film instead, the sheets that need a profile, what else is wrong. */
export function noSnaps({ profileFile }: Pick<SeasonFolder, 'profileFile'>, week: EmptyWeek): UserProblem {
  const foreign = profileFile === null ? week.film.filter(isForeign) : [];
  const lines = [
    `no usable snap of ${week.opponent} was found`,
    ...otherTeams(week.film),
    ...foreign.map(({ file }) => adoptWords(file)),
    ...week.rest,
  ];
  return new UserProblem('faults', lines.join('\n'));
}

/** Teams named, the most frequent first. */
const TEAMS_NAMED = 5;

function otherTeams(sheets: readonly NamedReading[]): string[] {
  const named = sheets.flatMap(({ reading: { chart } }) => rowsOf(chart).map((row) => textAt(chart, 'offense', row)));
  const teams = mostFirst(countBy(named, (team) => team)).slice(0, TEAMS_NAMED);
  if (teams.length === 0) return [];
  const words = teams.map(([team, count]) => `"${team}" on ${count} ${count === 1 ? 'snap' : 'snaps'}`);
  return [
    `The offense on film is ${words.join(', ')}. Write the opponent in week.yaml as the sheet does: opponent: ${JSON.stringify(teams[0]?.[0])}`,
  ];
}

/** Not one snap, and headers that feed no column. */
function isForeign({ reading: { chart, unmapped } }: NamedReading): boolean {
  return chart.size === 0 && unmapped.length > 0;
}

function adoptWords(file: string): string {
  return `A sheet with other headers is read through a profile: "pressure-plan adopt ${file}" drafts it from the values.`;
}
