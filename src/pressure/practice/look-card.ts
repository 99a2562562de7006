import { countBy } from '../../game/by-word.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { LOOK_KINDS, type LookKind } from '../../game/look-kinds.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { lookKinds } from './look-card-kind.ts';

/** The columns a scout card shows, in the order it says them. */
export const CARD_COLUMNS = [
  'formation',
  'receivers',
  'personnel',
  'strength',
  'back_spot',
  'quarterback_depth',
  'motion',
  'protectors',
  'slide',
  'back_action',
  'concept',
  'target_zone',
] as const;
/** One word of {@link CARD_COLUMNS}. */
export type CardColumn = (typeof CARD_COLUMNS)[number];

/** What was charted on the snap of a card; a column absent here was not charted. */
export type CardShows = Readonly<Partial<Record<CardColumn, string>>>;

/** A look for the scout team: one real snap of the opponent that is typical of its kind, as charted. */
export interface LookCard {
  readonly number: number;
  readonly kind: LookKind;
  /** Snaps of this kind on film; 0 means the card is common practice, not theirs. */
  readonly filmSnaps: number;
  /** Where the snap stands: file, row, game; null without film. */
  readonly from: string | null;
  /** What was charted on that snap; a column absent here was not charted. */
  readonly shows: CardShows;
}

/**
 * One card for every kind of look asked for, numbered from 1 in the order of the kinds. The snap on a card is the
 * one that shares its charted words with most snaps of its kind; the earlier one when several do.
 *
 * @param chart - the opponent's film
 * @param cuts - the staff's cut-offs
 * @param wanted - kinds of look to draw
 */
export function lookCards(chart: Film, cuts: SituationCuts, wanted: ReadonlySet<LookKind>): readonly LookCard[] {
  const kinds = lookKinds(chart, cuts);
  return LOOK_KINDS.filter(({ id }) => wanted.has(id)).map(({ id }, i) => {
    const rows = kinds.flatMap((kind, row) => (kind === id ? [row] : []));
    return cardOf(chart, { kind: id, number: i + 1, rows });
  });
}

interface CardRequest {
  readonly kind: LookKind;
  readonly number: number;
  readonly rows: readonly number[];
}

function cardOf(chart: Film, { kind, number, rows }: CardRequest): LookCard {
  const typical = typicalRow(chart, rows);
  const shows = typical === undefined ? {} : showsOf(chart, typical);
  const from = typical === undefined ? null : placeOf(chart, typical);
  return { number, kind, filmSnaps: rows.length, from, shows };
}

function typicalRow(chart: Film, rows: readonly number[]): number | undefined {
  const counts = CARD_COLUMNS.map((column) => countBy(rows, (row) => wordAt(chart, column, row)));
  let best: number | undefined;
  let most = -1;
  for (const row of rows) {
    const shared = CARD_COLUMNS.reduce((sum, column, c) => {
      const word = wordAt(chart, column, row);
      return sum + (word === undefined ? 0 : (counts[c]?.get(word) ?? 0));
    }, 0);
    if (shared > most) [best, most] = [row, shared];
  }
  return best;
}

function wordAt(chart: Film, column: CardColumn, row: number): string | undefined {
  return textAt(chart, column, row) ?? numberAt(chart, column, row)?.toString();
}

function showsOf(chart: Film, row: number): CardShows {
  const shows: Partial<Record<CardColumn, string>> = {};
  for (const column of CARD_COLUMNS) {
    const word = wordAt(chart, column, row);
    if (word !== undefined) shows[column] = word;
  }
  return shows;
}

function placeOf(chart: Film, row: number): string {
  const file = (chart.sources[chart.sourceOf[row] as number] ?? '').replace(/^.*[\\/]/, '');
  const game = textAt(chart, 'game', row);
  return [`${file} row ${chart.rowOf[row] as number}`, ...(game === undefined ? [] : [game])].join(', ');
}
