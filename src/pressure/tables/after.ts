import { type Film, numberAt } from '../../game/film.ts';
import { benjaminiHochberg } from '../../stats/adjust.ts';
import { share } from '../../stats/share.ts';
import { sumOf } from '../others/against-others.ts';
import { type CrossCount, crossByGame, type FilmGames, gameCells } from '../others/cross-count.ts';
import { sureOf } from '../others/sure.ts';
import { clusteredP } from '../others/tails.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { OffenseGame } from '../snap/offense-game.ts';
import { OUTCOME_KINDS, outcomeAt } from '../snap/outcome.ts';
import { type RushGroup, rushGroupOf } from '../snap/rush-group.ts';
import type { AfterKind, AfterRow } from './tables-result.ts';

/** The two questions as codes: 0 yes, 1 no, 255 not charted. */
export type AfterQuestions = Readonly<Record<AfterRow['question'], Uint8Array>>;

/** After what they look over and change the play: each thing against their own share over all snaps. */
export function afterRows(own: FilmGames, questions: AfterQuestions): readonly AfterRow[] {
  const splits = afterSplits(own);
  const rows = (Object.keys(questions) as AfterRow['question'][]).flatMap((question) =>
    splits.flatMap((split) => rowsOf(own, split, { question, codes: questions[question] })),
  );
  const adjusted = benjaminiHochberg(rows.map(({ p }) => p));
  return rows.map((row, i) => ({ ...row, adjusted: adjusted[i] as number, sure: sureOf(adjusted[i] as number) }));
}

interface AfterSplit {
  readonly after: AfterKind;
  readonly values: readonly string[];
  readonly codes: Uint8Array;
}

interface Question {
  readonly question: AfterRow['question'];
  readonly codes: Uint8Array;
}

type Untested = Omit<AfterRow, 'adjusted' | 'sure'>;

/** Fewer charted snaps are not tested, as for tells. */
const LEAST = 8;

function rowsOf({ games }: FilmGames, { after, values, codes }: AfterSplit, asked: Question): Untested[] {
  const crosses = crossByGame(games, { groupOf: codes, groups: values.length, classOf: asked.codes, classes: 2 });
  const overall = overallShare(games, asked.codes);
  if (overall === null) return [];
  return values.flatMap((value, group) =>
    rowOf(crosses, { group, overall, names: { question: asked.question, after, value } }),
  );
}

interface RowPlace {
  readonly group: number;
  readonly overall: number;
  readonly names: Pick<AfterRow, 'question' | 'after' | 'value'>;
}

function rowOf(crosses: readonly CrossCount[], { group, overall, names }: RowPlace): Untested[] {
  const counted = gameCells(crosses, group, 0);
  const { count, trials } = sumOf(counted);
  if (trials < LEAST) return [];
  return [
    {
      ...names,
      film: share(count, trials),
      overall,
      games: counted,
      p: clusteredP(counted, { expected: overall, question: names.question }),
    },
  ];
}

function overallShare(games: readonly OffenseGame[], codes: Uint8Array): number | null {
  let [count, trials] = [0, 0];
  for (const row of games.flatMap(({ rows }) => rows)) {
    if (codes[row] === NOT_KNOWN) continue;
    trials++;
    count += Number(codes[row] === 0);
  }
  return count === 0 ? null : count / trials;
}

const LAST_PLAYS = ['first_of_series', ...OUTCOME_KINDS];
const LAST_RUSHES = ['four_or_fewer', 'five_or_more'];
const FEWER_THAN_FIVE: readonly RushGroup[] = ['three_or_fewer', 'four'];
const DOWNS = ['1', '2', '3', '4'];

function afterSplits({ film, games }: FilmGames): readonly AfterSplit[] {
  const last = lastPlays(film, games);
  const codesOf = (codeAt: (row: number) => number) => Uint8Array.from({ length: film.size }, (_, row) => codeAt(row));
  return [
    { after: 'last_play', values: LAST_PLAYS, codes: codesOf((row) => lastPlayCode(film, last[row])) },
    { after: 'last_rush', values: LAST_RUSHES, codes: codesOf((row) => lastRushCode(film, last[row])) },
    { after: 'down', values: DOWNS, codes: codesOf((row) => placeOf(DOWNS, numberAt(film, 'down', row)?.toString())) },
  ];
}

/** Their last play of the same series by snap; -1 for the first of one, undefined where series were not charted. */
function lastPlays(film: Film, games: readonly OffenseGame[]): readonly (number | undefined)[] {
  const last = new Array<number | undefined>(film.size).fill(undefined);
  for (const { rows } of games) {
    rows.forEach((row, i) => {
      const before = rows[i - 1];
      const series = numberAt(film, 'drive', row);
      if (series === undefined) return;
      last[row] = before !== undefined && numberAt(film, 'drive', before) === series ? before : -1;
    });
  }
  return last;
}

function lastPlayCode(film: Film, last: number | undefined): number {
  if (last === undefined) return NOT_KNOWN;
  return last === -1 ? 0 : placeOf(LAST_PLAYS, outcomeAt(film, last));
}

function lastRushCode(film: Film, last: number | undefined): number {
  if (last === undefined || last === -1) return NOT_KNOWN;
  const group = rushGroupOf(numberAt(film, 'rushers_faced', last) ?? 0);
  if (group === undefined) return NOT_KNOWN;
  return placeOf(LAST_RUSHES, FEWER_THAN_FIVE.includes(group) ? 'four_or_fewer' : 'five_or_more');
}

function placeOf(list: readonly string[], word: string | undefined): number {
  const place = word === undefined ? -1 : list.indexOf(word);
  return place === -1 ? NOT_KNOWN : place;
}
