import { dictionaryRows, dictionaryText } from '../ingest/dictionary.ts';
import { EXIT } from './exit-code.ts';
import type { Terminal } from './terminal.ts';

/** Prints what every column means and may hold, as text or JSON. */
export async function dictionary(options: { readonly json?: boolean }, terminal: Terminal): Promise<number> {
  terminal.out(options.json ? `${JSON.stringify(dictionaryRows(), null, 2)}\n` : dictionaryText());
  return EXIT.fine;
}
