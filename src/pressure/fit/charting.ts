import type { Family } from '../../game/families.ts';
import { FIT_FEATURES, type FitFeature } from '../../game/fit-features.ts';
import { createRandom } from '../../stats/random.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import { GUESS_WORTH, typicalShare } from './feature-guess.ts';
import type { FitCharting } from './fit-result.ts';
import { netOf } from './net-where.ts';
import { FEATURE_COLUMN } from './snap-features.ts';
import { eachExpected, expectedMean, type Theory } from './theory.ts';
import type { OpenWord } from './verdict-shares.ts';

/** Draws of what a column would show; the chance is then good to about two in a hundred. */
const DRAWS = 400;

/** Another family counts as another choice when it is ahead by half a snap in ten. Judgment. */
const MATTERS = 0.05;

/** What charting is worth is worked out from. */
export interface ChartingInput {
  readonly theories: ReadonlyMap<Family, Theory>;
  /** All their snaps as expected when a family's rushers come. */
  readonly facing: (family: Family) => ExpectedSnaps;
  readonly seed: number;
}

/**
 * What each blank column would do for the choice: the words it would show are drawn around what is typical, as widely as
 * eight snaps allow, and the family with most right less wrong is chosen again; one that is ahead by next to nothing is no other choice.
 * Only pressures are chosen among.
 */
export function chartingValues({ theories, facing, seed }: ChartingInput): FitCharting[] {
  const open = [...theories]
    .filter(([family]) => family !== 'base')
    .map((entry) => openFamily(entry, facing(entry[0])));
  const columns = [...new Set(open.flatMap(({ words }) => words.map(({ feature }) => FEATURE_COLUMN[feature])))];
  return columns
    .map((column) => chartingOf(column, open, seed))
    .sort((a, b) => b.chanceChoiceChanges - a.chanceChoiceChanges || b.share - a.share);
}

/** How far one word would move a family, per unit of the word's share. */
interface OpenMove {
  readonly feature: FitFeature;
  readonly codes: readonly number[];
  readonly chance: number;
  readonly move: number;
}

interface OpenFamily {
  readonly family: Family;
  readonly net: number;
  readonly words: readonly OpenMove[];
}

function openFamily([family, theory]: readonly [Family, Theory], expected: ExpectedSnaps): OpenFamily {
  const found = new Map<string, OpenWord>();
  eachExpected(theory, expected, ({ open }, share) => {
    for (const { feature, codes, chance, change } of open()) {
      const key = `${feature} ${codes.join(' ')}`;
      const known = found.get(key) ?? { feature, codes, chance: 0, change: 0 };
      found.set(key, { ...known, chance: known.chance + share * chance, change: known.change + share * change });
    }
  });
  const words = [...found.values()].map(({ feature, codes, chance, change }) => {
    const typical = codes.reduce((sum, code) => sum + typicalShare(feature, code), 0);
    return { feature, codes, chance, move: change / typical };
  });
  return { family, net: expectedMean(theory, expected, netOf), words };
}

function chartingOf(column: string, families: readonly OpenFamily[], seed: number): FitCharting {
  const opened = families.map(({ family, words }) => ({
    family,
    share: words.reduce((sum, { feature, chance }) => (FEATURE_COLUMN[feature] === column ? sum + chance : sum), 0),
  }));
  const [most] = opened.sort((a, b) => b.share - a.share);
  const random = createRandom(`charting ${column} ${seed}`);
  const features = (Object.keys(FIT_FEATURES) as FitFeature[]).filter((name) => FEATURE_COLUMN[name] === column);
  const nets = netsOf(families, () => 0);
  const today = nets.indexOf(Math.max(...nets));
  const draws = mayChange(families, column) ? DRAWS : 0;
  let changed = 0;
  for (let draw = 0; draw < draws; draw++) {
    const shares = new Map(features.map((name) => [name, random.dirichlet(typicalCounts(name))] as const));
    const shown = ({ feature, codes }: OpenMove) =>
      codes.reduce((sum, code) => sum + (shares.get(feature)?.[code] ?? 0), 0);
    const then = netsOf(families, shown);
    if (Math.max(...then) - (then[today] as number) >= MATTERS) changed++;
  }
  return {
    column,
    family: most?.family ?? 'base',
    share: most?.share ?? 0,
    chanceChoiceChanges: changed / DRAWS,
  };
}

/** Whether any family could pass today's best whatever shares the column's words took; where not, nothing is drawn. */
function mayChange(families: readonly OpenFamily[], column: string): boolean {
  const ranges = families.map(({ net, words }) => {
    const moves = words.filter(({ feature }) => FEATURE_COLUMN[feature] === column).map(({ move }) => move);
    const up = moves.reduce((sum, move) => sum + Math.max(0, move), 0);
    return { net, least: net + moves.reduce((sum, move) => sum + Math.min(0, move), 0), most: net + up };
  });
  const [today, ...others] = ranges.sort((a, b) => b.net - a.net);
  return today !== undefined && others.some(({ most }) => most >= today.least);
}

function typicalCounts(feature: FitFeature): number[] {
  return FIT_FEATURES[feature].map((_, code) => typicalShare(feature, code) * GUESS_WORTH);
}

/** Right less wrong of every family once the column shows its words. */
function netsOf(families: readonly OpenFamily[], shown: (word: OpenMove) => number): number[] {
  return families.map(({ net, words }) => words.reduce((sum, word) => sum + word.move * shown(word), net));
}
