import { statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { defenseSchema } from '../game/short-form/defense-schema.ts';
import { checkLibrary } from '../pressure/soundness/soundness.ts';
import { renderCalls } from '../report/render-calls.ts';
import { faultInWords } from '../report/words/soundness-words.ts';
import { readSettings } from '../season/read-settings.ts';
import { UserProblem } from '../season/user-problem.ts';
import { EXIT } from './exit-code.ts';
import { bytesOf } from './read-disk.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/**
 * Draws every call of a season's defense.yaml on one page, with its soundness and what it asks of whom, and lists them.
 *
 * @throws UserProblem when there is no defense.yaml, or it has faults
 */
export async function calls(
  place: string,
  options: { readonly output?: string; readonly json?: boolean },
  terminal: Terminal,
): Promise<number> {
  const file = defenseFile(place);
  const found = { file, bytes: await bytesOf(file, file) };
  const library = await readSettings(found, () => defenseSchema);
  if (!library) return EXIT.faults;
  const soundness = checkLibrary(library).map(faultInWords);
  const open = soundness.filter(({ declared }) => !declared);
  const page = await renderCalls(library, soundness);
  const written = await writeFiles(options.output ?? join(dirname(file), 'out'), [{ name: 'calls.html', text: page }]);
  const sound = ({ name }: { readonly name: string }) => !open.some(({ call }) => call === name);
  const rows = library.calls.map((call) => [
    call.name,
    call.family.replaceAll('_', ' '),
    call.path,
    call.coverage,
    sound(call) ? 'sound' : 'NOT SOUND',
  ]);
  terminal.out(
    options.json
      ? `${JSON.stringify({ ...library, soundness }, null, 2)}\n`
      : tableText(['call', 'family', 'path', 'coverage', ''], rows),
  );
  for (const { call, words } of open) terminal.note(`${call}: ${words}`);
  for (const path of written) terminal.note(`Wrote ${path}`);
  return open.length > 0 ? EXIT.faults : EXIT.fine;
}

/** defense.yaml itself, or that of a season, or of the season around a week. */
function defenseFile(place: string): string {
  const isFile = (path: string) => statSync(path, { throwIfNoEntry: false })?.isFile() === true;
  if (isFile(place)) return place;
  const tried = [join(place, 'defense.yaml'), join(place, '..', 'defense.yaml')];
  const found = tried.find(isFile);
  if (found !== undefined) return found;
  throw new UserProblem(
    'usage',
    `no defense.yaml in ${place}. Name the season folder; "pressure-plan new" writes one with calls to rename.`,
  );
}
