import { ANSWERS } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import { dirichletVariance } from '../../stats/dirichlet-variance.ts';
import { type ByAnswer, type ByFamily, eachAnswer, eachFamily } from '../evidence/by-answer.ts';
import { PRESSURE_ZONES, type PressureZone } from '../evidence/league-figures.ts';
import { type CellPoints, cellPoints, POINT_SOURCES, type PointSource } from './cell-points.ts';
import { type PointsModel, situationWeights } from './points-model.ts';
import type { SituationAnswers } from './situation-answers.ts';

/** Snaps a score is counted for. */
export const SNAPS_PER_SCORE = 10;

/** One family over a mix of situations and zones, in points saved per ten snaps against the four-man base. */
export interface FamilyMix {
  /** Expected points against each answer alone, by source; null shares give the points they would have. */
  readonly saved: Readonly<Record<PointSource, ByAnswer>>;
  readonly common: readonly number[];
  readonly own: number;
}

/** Snaps of a situation, of a zone, or all of them. */
export interface PointsMix {
  /** Situation or zone id, or `all`. */
  readonly id: string;
  readonly expectedSnaps: number;
  /** Whether their answers are known here; false where an ordinary offense takes their place. */
  readonly known: boolean;
  readonly shares: ByAnswer;
  readonly families: ByFamily<FamilyMix>;
  /** The situations it is made of with their weights, each with the families' points per ten snaps against an answer. */
  readonly parts: readonly {
    readonly weight: number;
    readonly situation: SituationAnswers;
    readonly saved: ByFamily<ByAnswer>;
  }[];
}

/** A week in mixes: all snaps, each situation, each zone. */
export interface PointsWeek {
  readonly all: PointsMix;
  readonly situations: readonly PointsMix[];
  readonly zones: readonly PointsMix[];
}

interface Cell {
  readonly situation: SituationAnswers;
  readonly zone: PressureZone;
  /** Share of the game's snaps, and of the situation's. */
  readonly weight: number;
  readonly share: number;
  readonly families: ByFamily<CellPoints>;
}

/** Works out every cell of a week and mixes them. */
export function pointsWeek(model: PointsModel): PointsWeek {
  const weights = situationWeights(model.situations);
  const cells = model.situations.flatMap((situation, s) =>
    PRESSURE_ZONES.map((zone): Cell => {
      const share = model.zones.get(situation.id)?.[zone] ?? 0;
      const families = eachFamily((family) => cellPoints(model, family, { situation, zone }));
      return { situation, zone, weight: (weights[s] as number) * share, share, families };
    }),
  );
  const snaps = model.situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  return {
    all: mixOf(cells, { id: 'all', expectedSnaps: snaps }),
    situations: model.situations.map(({ id, expectedSnaps }) => {
      const own = cells.filter(({ situation }) => situation.id === id);
      return mixOf(
        own.map((cell) => ({ ...cell, weight: cell.share })),
        { id, expectedSnaps },
      );
    }),
    zones: PRESSURE_ZONES.map((zone) => {
      const own = cells.filter((cell) => cell.zone === zone);
      const expectedSnaps = snaps * own.reduce((sum, { weight }) => sum + weight, 0);
      return mixOf(own, { id: zone, expectedSnaps });
    }),
  };
}

/** Points a family saves against an answer, from all sources. */
export function savedAgainst({ saved }: FamilyMix): ByAnswer {
  return eachAnswer((answer) => POINT_SOURCES.reduce((sum, source) => sum + saved[source][answer], 0));
}

/** Variance of what the answers alone leave open in the difference of two families. */
export function answerVariance({ parts }: PointsMix, family: Family, against: Family): number {
  return parts.reduce((sum, { weight, situation, saved }) => {
    const lead = ANSWERS.map((answer) => saved[family][answer] - saved[against][answer]);
    const alphas = ANSWERS.map((answer) => situation.alphas[answer]);
    return sum + weight * weight * dirichletVariance(alphas, lead);
  }, 0);
}

type MixName = Pick<PointsMix, 'id' | 'expectedSnaps'>;

function mixOf(cells: readonly Cell[], name: MixName): PointsMix {
  const total = cells.reduce((sum, { weight }) => sum + weight, 0);
  const weighed = cells.map((cell) => ({ ...cell, weight: total === 0 ? 1 / cells.length : cell.weight / total }));
  const shares = eachAnswer((answer) => over(weighed, ({ situation }) => situation.shares[answer]));
  return {
    ...name,
    known: cells.some(({ situation }) => situation.known),
    shares,
    families: eachFamily((family) => familyMix(weighed, family, shares)),
    parts: partsOf(weighed),
  };
}

function over(cells: readonly Cell[], of: (cell: Cell) => number): number {
  return cells.reduce((sum, cell) => sum + cell.weight * of(cell), 0);
}

/** A mix's points against an answer are those where it happens, so that parts and shares still multiply out. */
function familyMix(cells: readonly Cell[], family: Family, shares: ByAnswer): FamilyMix {
  const from = (source: PointSource) =>
    eachAnswer((answer) => {
      const happens = (cell: Cell) => (shares[answer] === 0 ? 1 : cell.situation.shares[answer] / shares[answer]);
      return SNAPS_PER_SCORE * over(cells, (cell) => happens(cell) * cell.families[family].saved[source][answer]);
    });
  const common = cells[0]?.families[family].common ?? [];
  return {
    saved: { league: from('league'), race: from('race'), ownFilm: from('ownFilm') },
    common: common.map((_, i) => SNAPS_PER_SCORE * over(cells, (cell) => cell.families[family].common[i] as number)),
    own: SNAPS_PER_SCORE * over(cells, (cell) => cell.families[family].own),
  };
}

function partsOf(cells: readonly Cell[]): PointsMix['parts'] {
  const situations = [...new Set(cells.map(({ situation }) => situation))];
  return situations.map((situation) => {
    const own = cells.filter((cell) => cell.situation === situation);
    const weight = own.reduce((sum, cell) => sum + cell.weight, 0);
    const part = (cell: Cell) => (weight === 0 ? 0 : cell.weight / weight);
    const saved = eachFamily((family) =>
      eachAnswer((answer) => own.reduce((sum, cell) => sum + part(cell) * cellTotal(cell, family, answer), 0)),
    );
    return { weight, situation, saved };
  });
}

function cellTotal({ families }: Cell, family: Family, answer: keyof ByAnswer): number {
  const { saved } = families[family];
  return SNAPS_PER_SCORE * POINT_SOURCES.reduce((sum, source) => sum + saved[source][answer], 0);
}
