import { ANSWERS } from '../../game/answers.ts';
import { type Film, textAt } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { RUN_OR_PASS } from '../forecast/target.ts';
import {
  type AskedOfBoth,
  askBoth,
  type BothFilms,
  bothFilms,
  type ComparedCell,
  comparedCell,
  crossBoth,
  everySnap,
} from '../others/asked-of-both.ts';
import { correctedOver } from '../others/compared.ts';
import { answerCodes } from '../snap/answer.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';
import { askSplit } from './table-split.ts';
import { type OpponentTable, type OpponentTables, TABLE_SPLITS, type TableRow } from './tables-result.ts';
import { comparedIn, NO_TEMPO, tempoAndChecks, tempoCounts } from './tempo.ts';
import { topCounts } from './top-counts.ts';

/** What the tables are made from. */
export interface TablesInput {
  /** The opponent's snaps. */
  readonly chart: Film;
  /** Snaps of other offenses, or null. */
  readonly archive: Film | null;
  readonly cuts: SituationCuts;
}

/** The questions a staff asks first: by formation, personnel, zone, hash and side, and how they come to the line. */
export function opponentTables({ chart, archive, cuts }: TablesInput): OpponentTables {
  const both = bothFilms(chart, archive);
  if (both === null) return { tables: [], tempo: NO_TEMPO, looked: 0 };
  const film = tableFilm(both, cuts);
  const tables = TABLE_SPLITS.map((by) => tableOf(film, by, askSplit(both, by, cuts)));
  const tempo = tempoCounts(both);
  const cells = tables.flatMap(({ rows }) => rows.flatMap(({ used, runs }) => [used, runs]));
  const { looked, correct } = correctedOver([...cells, ...comparedIn(tempo)]);
  return {
    looked,
    tables: tables.map((table) => ({
      ...table,
      rows: table.rows.map((row) => ({ ...row, used: correct(row.used), runs: correct(row.runs) })),
    })),
    tempo: tempoAndChecks(tempo, correct),
  };
}

interface TableFilm {
  readonly both: BothFilms;
  readonly all: AskedOfBoth;
  readonly runOrPass: AskedOfBoth;
  /** Classified answers of the opponent's snaps. */
  readonly answers: Uint8Array;
}

function tableFilm(both: BothFilms, cuts: SituationCuts): TableFilm {
  const { film, games } = both.own;
  return {
    both,
    all: everySnap(both),
    runOrPass: askBoth(both, RUN_OR_PASS.classes, runOrPassCodes),
    answers: classifiedAnswers(answerCodes(film, cuts), runOrPassCodes(film), games),
  };
}

type UncorrectedRow = Omit<TableRow, 'used' | 'runs'> & { readonly used: ComparedCell; readonly runs: ComparedCell };
type UncorrectedTable = Omit<OpponentTable, 'rows'> & { readonly rows: readonly UncorrectedRow[] };

function tableOf(
  { both, all, runOrPass, answers }: TableFilm,
  by: OpponentTable['by'],
  split: AskedOfBoth,
): UncorrectedTable {
  const { film } = both.own;
  const used = crossBoth(both, all, split);
  const runs = crossBoth(both, split, runOrPass);
  const rows = split.classes.flatMap((value, place): UncorrectedRow[] => {
    const snaps = Array.from(split.own.keys()).filter((row) => split.own[row] === place);
    if (snaps.length === 0) return [];
    return [
      {
        value,
        used: comparedCell(used, { group: 0, k: place, question: by }),
        runs: comparedCell(runs, { group: place, k: 0, question: 'run_or_pass' }),
        answers: topCounts(snaps, (row) => ANSWERS[answers[row] as number]),
        concepts: topCounts(snaps, (row) => textAt(film, 'concept', row)),
        snaps,
      },
    ];
  });
  const charted = split.own.reduce((sum, code) => sum + Number(code !== NOT_KNOWN), 0);
  return { by, charted, snaps: film.size, rows };
}
