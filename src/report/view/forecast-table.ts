import type { ExpectedCount, Forecast, ForecastClass } from '../../pressure/forecast/forecast-result.ts';
import { className } from '../words/label.ts';
import { percent, percentRange } from '../words/percent.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import { numberCell, numbers, type Row, shareCell, type TableView, textCell, thinMark, words } from './table-view.ts';

/** How a forecast table is named. */
export interface TableName {
  readonly id: string;
  readonly caption: string;
}

/** Forecast beside film, each class of each forecast a row. */
export function forecastTable(cells: readonly Forecast[], { id, caption }: TableName): TableView {
  return {
    id,
    caption,
    columns: [
      words('Situation'),
      words('What'),
      numbers('Forecast, 95% interval'),
      numbers('On film'),
      words('Expected on Friday'),
      words('Mostly from'),
    ],
    rows: cells.flatMap((cell) => cell.classes.map((entry) => forecastRow(cell, entry))),
    empty: 'nothing was forecast',
  };
}

/** A forecast share with its interval. */
export function forecastWords(entry: ForecastClass): string {
  return `${percent(entry.share)} (${percentRange(entry.low, entry.high)})`;
}

/** How many of the next such snaps, or why that is not said. */
export function expectedWords(cell: Forecast, name: string): string {
  const found = cell.expected.find((entry) => entry.name === name);
  return found === undefined ? 'too few such snaps to count' : countWords(found, cell.nextSnaps);
}

function countWords({ low, high }: ExpectedCount, nextSnaps: number): string {
  const range = low === high ? `${low}` : `${low} to ${high}`;
  return `${range} of about ${Math.round(nextSnaps)}`;
}

function mostlyFromWords({ mostlyFrom, situation }: Forecast): string {
  switch (mostlyFrom) {
    case 'here':
      return `their ${situationLabel(situation)}`;
    case 'all_their_snaps':
      return 'all their snaps';
    case 'archive':
      return 'the archive';
    case 'nothing':
      return 'nothing charted';
    default:
      return mostlyFrom satisfies never;
  }
}

function forecastRow(cell: Forecast, entry: ForecastClass): Row {
  return {
    name: situationLabel(cell.situation),
    ...(cell.situation === ALL_SITUATIONS ? {} : { situation: cell.situation }),
    ...thinMark(cell.thin),
    cells: [
      textCell(className(cell.target, entry.name)),
      numberCell(forecastWords(entry), entry.share),
      shareCell(entry.film),
      textCell(expectedWords(cell, entry.name)),
      textCell(mostlyFromWords(cell)),
    ],
  };
}
