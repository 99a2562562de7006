import type { OwnFilmChapter } from '../../pressure/own-film-result.ts';
import { percent, percentRange } from '../words/percent.ts';
import type { ChartView } from './block.ts';
import { numbers, shareCell, type TableView, textCell, words } from './table-view.ts';

/** How often a reader of our film guesses the coverage, by what he knows, against guessing blind. */
export function guessChart(film: OwnFilmChapter): ChartView {
  return {
    id: 'guess-rates',
    title: guessTitle(film),
    caption: 'Dot: share of coverages guessed right with its 95% interval. Dashed rule: guessing blind.',
    spec: null,
    empty: 'Nothing could be guessed, so nothing is drawn.',
    tinted: 'plain',
    table: guessTable(film),
  };
}

function guessTitle({ guesses }: OwnFilmChapter): string {
  const path = guesses.find((guess) => guess.knows === 'the path')?.share;
  const blind = guesses.find((guess) => guess.knows === 'nothing')?.share;
  if (path === undefined || path.estimate === null || blind === undefined || blind.estimate === null) {
    return 'How well a reader of our film guesses';
  }
  return `Who knows our path guesses the coverage right on ${path.count} of ${path.trials}; blind it is ${blind.count} of ${blind.trials}`;
}

function guessTable(film: OwnFilmChapter): TableView {
  return {
    id: 'guess-rates-table',
    caption: 'How often the coverage is guessed right',
    columns: [words('He knows'), numbers('Right'), words('Over games')],
    rows: film.guesses.map((guess) => ({
      name: guess.knows,
      cells: [
        shareCell(guess.share),
        textCell(guess.byGame === null ? 'under four games' : `${percentRange(guess.byGame.low, guess.byGame.high)}`),
      ],
    })),
    empty: 'nothing could be guessed',
  };
}

/** The share guessed right by one who knows nothing, for the chance rule of the charts. */
export function blindShare(film: OwnFilmChapter): number | null {
  return film.guesses.find((guess) => guess.knows === 'nothing')?.share.estimate ?? null;
}

/** The chance level in words. */
export function blindWords(film: OwnFilmChapter): string {
  const blind = blindShare(film);
  return blind === null ? 'not known' : percent(blind);
}
