import type { CountCheck, CountRange } from '../../pressure/review/count-range.ts';
import type { Grade, GradeStanding } from '../../pressure/review/grade.ts';
import type { TargetReview } from '../../pressure/review/log-score.ts';
import type { TellReview } from '../../pressure/review/tell.ts';
import {
  type Cell,
  numberCell,
  numbers,
  type Row,
  shareCell,
  type TableView,
  textCell,
  thinMark,
  words,
} from '../view/table-view.ts';
import { habitName } from '../words/habit-name.ts';
import { className, familyLabel, TARGET_LABELS } from '../words/label.ts';
import { fixed, signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { seenWords } from '../words/seen-words.ts';
import { isThin } from '../words/share-words.ts';
import { situationName } from '../words/situation-label.ts';
import { savedWords } from './review-words.ts';

/** Sunday's forecast, question by question, beside two plainer ways to guess. */
export function scoreTable(scores: readonly TargetReview[]): TableView {
  return {
    id: 'scores',
    caption: 'Forecast score by question (log loss a snap), lower is better',
    columns: [
      words('Question'),
      numbers('Snaps'),
      numbers('Forecast'),
      numbers('Plain rate'),
      numbers('Raw cell'),
      words('Forecast less plain rate'),
    ],
    rows: scores.map(scoreRow),
    empty: 'nothing that was forecast was charted',
  };
}

function scoreRow({ target, snaps, model, plainRate, rawCell, difference, standardError }: TargetReview): Row {
  const thin = isThin({ trials: snaps });
  return {
    name: TARGET_LABELS[target],
    ...thinMark(thin),
    cells: [
      numberCell(thin ? `${snaps}, thin` : String(snaps), snaps),
      lossCell(model),
      lossCell(plainRate),
      lossCell(rawCell),
      textCell(`${fixed(difference, 3)}, ${errorWords(standardError)}`),
    ],
  };
}

function lossCell(loss: number): Cell {
  return numberCell(fixed(loss, 3), loss);
}

function errorWords(error: number | null): string {
  return error === null ? 'too few snaps to say how far off' : `give or take ${fixed(error, 3)}`;
}

/** Counts of the game against Sunday's ranges; those that fell outside first. */
export function countTable(counts: readonly CountCheck[]): TableView {
  const order = [...counts].sort((a, b) => missRank(a) - missRank(b));
  return {
    id: 'counts',
    caption: 'Counts against their ranges, from five snaps on',
    columns: [
      words('Count'),
      words('Situation'),
      numbers('Came'),
      numbers('Expected'),
      numbers('95% range'),
      numbers('Central half'),
    ],
    rows: order.map((check) => ({
      name: habitName(check.target, check.name),
      cells: [
        textCell(situationName(check.situation)),
        numberCell(`${check.came} of ${check.snaps}`, check.came / check.snaps),
        numberCell(fixed(check.expected * check.snaps, 1), check.expected),
        numberCell(rangeWords(check.outer), check.outer.low),
        numberCell(rangeWords(check.inner), check.inner.low),
      ],
      ...thinMark(isThin({ trials: check.snaps })),
    })),
    empty: 'no count reached five snaps',
  };
}

function missRank({ outer, inner }: CountCheck): number {
  if (!outer.hit) return 0;
  return inner.hit ? 2 : 1;
}

function rangeWords({ low, high, hit }: CountRange): string {
  return `${low} to ${high}${hit ? '' : ', missed'}`;
}

/** Sunday's habits to watch in the game. */
export function tellTable(tells: readonly TellReview[]): TableView {
  return {
    id: 'tells',
    caption: 'Sunday’s tendencies: did they hold?',
    columns: [
      words('When'),
      words('Then'),
      numbers('Expected without it'),
      numbers('On film'),
      numbers('Planned with'),
      numbers('In the game'),
      words('So'),
    ],
    rows: tells.map((tell) => ({
      name: seenWords(tell.seen),
      cells: [
        textCell(className(tell.target, tell.follows)),
        numberCell(percent(tell.expected), tell.expected),
        shareCell(tell.film),
        numberCell(percent(tell.planWith), tell.planWith),
        shareCell(tell.game),
        textCell(tell.verdict),
      ],
      ...thinMark(isThin(tell.game)),
    })),
    empty: 'Sunday’s report flagged none',
  };
}

/** Our calls, or kinds of pressure, against what Sunday expected of them. */
export function gradeTable(
  grades: readonly Grade[],
  place: { readonly id: string; readonly caption: string; readonly first: string },
): TableView {
  return {
    id: place.id,
    caption: place.caption,
    columns: [
      words(place.first),
      numbers('Held: loss, stop or takeaway'),
      numbers('Points saved per 10 snaps, 95%'),
      numbers('Expected'),
      numbers('Points against expectation'),
      words('So'),
    ],
    rows: grades.map((grade) => ({
      name: place.id === 'families' ? familyLabel(grade.name) : grade.name,
      cells: [
        shareCell(grade.held),
        numberCell(savedWords(grade), grade.saved),
        numberCell(signed(grade.expected), grade.expected),
        numberCell(signed(grade.overExpectation), grade.overExpectation),
        textCell(standingWords(grade.standing)),
      ],
      ...thinMark(isThin({ trials: grade.snaps })),
    })),
    empty: 'none of our calls could be graded',
  };
}

/** How a call or family stands, as the page says it. */
export function standingWords(standing: GradeStanding): string {
  return STANDINGS[standing];
}

const STANDINGS: Readonly<Record<GradeStanding, string>> = {
  above: 'better than expected',
  below: 'worse than expected',
  within: 'no difference',
  too_few: 'too few snaps',
};
