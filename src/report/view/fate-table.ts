import type { CallProtection, ProtectionChapter, RusherFate } from '../../pressure/protection-result.ts';
import { pictureLabel, plainWords } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** Every call against every protection picture: who is free, who is there first, and why. */
export function fateTable(protection: ProtectionChapter): TableView {
  return {
    id: 'fates-table',
    caption: 'Every call against every protection',
    columns: [
      words('Call'),
      words('Protection'),
      numbers('Expected on'),
      numbers('Free'),
      words('First man there'),
      words('Why'),
    ],
    rows: protection.calls.map(fateRow),
    empty: 'no call was matched against their protection',
  };
}

function fateRow(entry: CallProtection): Row {
  const first = [...entry.rushers].sort((a, b) => a.arrival - b.arrival)[0];
  return {
    name: entry.call,
    cells: [
      textCell(pictureLabel(entry.picture)),
      numberCell(percent(entry.share), entry.share),
      numberCell(String(entry.free), entry.free),
      textCell(first === undefined ? '' : firstWords(first)),
      textCell(entry.words),
    ],
  };
}

function firstWords(rusher: RusherFate): string {
  return `${plainWords(rusher.role)}, ${rusher.fate}, ${fixed(rusher.arrival, 1)} s`;
}
