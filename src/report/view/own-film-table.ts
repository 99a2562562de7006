import type { OwnFilmChapter } from '../../pressure/own-film/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { plainWords } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { isThin } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';
import { numberCell, numbers, shareCell, type TableView, textCell, thinMark, words } from './table-view.ts';

/** The fewest snaps of another pairing that bring the guess rate under the cap. */
export function swapTable(plan: WeekPlan, film: OwnFilmChapter): TableView {
  return {
    id: 'swap-table',
    caption: 'Snaps to play in another pairing',
    columns: [words('Situation'), words('Path'), words('Instead of'), words('Play behind it'), numbers('Snaps')],
    rows: film.remedy.swaps.map((swap) => ({
      name: situationLabel(plan, swap.situation),
      situation: swap.situation,
      cells: [
        textCell(swap.path),
        textCell(swap.instead),
        textCell(swap.coverage),
        numberCell(String(swap.snaps), swap.snaps),
      ],
    })),
    empty: 'no change is needed',
  };
}

/** Our own tells: what is seen, what follows. */
export function ownTellTable(film: OwnFilmChapter): TableView {
  return {
    id: 'own-tells-table',
    caption: 'Our tells to break',
    columns: [words('When they see'), words('We then play'), numbers('On our film'), numbers('Corrected p')],
    rows: film.tells.map((tell) => ({
      name: tell.description,
      ...thinMark(isThin(tell.share)),
      cells: [textCell(tell.follows), shareCell(tell.share), numberCell(fixed(tell.adjusted, 3), tell.adjusted)],
    })),
    empty: 'none of our habits stood out',
  };
}

/** How often we send five or more, by whatever splits were charted. */
export function pressureRateTable(film: OwnFilmChapter): TableView {
  return {
    id: 'pressure-rate-table',
    caption: 'How often we send pressure',
    columns: [words('By'), words('Value'), numbers('Pressures')],
    rows: film.pressureRates.map((rate) => ({
      name: plainWords(rate.by),
      ...thinMark(isThin(rate.share)),
      cells: [textCell(rate.value), shareCell(rate.share)],
    })),
    empty: 'not charted',
  };
}

/** Which way the shell turns behind each path. */
export function rotationTable(film: OwnFilmChapter): TableView {
  return {
    id: 'rotation-table',
    caption: 'Which way we turn behind each path',
    columns: [words('Path'), words('Turn'), numbers('On our film')],
    rows: film.rotation.map((entry) => ({
      name: entry.path,
      ...thinMark(isThin(entry.share)),
      cells: [textCell(plainWords(entry.rotation)), shareCell(entry.share)],
    })),
    empty: 'not charted',
  };
}

/** Whether pressures come in a pattern within a situation. */
export function runsTable(plan: WeekPlan, film: OwnFilmChapter): TableView {
  return {
    id: 'runs-table',
    caption: 'Do our pressures come in a pattern?',
    columns: [words('Situation'), numbers('Snaps'), numbers('p of the runs test'), words('Reading')],
    rows: film.runsTest.map((test) => ({
      name: situationLabel(plan, test.situation),
      situation: test.situation,
      cells: [numberCell(String(test.snaps), test.snaps), pCell(test.p), textCell(readingOf(test.p))],
    })),
    empty: 'too few snaps to tell',
  };
}

/** How often we showed early, and how often they then changed the play. */
export function earlyShowTable(film: OwnFilmChapter): TableView {
  return {
    id: 'early-show-table',
    caption: 'Showing early',
    columns: [words('What'), numbers('On our film')],
    rows: [
      { name: 'We showed the look before the snap', cells: [shareCell(film.shownEarly)] },
      { name: 'They changed the play after it', cells: [shareCell(film.changedAfterLook)] },
    ],
    empty: 'not charted',
  };
}

function pCell(p: number | null) {
  return p === null ? numberCell('too few', 2) : numberCell(fixed(p, 2), p);
}

// The 5% level is the usual convention of the runs test, not a threshold of ours.
function readingOf(p: number | null): string {
  if (p === null) return 'cannot be told';
  return p < 0.05 ? 'more regular than chance would be' : 'no pattern seen';
}
