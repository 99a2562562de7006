import type { Role } from '../../game/call-library.ts';
import type { CallProtection, RusherFate } from '../../pressure/protection/protection-result.ts';
import { pictureLabel, plainWords } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { protectionWords } from '../words/protection-words.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** The protections each call is shown against; the rest are in report.json. */
const SHOWN = 5;

/** Each call against the protections expected most: who is free, who is there first, and why. */
export function fateTable(matched: readonly CallProtection[], roles: readonly Role[]): TableView {
  return {
    id: 'fates-table',
    caption: `Every call against the ${SHOWN} protections expected most`,
    columns: [
      words('Call'),
      words('Protection'),
      numbers('Expected on'),
      numbers('Free'),
      words('First man there'),
      words('Why'),
    ],
    rows: likeliest(matched).map((entry) => fateRow(entry, roles)),
    empty: 'no call was matched against their protection',
  };
}

function likeliest(matched: readonly CallProtection[]): readonly CallProtection[] {
  const names = [...new Set(matched.map((entry) => entry.call))];
  return names.flatMap((name) =>
    matched
      .filter((entry) => entry.call === name)
      .sort((a, b) => b.share - a.share)
      .slice(0, SHOWN),
  );
}

function fateRow(entry: CallProtection, roles: readonly Role[]): Row {
  const first = [...entry.rushers].sort((a, b) => a.arrival - b.arrival)[0];
  return {
    name: entry.call,
    cells: [
      textCell(pictureLabel(entry.picture)),
      numberCell(percent(entry.share), entry.share),
      numberCell(String(entry.free), entry.free),
      textCell(first === undefined ? '' : firstWords(first)),
      textCell(protectionWords(entry, roles)),
    ],
  };
}

function firstWords(rusher: RusherFate): string {
  return `${plainWords(rusher.role)}, ${rusher.fate}, ${fixed(rusher.arrival, 1)} s`;
}
