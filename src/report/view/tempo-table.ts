import type { Compared } from '../../pressure/others/compared.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { AfterKind, AfterRow } from '../../pressure/tables/tables-result.ts';
import type { Share } from '../../stats/share.ts';
import { plainWords } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { sureWord } from '../words/sure-words.ts';
import { numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';

/** How they come to the line, look over and change the play, and after what; null where none of it was charted. */
export function tempoTable({ tables }: WeekPlan): TableView | null {
  const { tempos, looksOver, checks, checksAfterLook, checksOtherwise, after } = tables.tempo;
  const rows = [
    ...tempos
      .filter(({ tempo }) => tempo !== LOOKED_OVER)
      .map(({ tempo, ...share }) => comparedRow(`Tempo: ${plainWords(tempo).toLowerCase()}`, share)),
    ...comparedRows(QUESTIONS.looks_over, looksOver),
    ...comparedRows(QUESTIONS.checks, checks),
    ...(checks?.film.count ? checkRows(checksAfterLook, checksOtherwise) : []),
    ...after.filter(({ sure }) => sure !== 'none').map(afterRow),
  ];
  if (rows.length === 0) return null;
  return {
    id: 'tempo-table',
    caption: 'Tempo and checks',
    columns: [words('They'), numbers('Share'), words('Usual'), words('How sure they differ')],
    rows,
    empty: 'not charted',
  };
}

/** The tempo that is counted as looking over. */
const LOOKED_OVER = 'freeze';

const QUESTIONS: Readonly<Record<AfterRow['question'], string>> = {
  looks_over: 'Look to the sideline',
  checks: 'Change the play at the line',
};

function shareRow(name: string, film: Share, [usual, sure]: readonly [usual: string, sure: string]): Row {
  const cells = [numberCell(shareWords(film), film.estimate ?? -1), textCell(usual), textCell(sure)];
  return { name, ...thinMark(isThin(film)), cells };
}

function comparedRow(name: string, { film, others, sure }: Compared): Row {
  return shareRow(name, film, others === null ? ['', ''] : [`others ${percent(others.usual)}`, sureWord(sure, film)]);
}

function comparedRows(name: string, share: Compared | null): readonly Row[] {
  return share === null ? [] : [comparedRow(name, share)];
}

/** Plays changed by whether they looked over first, where tempo and checks were charted together. */
function checkRows(afterLook: Share, otherwise: Share): readonly Row[] {
  const rows = [
    [`${QUESTIONS.checks} after looking over`, afterLook],
    [`${QUESTIONS.checks} without looking over`, otherwise],
  ] as const;
  return rows.flatMap(([name, film]) => (film.trials === 0 ? [] : [shareRow(name, film, ['', ''])]));
}

function afterRow({ question, after, value, film, overall, sure }: AfterRow): Row {
  const name = `${QUESTIONS[question]} ${AFTER_WORDS[after][value] as string}`;
  return shareRow(name, film, [`they ${percent(overall)}`, sureWord(sure, film)]);
}

const AFTER_WORDS: Readonly<Record<AfterKind, Readonly<Record<string, string>>>> = {
  last_play: {
    first_of_series: 'on the first snap of a series',
    loss: 'after a loss',
    stop: 'after a stop',
    gain: 'after a gain',
    explosive: 'after a big play',
    takeaway: 'after a turnover',
  },
  last_rush: { four_or_fewer: 'after a rush of four or fewer', five_or_more: 'after a rush of five or more' },
  down: { 1: 'on 1st down', 2: 'on 2nd down', 3: 'on 3rd down', 4: 'on 4th down' },
};
