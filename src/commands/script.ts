import { join } from 'node:path';
import { lookKindLabel } from '../game/look-kinds.ts';
import type { PracticeScript } from '../pressure/practice/script-result.ts';
import { WHO_DECIDES } from '../report/practice/contact-caution.ts';
import { shortageWords } from '../report/practice/shortage-words.ts';
import { practicePages } from '../season/practice-pages.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the script command. */
export interface ScriptOptions {
  readonly output?: string;
  readonly json?: boolean;
}

/** Writes the week's practice script and scout cards; nothing when the contact planned is over the limits. */
export async function script(weekFolder: string, options: ScriptOptions, terminal: Terminal): Promise<number> {
  const { script: made, pages } = await practicePages(diskWeek(weekFolder), terminal);
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), pages);
  terminal.out(options.json ? `${JSON.stringify(made, null, 2)}\n` : scriptText(made));
  for (const line of shortageWords(made)) terminal.note(line);
  terminal.note(WHO_DECIDES);
  for (const path of written) terminal.note(`Wrote ${path}`);
  return EXIT.fine;
}

function scriptText({ calls, reps, cards, contact }: PracticeScript): string {
  const rows = calls.map((call) => [
    call.isNew ? `${call.call} (new)` : call.call,
    String(call.reps),
    call.family === 'base' ? '' : String(call.asked),
    call.looks.map(({ look, reps: count }) => `${lookKindLabel(look)} ${count}`).join('; '),
  ]);
  const head = `${reps.length} reps, ${cards.length} scout cards; full contact ${contact.weekMinutes} minutes on ${contact.contactDays} ${contact.contactDays === 1 ? 'day' : 'days'}`;
  return `${head}\n${tableText(['call', 'reps', 'asked', 'against'], rows)}`;
}
