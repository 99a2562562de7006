import type { CoverageClue, OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import { familyLabel, plainWords } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { isThin } from '../words/share-words.ts';
import { chanceWords, pCell } from './chance-cell.ts';
import { type Cell, numberCell, numbers, shareCell, type TableView, textCell, thinMark, words } from './table-view.ts';

/** What gives the coverage behind our pressures away: path, turn, family, side, each against shuffled logs. */
export function clueTable({ predictability, guesses, clues }: OwnFilmChapter): TableView {
  const { theilU, chance, p } = predictability;
  const path = { by: 'path', snaps: guesses[0]?.share.trials ?? 0, theilU, chance, adjusted: p } as const;
  return {
    id: 'clue-table',
    caption: 'What gives the coverage behind our pressures away',
    columns: [
      words('Who sees'),
      numbers('Pressures'),
      numbers('Doubt it takes away'),
      numbers('A shuffled log shows'),
      numbers('Corrected p'),
      words('Reading'),
    ],
    rows: [path, ...clues].map((clue) => ({
      name: LABELS[clue.by],
      cells: [
        numberCell(String(clue.snaps), clue.snaps),
        shareOrBlank(clue.theilU),
        shareOrBlank(clue.chance),
        pCell(clue.adjusted),
        textCell(clue.snaps === 0 ? 'not charted' : readingOf(clue)),
      ],
    })),
    empty: 'not charted',
  };
}

const LABELS: Readonly<Record<'path' | CoverageClue['by'], string>> = {
  path: 'the path',
  rotation: 'which way the shell turns',
  family: 'the kind of pressure',
  side: 'the side it comes from',
};

function readingOf({ theilU, adjusted }: Pick<CoverageClue, 'theilU' | 'adjusted'>): string {
  return theilU === null ? 'one coverage behind all of them' : chanceWords(adjusted);
}

function shareOrBlank(share: number | null): Cell {
  return share === null ? textCell('') : numberCell(percent(share), share);
}

/** Every coverage behind every turn, family and side. */
export function clueDetailTable({ clues }: OwnFilmChapter): TableView {
  return {
    id: 'clue-detail-table',
    caption: 'Coverage behind each turn, kind and side',
    columns: [words('Who sees'), words('Coverage'), numbers('On our film')],
    rows: clues.flatMap(({ by, values }) =>
      values.flatMap(({ value, coverages }) =>
        coverages.map(({ coverage, share }) => ({
          name: valueLabel(by, value),
          ...thinMark(isThin(share)),
          cells: [textCell(coverage), shareCell(share)],
        })),
      ),
    ),
    empty: 'not charted',
  };
}

function valueLabel(by: CoverageClue['by'], value: string): string {
  switch (by) {
    case 'family':
      return familyLabel(value);
    case 'rotation':
      return value === 'none' ? 'No turn' : `Turn ${plainWords(value).toLowerCase()}`;
    case 'side':
      return `From ${value}`;
    default:
      return by satisfies never;
  }
}
