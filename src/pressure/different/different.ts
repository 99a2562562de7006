import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { share } from '../../stats/share.ts';
import type { Tell, TellSearch } from '../forecast/forecast-result.ts';
import type { AgainstOthers } from '../others/against-others.ts';
import { bothFilms } from '../others/asked-of-both.ts';
import { correctedOver } from '../others/compared.ts';
import { SURE, type Sure, sureOf } from '../others/sure.ts';
import type { PressuredChapter, PressuredTarget } from '../pressured/pressured-result.ts';
import type { DifferentChapter, DifferentLine } from './different-result.ts';
import { type Examined, examinedCells } from './examined.ts';

/** What the lines are chosen from. */
export interface DifferentInput {
  /** The opponent's snaps. */
  readonly chart: Film;
  /** Snaps of other offenses, or null. */
  readonly archive: Film | null;
  readonly cuts: SituationCuts;
  readonly pressured: PressuredChapter;
  readonly tells: TellSearch;
}

/**
 * What makes them different: everything that is charted compared with the archive's offenses, corrected over all of it
 * (Benjamini-Hochberg), and the tells, corrected over their own search; only what sets them apart from most offenses, the
 * surest and most unusual first. Two searches are corrected apart because one looks at thousands of cells and the other at a few
 * hundred.
 *
 * @see Sun, Craiu, Paterson and Bull 2006, Genetic Epidemiology 30:519, false discoveries within strata
 */
export function differentChapter({ chart, archive, cuts, pressured, tells }: DifferentInput): DifferentChapter {
  const both = bothFilms(chart, archive);
  if (both === null) return { against: 'no_archive', offenses: 0, looked: 0, lines: [] };
  const games = both.own.games.length;
  const charted = tells.tells.flatMap((tell) => tellLine(tell, games));
  if (both.archive === null) return { against: 'no_archive', offenses: 0, looked: 0, lines: chosen(charted) };
  const examined = [...examinedCells(both, cuts), ...pressuredCells(pressured)];
  const { looked, correct } = correctedOver(examined.map(({ cell }) => cell));
  const lines = examined.flatMap((one) => lineOf(one, { ...correct(one.cell), gamesPlayed: games }));
  const offenses = new Set(both.archive.games.map(({ offense }) => offense)).size;
  return { against: 'archive', offenses, looked, lines: chosen([...lines, ...charted]) };
}

/** Fewer charted snaps against a rush or a coverage are not compared: the filter is set without looking at the outcome. */
const LEAST_FACED = 8;

/** Their shares against a rush or a coverage, as compared with the archive's; of two classes the first alone. */
function pressuredCells({ splits }: PressuredChapter): Examined[] {
  return splits.flatMap(({ by, groups }) =>
    groups.flatMap(({ group, shares }) =>
      shares.flatMap(({ target, name, film, games, others, snaps }): Examined[] => {
        if (others === null || film.trials < LEAST_FACED || !PRESSURED_CLASSES[target].includes(name)) return [];
        const where = { by, value: group };
        return [{ topic: 'pressured', question: target, name, where, cell: { film, games, others }, snaps }];
      }),
    ),
  );
}

/** What is compared of each question when pressured; how plays ended says more of the defenses they met. */
const PRESSURED_CLASSES: Readonly<Record<PressuredTarget, readonly string[]>> = {
  run_or_pass: ['run'],
  pass_answer: ['quick', 'dropback', 'deep_shot', 'movement'],
  screen: ['screen'],
  quick_release: ['within'],
  result: [],
};

type Corrected = ReturnType<ReturnType<typeof correctedOver>['correct']> & { readonly gamesPlayed: number };

function lineOf(one: Examined, { film, games, others, adjusted, sure, gamesPlayed }: Corrected): DifferentLine[] {
  if (others === null || adjusted === null || sure === 'none' || !standsOut(others)) return [];
  const { topic, question, name, where, snaps } = one;
  const over = film.count - others.usual * film.trials;
  return [
    {
      topic,
      question,
      name,
      where,
      film,
      games,
      usual: others.usual,
      direction: over > 0 ? 'more' : 'less',
      offenses: others.offenses,
      below: others.below,
      snapsAGame: Math.abs(over) / gamesPlayed,
      rarity: others.rarity,
      p: others.p,
      adjusted,
      sure,
      snaps,
    },
  ];
}

/** Part of the offenses that may lie beyond an opponent who is called different. Judgment. */
const BEYOND = 0.2;

/** More, or less, than nearly all offenses: an offense may differ from the mean for sure and still be one of many. */
function standsOut({ offenses, below }: AgainstOthers): boolean {
  const beyond = Math.min(below, offenses.length - below);
  return beyond <= BEYOND * offenses.length;
}

function tellLine(tell: Tell, gamesPlayed: number): DifferentLine[] {
  const sure = sureOf(tell.adjusted);
  if (sure === 'none') return [];
  return [
    {
      topic: 'tells',
      question: tell.target,
      name: tell.follows,
      where: { by: 'seen', seen: tell.seen },
      film: share(tell.film.count, tell.film.trials),
      games: tell.games,
      usual: tell.expected,
      direction: 'more',
      offenses: [],
      below: 0,
      snapsAGame: (tell.film.count - tell.expected * tell.film.trials) / gamesPlayed,
      rarity: null,
      p: tell.p,
      adjusted: tell.adjusted,
      sure,
      snaps: tell.snaps,
    },
  ];
}

/** Most lines; more would not be read in a meeting. */
const MOST_LINES = 8;
/** Most lines of one topic, so that one habit seen from many sides does not push out the rest; judgment. */
const MOST_OF_TOPIC = 2;

/** The surest lines, among equals the most unusual; of opposites the first alone. */
function chosen(lines: readonly DifferentLine[]): readonly DifferentLine[] {
  const ranked = [...lines].sort((a, b) => rank(a.sure) - rank(b.sure) || rarityOf(a) - rarityOf(b));
  const kept: DifferentLine[] = [];
  for (const line of ranked) {
    const same = kept.filter(({ topic }) => topic === line.topic);
    if (same.length < MOST_OF_TOPIC && !same.some((other) => saysTheSame(other, line))) kept.push(line);
  }
  return kept.slice(0, MOST_LINES);
}

/** A tell has no others to be rare among: its own test says how unusual it is. */
function rarityOf({ rarity, p }: DifferentLine): number {
  return rarity ?? p;
}

function rank(sure: Sure): number {
  return SURE.indexOf(sure);
}

/** Two classes of one question on the same snaps: the less of one is the more of the other. */
function saysTheSame(one: DifferentLine, other: DifferentLine): boolean {
  const place = ({ where }: DifferentLine) => JSON.stringify(where);
  if (place(one) !== place(other)) return false;
  return one.direction !== other.direction || one.name === other.name;
}
