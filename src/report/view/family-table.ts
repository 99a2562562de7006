import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { PointSource } from '../../pressure/score/cell-points.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import { familyLabel } from '../words/label.ts';
import { counted, fixed, signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { situationLabel } from '../words/situation-label.ts';
import { spreadWords } from '../words/spread-words.ts';
import { numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';
import { isThinSituation } from './thin-situation.ts';

/** The families over all situations, best mean first, with everything that stands behind the rank. */
export function familyTable(scores: readonly FamilyScore[]): TableView {
  return {
    id: 'families-overall-table',
    caption: 'The families over all situations: points saved per ten snaps against the four-man base',
    columns: [
      words('Family'),
      numbers('Points saved, 80% interval'),
      words('Against the best'),
      numbers('Better than base'),
      numbers('Explosives per 100 snaps'),
      words('Made of'),
    ],
    rows: byMean(scores).map(overallRow),
    empty: 'no family was scored',
  };
}

/** The families in every situation, situation by situation, best mean first. */
export function familySituationTable(plan: WeekPlan, scores: readonly FamilyScore[]): TableView {
  return {
    id: 'families-by-situation-table',
    caption: 'The families situation by situation',
    columns: [
      words('Situation'),
      words('Family'),
      numbers('Points saved, 80% interval'),
      words('Against the best'),
      numbers('Given up a game'),
      numbers('Better than base'),
      words('Verdict'),
    ],
    rows: scores.map((score) => situationRow(plan, score)),
    empty: 'no family was scored by situation',
  };
}

/** Scores with the best mean first; equal means keep their order. */
export function byMean(scores: readonly FamilyScore[]): readonly FamilyScore[] {
  return [...scores].sort((a, b) => b.points.mean - a.points.mean);
}

function overallRow(score: FamilyScore): Row {
  return {
    name: familyLabel(score.family),
    key: score.family,
    cells: [
      pointsCell(score),
      textCell(standingWords(score)),
      score.family === 'base' ? textCell('is the base') : chanceCell(score.chanceBetterThanBase),
      numberCell(
        `${fixed(score.explosives.mean, 0)} (${fixed(score.explosives.low, 0)}-${fixed(score.explosives.high, 0)})`,
        score.explosives.mean,
      ),
      textCell(madeOf(score)),
    ],
  };
}

function situationRow(plan: WeekPlan, score: FamilyScore): Row {
  return {
    name: situationLabel(score.situation),
    situation: score.situation,
    ...thinMark(isThinSituation(plan, score.situation)),
    cells: [
      textCell(familyLabel(score.family)),
      pointsCell(score),
      textCell(standingWords(score)),
      numberCell(fixed(score.regret, 2), score.regret),
      chanceCell(score.chanceBetterThanBase),
      textCell(score.family === 'base' ? 'the base' : VERDICT_WORDS[score.verdict]),
    ],
  };
}

function pointsCell(score: FamilyScore) {
  if (score.family === 'base') return numberCell('0.0, by definition', 0);
  return numberCell(spreadWords(score.points), score.points.mean);
}

function chanceCell(chance: number) {
  return numberCell(percent(chance), chance);
}

/** Whether points can tell a family from the best, and by what they rule it out. */
export function standingWords({ ruledOutBy }: FamilyScore): string {
  return ruledOutBy === null ? 'cannot tell' : `ruled out by ${SOURCE_WORDS[ruledOutBy]}`;
}

/** How a family stands to the base by the interval of its points. */
export const VERDICT_WORDS: Readonly<Record<FamilyScore['verdict'], string>> = {
  ahead: 'ahead of base',
  behind: 'behind base',
  level: 'no clear difference',
};

const SOURCE_WORDS: Readonly<Record<PointSource, string>> = {
  league: 'league figures',
  race: 'the race',
  ownFilm: 'our own film',
};

function madeOf({ sources, ownSnaps }: FamilyScore): string {
  const { league, race, ownFilm } = sources;
  return `${signed(league)} league figures, ${signed(race)} the race, ${signed(ownFilm)} our film (${counted(ownSnaps, 'snap', 'snaps')})`;
}
