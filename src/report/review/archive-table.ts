import type { ArchiveWeight } from '../../pressure/archive/archive-weight.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { TARGET_LABELS } from '../words/label.ts';
import { distanceWords } from './review-words.ts';

/** The base rates: whose they are, how many snaps, how alike in style. */
export function archiveTable({ offenses, ownGames }: ArchiveWeight): TableView {
  const yardstick = ownGames === null ? '' : `; their own games are ${distanceWords(ownGames)} from each other`;
  return {
    id: 'archive',
    caption: `Offenses behind the base rates, the most alike first${yardstick}`,
    columns: [words('Offense'), numbers('Games'), numbers('Snaps'), numbers('Apart in style')],
    rows: offenses.map(({ offense, games, snaps, style }) => ({
      name: offense,
      cells: [
        numberCell(String(games), games),
        numberCell(String(snaps), snaps),
        numberCell(distanceWords(style), style ?? 2),
      ],
    })),
    empty: 'no other offense was charted',
  };
}

/** What the base rates were used for, question by question. */
export function archiveUseTable({ uses }: ArchiveWeight): TableView {
  return {
    id: 'archive-use',
    caption: 'What the base rates are used for',
    columns: [words('Question'), numbers('Offense-games charted'), numbers('Helps from'), words('So')],
    rows: uses.map(({ target, games, helpsFrom, verdict }) => ({
      name: TARGET_LABELS[target],
      cells: [
        numberCell(String(games), games),
        numberCell(helpsFrom === null ? 'not measured' : String(helpsFrom), helpsFrom ?? -1),
        textCell(verdict),
      ],
    })),
    empty: 'nothing is forecast',
  };
}
