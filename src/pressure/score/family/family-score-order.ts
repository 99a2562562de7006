import { ANSWERS, type Answer, FAMILIES, type Family } from '../../../game/vocabulary.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';

/**
 * The values nearest to the given ones (weighted least squares) that no lower tier exceeds a higher one; within a tier
 * they stay as free as they are. No value of the result falls when a given value rises.
 *
 * @param values - one per item
 * @param weights - above 0, one per item
 * @param tiers - the tier of each item, lowest first
 * @see Kruskal 1964, Psychometrika 29:115, the primary approach to ties, with pooling of adjacent violators
 */
export function inTierOrder(
  values: readonly number[],
  weights: readonly number[],
  tiers: readonly number[],
): Float64Array {
  const order = values.map((_, i) => i);
  order.sort((i, j) => (tiers[i] ?? 0) - (tiers[j] ?? 0) || (values[i] ?? 0) - (values[j] ?? 0) || i - j);
  const blocks: Block[] = [];
  for (const item of order) {
    let block: Block = { items: [item], mean: values[item] ?? 0, weight: weights[item] ?? 0 };
    for (let last = blocks.at(-1); last && last.mean > block.mean; last = blocks.at(-1)) {
      blocks.pop();
      block = pooled(last, block);
    }
    blocks.push(block);
  }
  const result = new Float64Array(values.length);
  for (const { items, mean } of blocks) for (const item of items) result[item] = mean;
  return result;
}

/**
 * Points saved by cell, put into the order the trade is sure of, whatever a handful of own snaps or professional cells
 * say: the add-on is never better against screens and quick game than against anything else, nor worse against the held
 * ball; and against a quarterback run neither zero nor man-free is better, beside the peel with a spy, than against any
 * other answer. With that a larger share of such an answer can never move the family the wrong way.
 *
 * @param saved - points a snap by cell
 * @param worth - snaps' worth of evidence by cell; the thinner cell gives way
 */
export function inTradeOrder(saved: Float64Array, worth: Float64Array): Float64Array {
  const ordered = saved.slice();
  const cells = ANSWERS.map((_, a) => cellIndex(FAMILIES.indexOf('add_on'), a));
  const addOn = inTierOrder(
    cells.map((cell) => saved[cell] ?? 0),
    cells.map((cell) => worth[cell] ?? 0),
    ANSWERS.map((answer) => ADD_ON_TIERS[answer]),
  );
  cells.forEach((cell, a) => {
    ordered[cell] = addOn[a] ?? 0;
  });
  limitAgainstSpy(ordered, 'zero');
  limitAgainstSpy(ordered, 'man_free');
  return ordered;
}

interface Block {
  readonly items: readonly number[];
  readonly mean: number;
  readonly weight: number;
}

const ADD_ON_TIERS: Readonly<Record<Answer, number>> = {
  screen: 0,
  quick: 0,
  run: 1,
  quarterback_run: 1,
  movement: 1,
  dropback: 2,
  deep_shot: 2,
};

function pooled(lower: Block, upper: Block): Block {
  const weight = lower.weight + upper.weight;
  const mean = (lower.mean * lower.weight + upper.mean * upper.weight) / weight;
  return { items: [...lower.items, ...upper.items], mean, weight };
}

function limitAgainstSpy(saved: Float64Array, family: Family): void {
  const own = FAMILIES.indexOf(family);
  const spy = FAMILIES.indexOf('peel_spy');
  const run = ANSWERS.indexOf('quarterback_run');
  const lead = (a: number) => (saved[cellIndex(own, a)] ?? 0) - (saved[cellIndex(spy, a)] ?? 0);
  const least = Math.min(...ANSWERS.map((_, a) => (a === run ? Number.POSITIVE_INFINITY : lead(a))));
  const cell = cellIndex(own, run);
  saved[cell] = Math.min(saved[cell] ?? 0, (saved[cellIndex(spy, run)] ?? 0) + least);
}
