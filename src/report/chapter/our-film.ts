import type { OwnFilmChapter } from '../../pressure/own-film/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { guessChart } from '../view/guess-chart.ts';
import {
  earlyShowTable,
  ownTellTable,
  pressureRateTable,
  rotationTable,
  runsTable,
  swapTable,
} from '../view/own-film-table.ts';
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
    ...remedyBlocks(plan, film),
    { kind: 'table', table: ownTellTable(film) },
    { kind: 'table', table: pressureRateTable(film) },
    { kind: 'table', table: rotationTable(film) },
    { kind: 'table', table: runsTable(plan, film) },
    { kind: 'table', table: earlyShowTable(film) },
  ];
}

const NO_FILM =
  'Our own calls were not charted. With ours.csv the tool says what our paths give away and how to mend it.';

function remedyBlocks(plan: WeekPlan, film: OwnFilmChapter): readonly Block[] {
  return [
    { kind: 'heading', id: 'remedy', text: 'What to change' },
    { kind: 'prose', html: html`<p>${film.remedy.words}</p>\n` },
    { kind: 'table', table: swapTable(plan, film) },
  ];
}
