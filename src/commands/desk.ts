import { stat } from 'node:fs/promises';
import { UserProblem } from '../season/user-problem.ts';
import { deskFile, HOW_TO_OPEN } from './desk-file.ts';
import { EXIT } from './exit-code.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Writes the desk, the whole tool in one page, into a season's folder and says how to open it. */
export async function desk(folder: string, terminal: Terminal): Promise<number> {
  const about = await stat(folder).catch(() => null);
  if (!about?.isDirectory())
    throw new UserProblem('usage', `there is no folder ${folder}. "pressure-plan new ${folder}" makes a season.`);
  const text = await deskFile();
  if (text === null) throw new UserProblem('faults', 'the desk is missing from this installation');
  const [path] = await writeFiles(folder, [{ name: 'desk.html', text }]);
  terminal.note(`Wrote ${path}`);
  terminal.note(HOW_TO_OPEN);
  return EXIT.fine;
}
