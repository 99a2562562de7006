import type { ChainFit } from './chain-fit.ts';

/** What one cell is settled from; the same object serves all cells of a fit, one after another. */
export interface CellEvidence {
  node: number;
  parent: number;
  readonly counts: Float64Array;
  readonly prior: Float64Array;
  strength: number;
  worth: number;
  /** Most that the prior may be worth. */
  most: number;
}

/** A cell of which nothing is known yet. */
export function emptyCell(classes: number): CellEvidence {
  const [counts, prior] = [new Float64Array(classes), new Float64Array(classes)];
  return { node: 0, parent: 0, counts, prior, strength: Number.NaN, worth: Number.NaN, most: Number.NaN };
}

/** Copies as many shares as `into` holds. */
export function copyShares(from: Float64Array, start: number, into: Float64Array): void {
  for (let k = 0; k < into.length; k++) into[k] = from[start + k] as number;
}

/** Writes into the fit what a cell is worth: its own snaps and its prior, each by its weight. */
export function settle(fit: ChainFit, cell: CellEvidence): void {
  const { node, counts, prior, strength } = cell;
  let snaps = 0;
  for (let k = 0; k < counts.length; k++) snaps += counts[k] as number;
  const weight = strength === Number.POSITIVE_INFINITY || snaps === 0 ? 0 : snaps / (snaps + strength);
  for (let k = 0; k < fit.classes; k++) {
    const seen = snaps === 0 ? 0 : (counts[k] as number) / snaps;
    fit.shares[node * fit.classes + k] = weight * seen + (1 - weight) * (prior[k] as number);
  }
  fit.ownWeight[node] = weight;
  fit.concentration[node] = (weight === 0 ? 0 : cell.worth) + priorWorth(fit, cell);
}

/** What a prior is worth: no more than its strength, and no more than the knowledge of the cell it comes from. */
function priorWorth(fit: ChainFit, { node, parent, strength, most }: CellEvidence): number {
  const worth = Math.min(strength, most);
  return node === 0 ? worth : 1 / (1 / worth + 1 / (fit.concentration[parent] as number));
}

/** Writes over the ratios in the prior the archive's shares of the cell times those ratios, renormalized. */
export function shiftBase(base: ChainFit, { node, prior }: Pick<CellEvidence, 'node' | 'prior'>): void {
  const start = node * base.classes;
  let total = 0;
  for (let k = 0; k < prior.length; k++) {
    const moved = (base.shares[start + k] as number) * (prior[k] as number);
    prior[k] = moved;
    total += moved;
  }
  for (let k = 0; k < prior.length; k++) prior[k] = (prior[k] as number) / total;
}
