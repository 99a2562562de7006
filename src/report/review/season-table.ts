import type { Season } from '../../pressure/review/season.ts';
import type { GuessTrend } from '../../pressure/review/season-guess.ts';
import type { SeasonTarget } from '../../pressure/review/season-target.ts';
import { numberCell, numbers, shareCell, type TableView, textCell, thinMark, words } from '../view/table-view.ts';
import { familyLabel, TARGET_LABELS } from '../words/label.ts';
import { fixed, signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { isThin } from '../words/share-words.ts';
import { standingWords } from './review-table.ts';
import { savedWords } from './review-words.ts';

/** Every question over the season, games weighted alike. */
export function targetTable(targets: readonly SeasonTarget[]): TableView {
  return {
    id: 'season-targets',
    caption: 'Forecast score by question (log loss a snap), games weighted alike, lower is better',
    columns: [
      words('Question'),
      numbers('Games'),
      numbers('Snaps'),
      numbers('Forecast'),
      numbers('Plain rate'),
      words('Forecast less plain rate'),
      words('Said on average, came'),
    ],
    rows: targets.map((target) => ({
      name: TARGET_LABELS[target.target],
      cells: [
        numberCell(String(target.games), target.games),
        numberCell(String(target.snaps), target.snaps),
        numberCell(fixed(target.model, 3), target.model),
        numberCell(fixed(target.plainRate, 3), target.plainRate),
        textCell(
          `${fixed(target.difference, 3)}, ${errorWords(target.standardError)}; better in ${target.gamesWon} of ${target.games}`,
        ),
        textCell(yesWords(target)),
      ],
    })),
    empty: 'nothing that was forecast was charted',
  };
}

function errorWords(error: number | null): string {
  return error === null ? 'too few games to say' : `give or take ${fixed(error, 3)}`;
}

/** Run or pass is forecast by its first class, the run. */
function yesWords({ target, yes }: SeasonTarget): string {
  if (yes === null) return '';
  const what = target === 'run_or_pass' ? 'runs ' : '';
  return `${what}${percent(yes.forecast)}, ${yes.came.count} of ${yes.came.trials}`;
}

/** Which kinds of pressure paid over the season. */
export function seasonFamilyTable({ families }: Season): TableView {
  return {
    id: 'season-families',
    caption: 'Our families over the season',
    columns: [
      words('Family'),
      numbers('Games'),
      numbers('Held: loss, stop or takeaway'),
      numbers('Points saved per ten snaps, 95%'),
      numbers('Expected'),
      numbers('Points over expectation'),
      words('So'),
    ],
    rows: families.map((family) => ({
      name: familyLabel(family.name),
      cells: [
        numberCell(String(family.games), family.games),
        shareCell(family.held),
        numberCell(savedWords(family), family.saved),
        numberCell(signed(family.expected), family.expected),
        numberCell(signed(family.overExpectation), family.overExpectation),
        textCell(standingWords(family.standing)),
      ],
      ...thinMark(isThin(family.held)),
    })),
    empty: 'none of our calls is charted in a reviewed game',
  };
}

/** Our guess rate, game by game. */
export function guessTable({ games }: GuessTrend): TableView {
  return {
    id: 'season-guesses',
    caption: 'How often our earlier film gives the coverage away',
    columns: [words('Game'), numbers('Pressures on film before'), numbers('From the path'), numbers('Blind')],
    rows: games.map(({ week, opponent, read, fromPath, blind }) => ({
      name: `${opponent}, ${week}`,
      cells: [numberCell(String(read), read), shareCell(fromPath), shareCell(blind)],
      ...thinMark(isThin(fromPath)),
    })),
    empty: 'no game with our calls charted was reviewed',
  };
}
