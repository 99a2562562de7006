import type { OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import type { Grid } from '../chart/matrix-grid.ts';
import { capital } from '../words/label.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import type { ChartView } from './block.ts';
import { blindWords } from './guess-chart.ts';
import { numberCell, numbers, shareCell, type TableView, thinMark, words } from './table-view.ts';

/** What followed each of our paths on film. */
export function pairingChart(film: OwnFilmChapter): ChartView {
  return {
    id: 'our-pairings',
    title: pairingTitle(film),
    caption: `Snaps of each coverage behind each path. A stronger tint is a larger share of the path. A blind guess is right on ${blindWords(film)}.`,
    drawing: film.pairings.length === 0 ? null : { kind: 'grid', grid: pairingGrid(film) },
    empty: 'No path was charted with its coverage, so nothing is drawn.',
    table: pairingTable(film),
  };
}

/** The coverages seen behind any path, in order of appearance. */
export function pairingCoverages(film: OwnFilmChapter): readonly string[] {
  return [...new Set(film.pairings.flatMap((pairing) => pairing.coverages.map((entry) => entry.coverage)))];
}

function pairingGrid(film: OwnFilmChapter): Grid {
  const coverages = pairingCoverages(film);
  const rows = film.pairings.map((pairing) => ({
    label: pairing.path,
    note: String(pairing.snaps),
    cells: coverages.map((coverage) => {
      const share = pairing.coverages.find((entry) => entry.coverage === coverage)?.share;
      const count = share?.count ?? 0;
      return { text: String(count), strength: share?.estimate ?? 0, state: 'filled' as const };
    }),
  }));
  return { columns: coverages, noteTitle: 'Snaps of the path', rows };
}

function pairingTitle({ pairings }: OwnFilmChapter): string {
  const worst = pairings
    .flatMap((pairing) => pairing.coverages.map((entry) => ({ path: pairing.path, ...entry })))
    .filter((entry) => entry.share.estimate !== null && !isThin(entry.share))
    .sort((a, b) => (b.share.estimate ?? 0) - (a.share.estimate ?? 0))[0];
  if (worst === undefined) return 'Path to coverage on our film';
  return `${capital(worst.path)}: ${worst.coverage} behind it on ${shareWords(worst.share)}`;
}

function pairingTable(film: OwnFilmChapter): TableView {
  return {
    id: 'our-pairings-table',
    caption: 'Coverage behind each path on our film',
    columns: [words('Path and coverage'), numbers('On our film'), numbers('Snaps of the path')],
    rows: film.pairings.flatMap((pairing) =>
      pairing.coverages.map((entry) => ({
        name: `${pairing.path}: ${entry.coverage}`,
        ...thinMark(isThin(entry.share)),
        cells: [shareCell(entry.share), numberCell(String(pairing.snaps), pairing.snaps)],
      })),
    ),
    empty: 'not charted',
  };
}
