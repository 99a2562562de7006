import type { GuessRate, OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import type { IntervalAxis } from '../chart/interval-row.ts';
import { intervalSpec } from '../chart/interval-spec.ts';
import { shareRow } from '../chart/share-row.ts';
import { fixed } from '../words/number-words.ts';
import { percent, percentRange } from '../words/percent.ts';
import type { ChartView } from './block.ts';
import { numbers, shareCell, type TableView, textCell, words } from './table-view.ts';

/** How often a reader of our film guesses the coverage, by what he knows, against guessing blind. */
export function guessChart(film: OwnFilmChapter): ChartView {
  const rows = film.guesses.map(({ knows, share }) => shareRow(knows, `He knows ${knows}`, share));
  return {
    id: 'guess-rates',
    title: guessTitle(film),
    caption: 'Dot: share of coverages guessed right with its 95% interval. Dashed rule: guessing blind.',
    spec: rows.some((row) => row.state !== 'none') ? intervalSpec(rows, axisOf(film)) : null,
    empty: 'Nothing could be guessed, so nothing is drawn.',
    tinted: 'plain',
    table: guessTable(film),
  };
}

function axisOf(film: OwnFilmChapter): IntervalAxis {
  const blind = blindShare(film);
  const reference = blind === null ? null : { at: blind, label: `blind ${percent(blind)}` };
  return { title: 'Coverages guessed right, on games not seen before', domain: [0, 1], format: 'percent', reference };
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
    columns: [words('He knows'), numbers('Right'), words('From game to game'), words('More than blind')],
    rows: film.guesses.map((guess) => ({
      name: guess.knows,
      cells: [
        shareCell(guess.share),
        textCell(guess.byGame === null ? 'under four games' : percentRange(guess.byGame.low, guess.byGame.high)),
        textCell(gainWords(guess)),
      ],
    })),
    empty: 'nothing could be guessed',
  };
}

function gainWords({ knows, gain }: GuessRate): string {
  if (knows === 'nothing') return '';
  if (gain === null) return 'under four games';
  const [low, high] = [gain.low, gain.high].map((value) => `${fixed(100 * value, 0)}`);
  return `${signedPoints(gain.difference)} points in a hundred (${low} to ${high})`;
}

function signedPoints(difference: number): string {
  return difference > 0 ? `+${fixed(100 * difference, 0)}` : fixed(100 * difference, 0);
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
