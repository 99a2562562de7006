import { type Film, numberAt, textAt } from '../game/film.ts';
import { freeWordKey } from '../game/free-word.ts';
import { chartedTwice } from './charted-twice.ts';
import type { RowProblem } from './row-problem.ts';
import { createSnapIdentity, NOT_SAID } from './snap-identity.ts';

/**
 * Faults for every snap that an earlier chart lists already: same game and offense with the same snap number, or with
 * the same quarter, clock, down, distance and ball position where snaps are not numbered. One chart per file. A sheet is
 * read again with these rows left out (see SheetOptions), which keeps them with their reason. So are the snaps without
 * a number of a game that is charted with numbers too.
 */
export function checkAcross(charts: readonly Film[]): readonly RowProblem[] {
  const groups = new Map<string, SnapPlaces>();
  const repeated = charts.flatMap((chart, number) => {
    const repeats = enterChart(chart, number, groups);
    return repeats.map(({ index, earlier }) => repeatProblem(chart, index, placeText(charts, earlier)));
  });
  return [...repeated, ...chartedTwice(charts)];
}

/** Where each snap of one game and offense was first listed, by its identity. */
type SnapPlaces = Map<number, Place>;

/** A snap by the number of its chart and its index in it, as one number: chart * 2 ** 32 + index. */
type Place = number;

const CHART = 2 ** 32;

/** The snaps of a chart that an earlier one lists; the others are entered for the charts that follow. */
function enterChart(
  chart: Film,
  number: number,
  groups: Map<string, SnapPlaces>,
): { readonly index: number; readonly earlier: Place }[] {
  const identityOf = createSnapIdentity(chart.columns);
  const placesOf = groupReader(chart, groups);
  const repeats: { index: number; earlier: Place }[] = [];
  for (let index = 0; index < chart.size; index++) {
    const places = placesOf(index);
    const identity = places ? identityOf(index) : NOT_SAID;
    if (!places || identity === NOT_SAID) continue;
    const earlier = places.get(identity);
    if (earlier === undefined) places.set(identity, number * CHART + index);
    else if (earlier < number * CHART) repeats.push({ index, earlier });
  }
  return repeats;
}

/** The places of a snap's game and offense, looked up once for each pair; none where no game was charted. */
function groupReader(chart: Film, groups: Map<string, SnapPlaces>): (index: number) => SnapPlaces | undefined {
  const { game, offense } = chart.columns;
  const known = new Map<number, SnapPlaces>();
  return (i) => {
    const gameCode = game?.kind === 'code' ? (game.codes[i] as number) : 0;
    if (gameCode === 0) return undefined;
    const pair = gameCode * 0x10000 + (offense?.kind === 'code' ? (offense.codes[i] as number) : 0);
    const places = known.get(pair) ?? placesNamed(groups, [textAt(chart, 'game', i), textAt(chart, 'offense', i)]);
    known.set(pair, places);
    return places;
  };
}

function placesNamed(groups: Map<string, SnapPlaces>, names: readonly (string | undefined)[]): SnapPlaces {
  const key = JSON.stringify(names.map((name) => freeWordKey(name ?? '')));
  const places = groups.get(key) ?? new Map<number, Place>();
  groups.set(key, places);
  return places;
}

function repeatProblem(chart: Film, index: number, earlier: string): RowProblem {
  const snap = numberAt(chart, 'snap', index);
  const found = `${textAt(chart, 'game', index)}${snap === undefined ? '' : `, snap ${snap}`}`;
  const file = chart.sources[chart.sourceOf[index] as number] ?? '';
  const row = chart.rowOf[index] as number;
  return { file, row, severity: 'fault', found, rule: `is listed already in ${earlier}` };
}

function placeText(charts: readonly Film[], place: Place): string {
  const chart = charts[Math.floor(place / CHART)];
  const index = place % CHART;
  return `${chart?.sources[chart.sourceOf[index] as number] ?? ''}, row ${chart?.rowOf[index] ?? 0}`;
}
