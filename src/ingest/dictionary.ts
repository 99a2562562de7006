import { type CellForm, type ColumnName, FILM_COLUMNS } from '../game/columns.ts';
import { columnsOfKind, OWN_CALL_COLUMNS, REQUIRED_COLUMNS, type SheetKind } from './sheet-kind.ts';

/**
 * One column of the data dictionary. `values` is what a cell may hold, in words; `words` the closed list where there
 * is one. `required` names the sheets that cannot do without it, `sheets` those that may carry it.
 */
export interface DictionaryRow {
  readonly header: string;
  readonly meaning: string;
  readonly form: CellForm['form'];
  readonly values: string;
  readonly words: readonly string[];
  readonly unit: string;
  readonly example: string;
  readonly required: readonly SheetKind[];
  readonly sheets: readonly SheetKind[];
}

/** The kinds of sheet, in the order in which they are named. */
const KINDS: readonly SheetKind[] = ['opponent', 'own', 'live'];

/** What the sheets are called for a coach. */
const KIND_NAMES: Readonly<Record<SheetKind, string>> = {
  opponent: 'opponent sheets',
  own: 'our own film',
  live: 'live sheets',
};

/** Every column a sheet may carry, in the order of the templates. */
export function dictionaryRows(): readonly DictionaryRow[] {
  return FILM_COLUMNS.map(({ name, meaning, example, cell }) => ({
    header: name,
    meaning,
    form: cell.form,
    values: valuesOf(cell),
    words: cell.form === 'word' ? cell.words : [],
    unit: unitOf(cell),
    example,
    required: KINDS.filter((kind) => REQUIRED_COLUMNS[kind].includes(name)),
    sheets: KINDS.filter((kind) => columnsOfKind(kind).includes(name)),
  }));
}

/** The dictionary as plain text, a few lines a column. */
export function dictionaryText(): string {
  const entries = dictionaryRows().map((row) => {
    const lines = [row.header, `  ${row.meaning}`, `  ${row.values}; for example ${row.example}`, `  ${placeOf(row)}`];
    return lines.join('\n');
  });
  return `${[INTRODUCTION, ...entries].join('\n\n')}\n`;
}

/** What holds for every column. */
const INTRODUCTION =
  'A blank cell means "not charted"; it never means no or 0. Upper and lower case do not matter, and words may be ' +
  'written with spaces or hyphens. Columns may stand in any order, and columns that are not charted may be left out.';

/** What a cell of this form may hold, in plain words. */
function valuesOf(cell: CellForm): string {
  switch (cell.form) {
    case 'word':
      return `one of ${cell.words.join(', ')}`;
    case 'text':
      return 'any text';
    case 'code':
      return cell.shape === 'personnel'
        ? 'two digits, backs then tight ends, kept as text (01 stays 01); a * marks a sixth lineman'
        : 'two digits with an x between them';
    case 'number':
      return numberValues(cell);
    case 'clock':
      return 'minutes and seconds left in the quarter, from 0:00 to 15:00';
    case 'field':
      return 'a yard line with its side: own 35 (also -35 or o35), opp 20 (also +20), or 50';
    default:
      return cell satisfies never;
  }
}

function numberValues({ decimals, unit, least, most }: Extract<CellForm, { form: 'number' }>): string {
  const what = decimals === 0 ? 'a whole number' : 'a number';
  return ['yards', 'points', 'players', 'seconds'].includes(unit)
    ? `${what} of ${unit} from ${least} to ${most}`
    : `${what} from ${least} to ${most}`;
}

function unitOf(cell: CellForm): string {
  if (cell.form === 'number') return cell.unit;
  if (cell.form === 'clock') return 'seconds left in the quarter';
  return cell.form === 'field' ? "yards to the opponent's goal line" : '';
}

function placeOf({ header, required, sheets }: DictionaryRow): string {
  const names = sheets.map((kind) => KIND_NAMES[kind]).join(', ');
  const needs = required.map((kind) => KIND_NAMES[kind]).join(', ');
  if (needs !== '') return `${names}; required in ${needs}`;
  return OWN_CALL_COLUMNS.includes(header as ColumnName)
    ? `${names}; one of ${OWN_CALL_COLUMNS.join(', ')} is required`
    : names;
}
