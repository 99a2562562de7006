import type { UnknownFormation } from '../ingest/formation/unknown-formations.ts';
import { tableText } from './table-text.ts';

/** Names listed before the rest is only counted. */
const LISTED = 15;

/** Formation names that the book does not have and could fill, with what was charted with them; '' when there are none. */
export function formationText(unknown: readonly UnknownFormation[]): string {
  const open = unknown.filter((formation) => formation.open > 0);
  if (open.length === 0) return '';
  const rows = open
    .slice(0, LISTED)
    .map(({ name, snaps, open: blank, guesses }) => [
      name,
      String(snaps),
      String(blank),
      guesses.map(({ column, word, count, charted }) => `${column} ${word} (${count} of ${charted})`).join(', ') ||
        'nothing charted',
    ]);
  const rest = open.length > LISTED ? `… and ${open.length - LISTED} more\n` : '';
  const head = 'Formation names that formations.yaml does not have; it would fill the blank cells:';
  return `${head}\n${tableText(['name', 'snaps', 'with blanks', 'charted with it most often'], rows)}${rest}`;
}
