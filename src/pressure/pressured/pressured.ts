import type { Film } from '../../game/film.ts';
import type { CoverageFaced } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { benjaminiHochberg } from '../../stats/adjust.ts';
import type { Forecast } from '../forecast/forecast-result.ts';
import { sureOf } from '../others/sure.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { PASS } from '../snap/run-or-pass.ts';
import type { RushGroup } from '../snap/rush-group.ts';
import { FACED, type FacedFilm, facedFilm } from './faced-film.ts';
import { type FittedQuestion, fitQuestion } from './pressured-question.ts';
import { releaseIn, type TimedThrows, timedThrows } from './pressured-release.ts';
import type { PressuredChapter, PressuredGroup, PressuredShare, PressuredSplit } from './pressured-result.ts';
import { pressuredShare, type UntestedShare } from './pressured-share.ts';
import { PRESSURED_DEFINITIONS } from './pressured-target.ts';
import { KEPT } from './shift-belief.ts';

/** What the chapter is made from. */
export interface PressuredInput {
  /** The opponent's snaps. */
  readonly chart: Film;
  /** Snaps of other offenses, or null. */
  readonly archive: Film | null;
  /** What they will do in each situation, whatever they face. */
  readonly forecasts: readonly Forecast[];
  readonly cuts: SituationCuts;
}

/** What they do when pressured: by rushers and by coverage faced, against what is due on those snaps and the archive. */
export function pressuredChapter({ chart, archive, forecasts, cuts }: PressuredInput): PressuredChapter {
  const own = facedFilm(chart, cuts);
  if (own === null) return { splits: [], looked: 0, backtest: backtests(), factors: [] };
  const others = facedFilm(archive, cuts);
  const questions = BYS.flatMap((by) =>
    PRESSURED_DEFINITIONS.flatMap((definition) => fitQuestion({ own, others, forecasts }, { by, definition }) ?? []),
  );
  const { splits, looked } = tested(splitsOf(own, questions));
  return { splits, looked, backtest: backtests(), factors: questions.flatMap(factorsOf) };
}

const BYS = Object.keys(FACED) as readonly PressuredSplit['by'][];

function backtests(): PressuredChapter['backtest'] {
  return BYS.flatMap((by) => PRESSURED_DEFINITIONS.map(({ target }) => ({ by, target, ...KEPT[by][target] })));
}

type UntestedGroup = Omit<PressuredGroup, 'shares'> & { readonly shares: readonly UntestedShare[] };
type UntestedSplit = Omit<PressuredSplit, 'groups'> & { readonly groups: readonly UntestedGroup[] };

function splitsOf(own: FacedFilm, questions: readonly FittedQuestion[]): UntestedSplit[] {
  const throws = timedThrows(own.film, own.games);
  return BYS.map((by) => {
    const codes = own.faced[by];
    const asked = questions.filter((question) => question.by === by);
    return {
      by,
      charted: codes.reduce((sum, code) => sum + Number(code !== NOT_KNOWN), 0),
      snaps: own.film.size,
      runsCharted: own.gamesWithRuns[by].length > 0,
      groups: FACED[by].flatMap((_, group) => groupOf(own, { by, group, asked, throws })),
    };
  });
}

interface GroupTask {
  readonly by: PressuredSplit['by'];
  readonly group: number;
  readonly asked: readonly FittedQuestion[];
  readonly throws: TimedThrows;
}

function groupOf(own: FacedFilm, { by, group, asked, throws }: GroupTask): UntestedGroup[] {
  const codes = own.faced[by];
  const rows = Array.from(codes.keys()).filter((row) => codes[row] === group);
  if (rows.length === 0) return [];
  const shares = asked.flatMap((question) =>
    question.definition.classes.flatMap((_, k) => pressuredShare(own, question, { group, k }) ?? []),
  );
  return [
    {
      group: FACED[by][group] as RushGroup | CoverageFaced,
      snaps: rows.length,
      passes: rows.filter((row) => own.runOrPass[row] === PASS).length,
      shares,
      release: releaseIn(throws, (row) => codes[row] === group),
    },
  ];
}

/** The correction over every comparison of both splits. */
function tested(splits: readonly UntestedSplit[]): { readonly splits: PressuredSplit[]; readonly looked: number } {
  const all = splits.flatMap(({ groups }) => groups.flatMap(({ shares }) => shares.filter(({ looked }) => looked)));
  const adjusted = benjaminiHochberg(all.map(({ p }) => p));
  const known = new Map(all.map((share, i) => [share, adjusted[i] as number]));
  const finish = (untested: UntestedShare): PressuredShare => {
    const { looked: _, ...share } = untested;
    const corrected = known.get(untested) ?? 1;
    return { ...share, adjusted: corrected, sure: sureOf(corrected) };
  };
  return {
    looked: all.length,
    splits: splits.map((split) => ({
      ...split,
      groups: split.groups.map((group) => ({ ...group, shares: group.shares.map(finish) })),
    })),
  };
}

function factorsOf({ by, definition, planned }: FittedQuestion): PressuredChapter['factors'] {
  return planned.flatMap(({ due, moved }, group) =>
    definition.classes.map((name, k) => ({
      by,
      group: FACED[by][group] as RushGroup | CoverageFaced,
      target: definition.target,
      name,
      factor: (due[k] as number) > 0 ? (moved[k] as number) / (due[k] as number) : 1,
    })),
  );
}
