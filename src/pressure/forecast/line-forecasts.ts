import { SITUATIONS } from '../../game/situations.ts';
import { LOOKS, RECEIVER_LOOKS } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { ChainStrengths } from './chain-data.ts';
import { chainTree, nodeAt } from './chain-tree.ts';
import { forecastCell } from './forecast-cell.ts';
import { type FittedTarget, type ForecastFilm, fitTargetOn } from './forecast-film.ts';
import type { LineForecast, Target } from './forecast-result.ts';
import { TARGET_DEFINITIONS } from './target.ts';
import { TARGET_STRENGTHS } from './target-strengths.ts';

/** Targets a defense can still act on once it sees the look. */
export const LINE_TARGETS: readonly Target[] = ['run_or_pass', 'screen', 'quick_release'];

/** A down and distance with one look has a line of its own from so many of their snaps on; judgment. */
const LEAST_INNER_SNAPS = 10;

/**
 * What follows when they line up in a certain way: by the look, by how the receivers stand, and within each by down and
 * distance where their film allows. Only what they have shown is spoken of.
 *
 * @param film - the film the forecast is made from
 * @param snaps - their snaps expected on Friday
 */
export function lineForecasts(film: ForecastFilm, snaps: number): readonly LineForecast[] {
  return SPLITS.flatMap((split) => splitForecasts(film, split, snaps));
}

interface LineSplit {
  readonly kind: LineForecast['kind'];
  readonly looks: readonly { readonly id: string }[];
  readonly codesOf: (film: ForecastFilm) => Uint8Array;
  readonly strengthsOf: (line: ChainStrengths) => ChainStrengths;
}

const SPLITS: readonly LineSplit[] = [
  {
    kind: 'look',
    looks: LOOKS,
    codesOf: ({ cells }) => cells.look,
    strengthsOf: (line) => line,
  },
  {
    // Five receivers out is the empty look, which has its own line already.
    kind: 'receivers',
    looks: RECEIVER_LOOKS.map((look) => (look.id === 'empty' ? { ...look, id: '' } : look)),
    codesOf: ({ cells }) => cells.receivers,
    strengthsOf: receiverStrengths,
  },
];

/** Level of the receivers among the line's; its strength is judgment. */
const RECEIVER_LEVEL = 3;

/** The receivers' own strength in place of the look's. */
function receiverStrengths(line: ChainStrengths): ChainStrengths {
  const [, ...own] = line.own;
  return { ...line, own: [line.own[RECEIVER_LEVEL] ?? Number.POSITIVE_INFINITY, ...own] };
}

function splitForecasts(film: ForecastFilm, split: LineSplit, snaps: number): LineForecast[] {
  const codes = split.codesOf(film);
  const tree = chainTree([codes, film.cells.situation, film.cells.moment], film.cells.size);
  const fitted = TARGET_DEFINITIONS.filter(({ target }) => LINE_TARGETS.includes(target)).map((definition) =>
    fitTargetOn(film, definition, { tree, strengths: split.strengthsOf(TARGET_STRENGTHS[definition.target].line) }),
  );
  const counts = cellCounts(film, codes);
  return split.looks.flatMap((look, code) =>
    look.id === '' ? [] : lookForecasts({ split, look: look.id, code, fitted, counts, snaps }),
  );
}

interface CellCounts {
  /** Own snaps with the split and the situation charted. */
  readonly charted: number;
  /** Own snaps of a look, by situation or of all (255). */
  readonly of: (look: number, situation: number) => number;
}

function cellCounts({ ownSize, cells }: ForecastFilm, codes: Uint8Array): CellCounts {
  const found = new Map<number, number>();
  const add = (key: number) => found.set(key, (found.get(key) ?? 0) + 1);
  let charted = 0;
  for (let row = 0; row < ownSize; row++) {
    const [look, situation] = [codes[row] as number, cells.situation[row] as number];
    if (look === NOT_KNOWN) continue;
    charted++;
    add(look * 256 + NOT_KNOWN);
    if (situation !== NOT_KNOWN) add(look * 256 + situation);
  }
  return { charted, of: (look, situation) => found.get(look * 256 + situation) ?? 0 };
}

interface LookTask {
  readonly split: LineSplit;
  readonly look: string;
  readonly code: number;
  readonly fitted: readonly FittedTarget[];
  readonly counts: CellCounts;
  readonly snaps: number;
}

function lookForecasts({ split, look, code, fitted, counts, snaps }: LookTask): LineForecast[] {
  if (counts.of(code, NOT_KNOWN) === 0) return [];
  const inner = SITUATIONS.map((situation, place) => ({ ...situation, place })).filter(
    ({ place }) => counts.of(code, place) >= LEAST_INNER_SNAPS,
  );
  const cells = [
    { situation: 'all', path: [code], own: counts.of(code, NOT_KNOWN) },
    ...inner.map(({ id, place }) => ({ situation: id, path: [code, place], own: counts.of(code, place) })),
  ];
  return cells.map(({ situation, path, own }) => {
    const next = (snaps * own) / counts.charted;
    const forecasts = fitted.map((target) => {
      const node = nodeAt(target.tree, path);
      const nextSnaps = target.definition.per === 'pass' ? next * passShare(fitted, node) : next;
      return forecastCell(target, { situation, node, nextSnaps });
    });
    return { kind: split.kind, look, situation, snaps: own, forecasts };
  });
}

function passShare(fitted: readonly FittedTarget[], node: number): number {
  const runOrPass = fitted.find(({ definition }) => definition.target === 'run_or_pass');
  return runOrPass?.fit.shares[node * 2 + 1] ?? 0;
}
