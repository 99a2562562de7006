import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { byGamesTable, loopTable, readerTable } from '../view/film-loop-table.ts';
import { guessChart } from '../view/guess-chart.ts';
import { clueDetailTable, clueTable } from '../view/own-clue-table.ts';
import {
  earlyByTable,
  earlyShowTable,
  ownTellTable,
  rotationTable,
  runsTable,
  swapTable,
} from '../view/own-film-table.ts';
import { pressureRateTable, pressureSplitTable } from '../view/own-pressure-table.ts';
import { pairingChart } from '../view/pairing-chart.ts';

/** How we look on film: what our path gives away, and the fewest snaps that mend it. */
export function ourFilmChapter(plan: WeekPlan): Chapter {
  return { id: 'our-film', title: 'How we look on film', short: 'Our film', blocks: filmBlocks(plan) };
}

function filmBlocks(plan: WeekPlan): readonly Block[] {
  const film = plan.ownFilm;
  if (film === null) return [{ kind: 'prose', html: html`<p>${NO_FILM}</p>\n` }];
  return [
    { kind: 'prose', html: html`<p class="verdict">${film.predictability.words}</p>\n` },
    { kind: 'chart', chart: guessChart(film) },
    { kind: 'chart', chart: pairingChart(film) },
    { kind: 'table', table: clueTable(film) },
    { kind: 'folded', summary: 'Every coverage behind each turn, kind and side', table: clueDetailTable(film) },
    { kind: 'table', table: rotationTable(film) },
    ...remedyBlocks(plan, film),
    ...pressureBlocks(plan, film),
    ...earlyBlocks(film),
  ];
}

const NO_FILM =
  'Our own calls were not charted. With ours.csv the tool says what our paths give away and how to mend it.';

function remedyBlocks(plan: WeekPlan, film: OwnFilmChapter): readonly Block[] {
  return [
    { kind: 'heading', id: 'remedy', text: 'What to change' },
    { kind: 'prose', html: html`<p>${film.remedy.words}</p>\n` },
    { kind: 'table', table: loopTable(plan, film) },
    { kind: 'table', table: swapTable(plan, film) },
    { kind: 'folded', summary: 'The fewest swaps by number of games', table: byGamesTable(film) },
    { kind: 'folded', summary: 'The reader against this week’s menu, path by path', table: readerTable(film) },
  ];
}

function pressureBlocks(plan: WeekPlan, film: OwnFilmChapter): readonly Block[] {
  return [
    { kind: 'heading', id: 'our-tells', text: 'What they may expect of us' },
    { kind: 'prose', html: html`<p>${TELL_WORDS}</p>\n` },
    { kind: 'table', table: ownTellTable(film) },
    { kind: 'table', table: pressureSplitTable(film) },
    { kind: 'folded', summary: 'Our pressure rate, value by value', table: pressureRateTable(plan, film) },
    { kind: 'table', table: runsTable(plan, film) },
  ];
}

function earlyBlocks(film: OwnFilmChapter): readonly Block[] {
  return [
    { kind: 'heading', id: 'showing-early', text: 'Showing early' },
    { kind: 'prose', html: html`<p>${film.lookChanges.words}</p>\n` },
    { kind: 'table', table: earlyShowTable(film) },
    { kind: 'folded', summary: 'Which of our calls we show early', table: earlyByTable(film) },
  ];
}

const TELL_WORDS =
  'Our film searched the way we search theirs: up to three things seen before the snap, against what our other games would lead one to expect there. p is how often chance alone would show as much, corrected for everything looked at.';
