import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import { html } from '../page/html.ts';
import { type Block, type Chapter, foldedTables } from '../view/block.ts';
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

/** How we look on film: what our path gives away, and the fewest snaps that fix it. */
export function ourFilmChapter(plan: WeekPlan): Chapter {
  return { id: 'our-film', title: 'How we look', short: 'Our look', blocks: filmBlocks(plan) };
}

function filmBlocks(plan: WeekPlan): readonly Block[] {
  const film = plan.ownFilm;
  if (film === null) return [{ kind: 'prose', html: html`<p class="none">${NO_FILM}</p>\n` }];
  return [
    { kind: 'chart', chart: guessChart(film) },
    { kind: 'chart', chart: pairingChart(film) },
    { kind: 'table', table: swapTable(film) },
    foldedTables('What this week’s menu shows them', loopTable(plan, film), readerTable(film), byGamesTable(film)),
    foldedTables(
      'Our tendencies',
      ownTellTable(film),
      pressureSplitTable(film),
      pressureRateTable(film),
      runsTable(film),
    ),
    foldedTables('Everything the coverage goes with', clueTable(film), clueDetailTable(film), rotationTable(film)),
    ...earlyBlocks(film),
  ];
}

const NO_FILM = 'Our own calls are not charted. Add ours.csv to see what our paths give away and how to fix it.';

/** Nothing where nobody charted whether we showed early. */
function earlyBlocks(film: OwnFilmChapter): readonly Block[] {
  return film.shownEarly.trials === 0
    ? []
    : [foldedTables('Showing it early', earlyShowTable(film), earlyByTable(film))];
}
