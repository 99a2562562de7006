import type { Role } from '../../game/call-library.ts';
import type { CallProtection } from '../../pressure/protection/protection-result.ts';
import { pictureLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { protectionWords } from '../words/protection-words.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** Per call: on what share of their passes somebody comes free, and the words for the picture expected most. */
export function freeRusherTable(matched: readonly CallProtection[], roles: readonly Role[]): TableView {
  const names = [...new Set(matched.map((entry) => entry.call))];
  return {
    id: 'free-rushers-table',
    caption: 'Free rushers over the protections expected',
    columns: [
      words('Call'),
      numbers('Somebody free on'),
      words('Protection expected most'),
      words('What happens there'),
    ],
    rows: names.map((name) =>
      freeRow(
        name,
        matched.filter(({ call }) => call === name),
        roles,
      ),
    ),
    empty: 'no call was matched against their protection',
  };
}

function freeRow(name: string, matched: readonly CallProtection[], roles: readonly Role[]): Row {
  const own = [...matched].sort((a, b) => b.share - a.share);
  const total = own.reduce((sum, entry) => sum + entry.share, 0);
  const free = own.reduce((sum, entry) => sum + (entry.free > 0 ? entry.share : 0), 0);
  const share = total === 0 ? 0 : free / total;
  const first = own[0];
  return {
    name,
    cells: [
      numberCell(`${percent(share)} of passes`, share),
      textCell(first === undefined ? '' : `${pictureLabel(first.picture)} (${percent(first.share)})`),
      textCell(first === undefined ? '' : protectionWords(first, roles)),
    ],
  };
}
