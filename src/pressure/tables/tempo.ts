import type { Film } from '../../game/film.ts';
import { TEMPOS, YES_NO } from '../../game/vocabulary.ts';
import { type Share, share } from '../../stats/share.ts';
import {
  askBoth,
  type BothFilms,
  type ComparedCell,
  type CrossOfBoth,
  comparedCell,
  crossBoth,
  everySnap,
} from '../others/asked-of-both.ts';
import type { Compared, Correct } from '../others/compared.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { wordClasses } from '../snap/word-classes.ts';
import { afterRows } from './after.ts';
import type { AfterRow, TempoAndChecks } from './tables-result.ts';

/** Nothing charted. */
export const NO_TEMPO: TempoAndChecks = {
  tempos: [],
  looksOver: null,
  checks: null,
  checksAfterLook: share(0, 0),
  checksOtherwise: share(0, 0),
  after: [],
};

/** Tempo and checks as counted, before the correction over everything in the tables. */
export interface TempoCounts {
  readonly tempos: readonly { readonly tempo: string; readonly cell: ComparedCell }[];
  readonly looksOver: ComparedCell | null;
  readonly checks: ComparedCell | null;
  readonly checksAfterLook: Share;
  readonly checksOtherwise: Share;
  readonly after: readonly AfterRow[];
}

/** Counts tempo, looks to the sideline and changed plays, and what they come after. */
export function tempoCounts(both: BothFilms): TempoCounts {
  const all = everySnap(both);
  const tempo = askBoth(both, TEMPOS, (chart) => wordCodes(chart, 'tempo', TEMPOS));
  const looks = askBoth(both, YES_NO, (chart) => looksOverCodes(chart));
  const checks = askBoth(both, YES_NO, (chart) => wordCodes(chart, 'checked', YES_NO));
  const tempos = crossBoth(both, all, tempo);
  const [afterLook, otherwise] = [0, 1].map((group) => shareOf(crossBoth(both, looks, checks), group));
  return {
    tempos: TEMPOS.map((word, k) => ({
      tempo: word,
      cell: comparedCell(tempos, { group: 0, k, question: 'tempo' }),
    })).filter(({ cell }) => cell.film.count > 0),
    looksOver: charted(comparedCell(crossBoth(both, all, looks), { group: 0, k: 0, question: 'looks_over' })),
    checks: charted(comparedCell(crossBoth(both, all, checks), { group: 0, k: 0, question: 'checks' })),
    checksAfterLook: afterLook as Share,
    checksOtherwise: otherwise as Share,
    after: afterRows(both.own, { looks_over: looks.own, checks: checks.own }),
  };
}

/** The comparisons in it. */
export function comparedIn({ tempos, looksOver, checks }: TempoCounts): readonly ComparedCell[] {
  return [...tempos.map(({ cell }) => cell), ...[looksOver, checks].filter((cell) => cell !== null)];
}

/** The counts with the correction made. */
export function tempoAndChecks(counts: TempoCounts, correct: Correct): TempoAndChecks {
  const finished = (cell: ComparedCell | null): Compared | null => cell && correct(cell);
  return {
    tempos: counts.tempos.map(({ tempo, cell }) => ({ tempo, ...correct(cell) })),
    looksOver: finished(counts.looksOver),
    checks: finished(counts.checks),
    checksAfterLook: counts.checksAfterLook,
    checksOtherwise: counts.checksOtherwise,
    after: counts.after,
  };
}

function charted(cell: ComparedCell): ComparedCell | null {
  return cell.film.trials === 0 ? null : cell;
}

function shareOf(cross: CrossOfBoth, group: number): Share {
  return comparedCell(cross, { group, k: 0, question: 'checks' }).film;
}

function wordCodes(chart: Film, column: 'tempo' | 'checked', words: readonly string[]): Uint8Array {
  const at = wordClasses(chart, column, (word = '') => {
    const place = words.indexOf(word);
    return place === -1 ? NOT_KNOWN : place;
  });
  return codesBySnap(chart.size, at);
}

/** Looked to the sideline (0) or not (1); 255 where no tempo was charted. */
function looksOverCodes(chart: Film): Uint8Array {
  return wordCodes(chart, 'tempo', TEMPOS).map((code) => {
    if (code === NOT_KNOWN) return NOT_KNOWN;
    return TEMPOS[code] === 'freeze' ? 0 : 1;
  });
}
