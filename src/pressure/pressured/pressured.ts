import { type Film, numberAt } from '../../game/film.ts';
import type { CoverageFaced } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { benjaminiHochberg } from '../../stats/adjust.ts';
import { meanOrNull } from '../../stats/mean.ts';
import type { Forecast } from '../forecast/forecast-result.ts';
import { sureOf } from '../others/sure.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { RushGroup } from '../snap/rush-group.ts';
import { FACED, type FacedFilm, facedFilm } from './faced-film.ts';
import { type FittedQuestion, fitQuestion } from './pressured-question.ts';
import type {
  PressuredChapter,
  PressuredGroup,
  PressuredRelease,
  PressuredShare,
  PressuredSplit,
} from './pressured-result.ts';
import { pressuredShare, type UntestedShare } from './pressured-share.ts';
import { PRESSURED_DEFINITIONS } from './pressured-target.ts';

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
  if (own === null) return { splits: [], factors: [] };
  const others = facedFilm(archive, cuts);
  const questions = BYS.flatMap((by) =>
    PRESSURED_DEFINITIONS.flatMap((definition) => fitQuestion({ own, others, forecasts }, { by, definition }) ?? []),
  );
  return { splits: tested(splitsOf(own, questions)), factors: questions.flatMap(factorsOf) };
}

const BYS = Object.keys(FACED) as readonly PressuredSplit['by'][];

type UntestedGroup = Omit<PressuredGroup, 'shares'> & { readonly shares: readonly UntestedShare[] };
type UntestedSplit = Omit<PressuredSplit, 'groups'> & { readonly groups: readonly UntestedGroup[] };

function splitsOf(own: FacedFilm, questions: readonly FittedQuestion[]): UntestedSplit[] {
  return BYS.map((by) => {
    const codes = own.faced[by];
    const asked = questions.filter((question) => question.by === by);
    return {
      by,
      charted: codes.reduce((sum, code) => sum + Number(code !== NOT_KNOWN), 0),
      snaps: own.film.size,
      runsCharted: own.gamesWithRuns[by].length > 0,
      groups: FACED[by].flatMap((_, group) => groupOf(own, { by, group, asked })),
    };
  });
}

interface GroupTask {
  readonly by: PressuredSplit['by'];
  readonly group: number;
  readonly asked: readonly FittedQuestion[];
}

function groupOf(own: FacedFilm, { by, group, asked }: GroupTask): UntestedGroup[] {
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
      shares,
      release: releaseOn(own.film, rows),
    },
  ];
}

/** How fast the ball is out on some snaps, of those that were timed. */
function releaseOn(film: Film, rows: readonly number[]): PressuredRelease {
  const seconds = rows.flatMap((row) => numberAt(film, 'time_to_throw', row) ?? []);
  return { timed: seconds.length, mean: meanOrNull(seconds) };
}

/** The correction over every comparison of both splits. */
function tested(splits: readonly UntestedSplit[]): PressuredSplit[] {
  const all = splits.flatMap(({ groups }) => groups.flatMap(({ shares }) => shares.filter(({ looked }) => looked)));
  const adjusted = benjaminiHochberg(all.map(({ p }) => p));
  const known = new Map(all.map((share, i) => [share, adjusted[i] as number]));
  const finish = (untested: UntestedShare): PressuredShare => {
    const { looked: _, ...share } = untested;
    const corrected = known.get(untested) ?? 1;
    return { ...share, adjusted: corrected, sure: sureOf(corrected) };
  };
  return splits.map((split) => ({
    ...split,
    groups: split.groups.map((group) => ({ ...group, shares: group.shares.map(finish) })),
  }));
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
