import type { ArchiveWeight } from '../../pressure/archive/archive-weight.ts';
import { TARGET_LABELS } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { numberCell, numbers, type TableView, words } from './table-view.ts';

/** The base rates: which offenses, how many snaps, how alike in style. */
export function archiveTable({ offenses, ownGames, ownYards }: ArchiveWeight): TableView {
  const yardstick = ownGames === null ? '' : `; their own games are ${distanceWords(ownGames)} from each other`;
  return {
    id: 'archive',
    caption: `Offenses behind the base rates, the most alike first${yardstick}`,
    columns: [
      words('Offense'),
      numbers('Games'),
      numbers('Snaps'),
      numbers('Apart in style'),
      numbers(`Yards a snap, theirs ${yardsWords(ownYards)}`),
    ],
    rows: offenses.map(({ offense, games, snaps, style, yards }) => ({
      name: offense,
      cells: [
        numberCell(String(games), games),
        numberCell(String(snaps), snaps),
        numberCell(distanceWords(style), style ?? 2),
        numberCell(yardsWords(yards), yards ?? -99),
      ],
    })),
    empty: 'no other offense was charted',
  };
}

/** How much their own film and the other offenses count for, question by question. */
export function archiveUseTable({ uses }: ArchiveWeight): TableView {
  return {
    id: 'archive-use',
    caption: 'How much their own film counts over all snaps, learned from both films; the rest is other offenses',
    columns: [words('Question'), numbers('Other offense-games charted'), numbers('Their own film counts')],
    rows: uses.map(({ target, games, ownShare }) => ({
      name: TARGET_LABELS[target],
      cells: [
        numberCell(String(games), games),
        numberCell(ownShare === null ? 'not charted' : percent(ownShare), ownShare ?? -1),
      ],
    })),
    empty: 'nothing is forecast',
  };
}

function yardsWords(yards: number | null): string {
  return yards === null ? 'not charted' : fixed(yards, 1);
}

/** How far two offenses are apart in style, 0 to 1, as a percent of the plays in which they differ. */
function distanceWords(distance: number | null): string {
  return distance === null ? 'too little charted' : percent(distance);
}
