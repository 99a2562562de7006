import type { FileSet } from '../../season/memory-files.ts';
import { nearTeam } from '../../season/team-slips.ts';
import { opponentOf, weeksOf } from '../desk-state.ts';

/**
 * What to say of an opponent's name that is close to one of another week; empty when it is not.
 *
 * @param week - the week it is typed for; empty for a week that is not there yet
 */
export function teamNote(written: string, files: FileSet, week = ''): string {
  const weeks = weeksOf(files).filter((other) => other !== week);
  const near = nearTeam(
    written,
    weeks.map((other) => opponentOf(files, other)),
  );
  const where = weeks.find((other) => opponentOf(files, other) === near);
  return near === undefined ? '' : `Close to "${near}" of ${where}. If it is the same team, write it the same way.`;
}
