import type { GuessRate, OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import type { IntervalAxis } from '../chart/interval-row.ts';
import { shareRow } from '../chart/share-row.ts';
import { fixed } from '../words/number-words.ts';
import { percent, percentRange } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';
import type { ChartView } from './block.ts';
import { numbers, shareCell, type TableView, textCell, words } from './table-view.ts';

/** How often a reader of our film guesses the coverage, by what he knows, against guessing blind. */
export function guessChart(film: OwnFilmChapter): ChartView {
  const rows = film.guesses.map(({ knows, share }) => shareRow(knows, KNOWS[knows], share));
  return {
    id: 'guess-rates',
    title: guessTitle(film),
    caption:
      'How often an opponent who broke down our other games calls the coverage right, by what he sees. The bar is the range of the long run.',
    drawing: rows.some((row) => row.state !== 'none') ? { kind: 'strips', rows: rows, axis: axisOf(film) } : null,
    empty: 'Too few of our pressures are charted, so nothing is drawn.',
    table: guessTable(film),
  };
}

/** What an opponent goes by, as the page says it. */
const KNOWS: Readonly<Record<GuessRate['knows'], string>> = {
  nothing: 'Nothing: a blind guess',
  situation: 'The situation',
  path: 'The path',
  path_and_situation: 'Path and situation',
};

function axisOf(film: OwnFilmChapter): IntervalAxis {
  const blind = blindShare(film);
  const reference = blind === null ? null : { at: blind, label: `blind ${percent(blind)}` };
  return { title: 'coverages called right', domain: [0, 1], format: 'percent', reference };
}

function guessTitle({ guesses }: OwnFilmChapter): string {
  const path = guesses.find((guess) => guess.knows === 'path')?.share;
  const blind = guesses.find((guess) => guess.knows === 'nothing')?.share;
  if (path === undefined || path.estimate === null || blind === undefined || blind.estimate === null) {
    return 'What our film gives away';
  }
  return `Anyone who sees our path calls the coverage on ${shareWords(path)}; a blind guess gets ${blind.count}`;
}

function guessTable(film: OwnFilmChapter): TableView {
  return {
    id: 'guess-rates-table',
    caption: 'How often the coverage is called right',
    columns: [words('He sees'), numbers('Right'), words('From game to game'), words('More than blind')],
    rows: film.guesses.map((guess) => ({
      name: KNOWS[guess.knows],
      cells: [
        shareCell(guess.share),
        textCell(guess.byGame === null ? 'under four games' : percentRange(guess.byGame.low, guess.byGame.high)),
        textCell(gainWords(guess)),
      ],
    })),
    empty: 'too few pressures charted',
  };
}

function gainWords({ knows, gain }: GuessRate): string {
  if (knows === 'nothing') return '';
  if (gain === null) return 'under four games';
  const [low, high] = [gain.low, gain.high].map((value) => `${fixed(100 * value, 0)}`);
  return `${signedPoints(gain.difference)} points (${low} to ${high})`;
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
