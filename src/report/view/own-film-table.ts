import { familyFacts, isFamily } from '../../game/families.ts';
import type { OwnFilmChapter, OwnTell } from '../../pressure/self-scout/result.ts';
import { familyLabel, plainWords } from '../words/label.ts';
import { counted, signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { seenWords } from '../words/seen-words.ts';
import { isThin } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';
import { chanceWords, pCell } from './chance-cell.ts';
import { numberCell, numbers, shareCell, type TableView, textCell, thinMark, words } from './table-view.ts';

/** The fewest snaps of another pairing that bring the guess rate under the cap. */
export function swapTable(film: OwnFilmChapter): TableView {
  return {
    id: 'swap-table',
    caption: `Change-ups over the next ${counted(film.remedy.games, 'game', 'games')}: same path, different coverage`,
    columns: [
      words('Situation'),
      words('Path'),
      words('Instead of'),
      words('Play behind it'),
      numbers('Snaps'),
      numbers('Points'),
    ],
    rows: film.remedy.swaps.map((swap) => ({
      name: situationLabel(swap.situation),
      situation: swap.situation,
      cells: [
        textCell(swap.path),
        textCell(swap.instead),
        textCell(swap.coverage),
        numberCell(String(swap.snaps), swap.snaps),
        numberCell(signed(-(swap.costPoints ?? 0)), -(swap.costPoints ?? 0)),
      ],
    })),
    empty: 'no change is needed',
  };
}

/** Our own tells: what is seen, what follows. */
export function ownTellTable(film: OwnFilmChapter): TableView {
  return {
    id: 'own-tells-table',
    caption: `Tendencies to break (${counted(film.tellsLooked, 'pattern', 'patterns')} checked)`,
    columns: [
      words('When they see'),
      words('We then play'),
      numbers('On our film'),
      numbers('Expected of us there'),
      numbers('They would plan on'),
      numbers('Corrected p'),
      words('Games'),
    ],
    rows: film.tells.map((tell) => ({
      name: seenWords(tell.seen),
      ...thinMark(isThin(tell.share)),
      cells: [
        textCell(followsWords(tell)),
        shareCell(tell.share),
        numberCell(percent(tell.expected), tell.expected),
        numberCell(percent(tell.planWith), tell.planWith),
        pCell(tell.adjusted),
        textCell(tell.oneGameOnly ? 'one game only' : counted(tell.games.length, 'game', 'games')),
      ],
    })),
    empty: 'none stood out',
  };
}

function followsWords({ asks, follows }: OwnTell): string {
  return asks === 'pressure' && isFamily(follows) ? familyFacts(follows).words : follows;
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
export function runsTable(film: OwnFilmChapter): TableView {
  return {
    id: 'runs-table',
    caption: 'Do our pressures come in a pattern?',
    columns: [words('Situation'), numbers('Snaps'), numbers('Corrected p'), words('Reading')],
    rows: film.runsTest.map((test) => ({
      name: situationLabel(test.situation),
      situation: test.situation,
      cells: [numberCell(String(test.snaps), test.snaps), pCell(test.adjusted), textCell(chanceWords(test.adjusted))],
    })),
    empty: 'too few snaps to tell',
  };
}

/** How often we showed early, what they did after it, and how those snaps ended. */
export function earlyShowTable(film: OwnFilmChapter): TableView {
  const { changed, left } = film.lookChanges;
  return {
    id: 'early-show-table',
    caption: 'Showing early',
    columns: [words('What'), numbers('On our film')],
    rows: [
      { name: 'We showed the look before the snap', cells: [shareCell(film.shownEarly)] },
      { name: 'They changed the play after it', cells: [shareCell(film.changedAfterLook)] },
      { name: 'They succeeded when they changed it', cells: [shareCell(changed.success)] },
      { name: 'They succeeded when they left it', cells: [shareCell(left.success)] },
      { name: 'A big play when they changed it', cells: [shareCell(changed.explosive)] },
      { name: 'A big play when they left it', cells: [shareCell(left.explosive)] },
    ],
    empty: 'not charted',
  };
}

/** How often each path and kind is shown early, and whether they differ by more than chance. */
export function earlyByTable(film: OwnFilmChapter): TableView {
  return {
    id: 'early-by-table',
    caption: 'Which of our calls we show early',
    columns: [words('Path or kind'), numbers('Shown early'), words('Differ among themselves')],
    rows: film.earlyShows.flatMap(({ by, adjusted, values }) =>
      values.map(({ value, share }) => ({
        name: by === 'family' ? familyLabel(value) : value,
        ...thinMark(isThin(share)),
        cells: [shareCell(share), textCell(chanceWords(adjusted))],
      })),
    ),
    empty: 'not charted',
  };
}
