import * as z from 'zod';
import { definitionOf } from '../game/column-definition.ts';
import { type ColumnDefinition, type ColumnName, FILM_COLUMNS } from '../game/columns.ts';
import { conditionsSchema } from './condition-schema.ts';
import { isJoinable, JOINABLE } from './join-cells.ts';
import { NOT_CHARTED } from './not-charted.ts';
import { plainWord, readCell } from './read-cell.ts';
import { PAIR_DATES } from './read-pair.ts';
import { sideBySideSchema } from './side-by-side-schema.ts';
import { TRANSFORMS, type Transform } from './translate-cell.ts';

export { definitionOf, NOT_CHARTED };

const rule = z.strictObject({
  when: conditionsSchema.default([]).describe('all must hold; without it the rule always does'),
  use: z.string().describe('our word'),
});

const restarts = z.strictObject({
  header: z.string().min(1).describe('the header of the number that starts again, such as the snap number'),
  names: z
    .array(z.string().min(1))
    .default([])
    .describe('the games in the order of the sheet; game 1, game 2 ... after them'),
});

const source = z.preprocess(
  (value) => (typeof value === 'string' ? { header: value } : value),
  z.strictObject({
    header: z.string().min(1).optional().describe('the header of the sheet that feeds this column'),
    with: z
      .string()
      .min(1)
      .optional()
      .describe('a second header of it: the side beside a yard line, seconds beside minutes, the score to take away'),
    value: z.string().min(1).optional().describe('the same value on every row'),
    rules: z.array(rule).min(1).optional().describe('the first rule that holds gives the word; none: not charted'),
    restarts: restarts.optional().describe('for game: a new game begins where a number starts again'),
    as: z.enum(TRANSFORMS).optional().describe('how the cell is turned into ours'),
    dates: z
      .enum(PAIR_DATES)
      .optional()
      .describe('for pairs that became dates: plain is month, then day; turned the other way round'),
    sides: z
      .record(z.string(), z.enum(['own', 'opp']))
      .optional()
      .describe('for ball_on written as PLW 35: which word of the sheet means which side of the field'),
    words: z.record(z.string(), z.string()).default({}).describe('his code: our word, or "not charted"'),
    not_charted: z.array(z.string()).default([]).describe('codes that say nothing'),
    others: z.literal(NOT_CHARTED).optional().describe('codes that are not listed say nothing'),
  }),
);

const columnNames = FILM_COLUMNS.map(({ name }) => name) as [ColumnName, ...ColumnName[]];

/** How a foreign sheet is read: his headers to our columns, his codes to our words. The coach owns the file.
 * Values stay as they are written: `readYaml` turns none into a number. */
export const profileSchema = z
  .strictObject({
    not_charted: z.array(z.string()).default([]).describe('cells that say nothing, in any column'),
    headers: z
      .literal('none')
      .optional()
      .describe('the sheet has no header row; its columns are column A, column B ...'),
    side_by_side: sideBySideSchema.optional().describe('the sheet has several snaps beside one another in a row'),
    keep_when: conditionsSchema.default([]).describe('only rows where all of these hold are read'),
    drop_when: conditionsSchema.default([]).describe('rows where any of these holds are left out'),
    columns: z.partialRecord(z.enum(columnNames), source).describe('our column: where it comes from'),
  })
  .superRefine(({ columns }, context) => {
    for (const [name, entry] of Object.entries(columns)) {
      for (const fault of faultsOf(name as ColumnName, entry)) {
        context.addIssue({ code: 'custom', path: ['columns', name, ...fault.path], message: fault.rule });
      }
    }
  })
  .meta({ scalars: 'text' });

/** A profile as read from its file. */
export type Profile = z.output<typeof profileSchema>;

/** Where one of our columns comes from, as read from a profile. */
export type ColumnSource = z.output<typeof source>;

interface SourceFault {
  readonly path: readonly (string | number)[];
  readonly rule: string;
}

function faultsOf(name: ColumnName, entry: ColumnSource): SourceFault[] {
  const definition = definitionOf(name);
  const given = [entry.header, entry.value, entry.rules, entry.restarts].filter((part) => part !== undefined).length;
  const faults: SourceFault[] = [];
  if (given !== 1) faults.push({ path: [], rule: 'needs exactly one of header, value, rules or restarts' });
  if (entry.restarts !== undefined && name !== 'game') faults.push({ path: ['restarts'], rule: 'goes with game only' });
  if (entry.as !== undefined && !fits(definition, entry.as)) {
    faults.push({ path: ['as'], rule: `does not fit ${name}` });
  }
  if (entry.sides !== undefined && definition.cell.form !== 'field') {
    faults.push({ path: ['sides'], rule: `does not fit ${name}` });
  }
  if (entry.with !== undefined && (entry.header === undefined || !isJoinable(name))) {
    faults.push({ path: ['with'], rule: `goes with the header of ${JOINABLE.join(', ')}` });
  }
  return [...faults, ...outputsOf(entry).flatMap((output) => outputFault(definition, output))];
}

function fits({ cell }: ColumnDefinition, as: Transform): boolean {
  switch (as) {
    case 'yards_to_goal':
    case 'yards_from_own_goal':
    case 'minus_is_own':
    case 'bare_is_opp':
    case 'bare_is_own':
      return cell.form === 'field';
    case 'figure':
      return cell.form === 'number' || (cell.form === 'code' && cell.shape === 'personnel');
    case 'zero_one':
      return cell.form === 'word' && cell.words.includes('yes');
    case 'plus':
    case 'minus':
      return cell.form === 'number';
    case 'first_of_pair':
    case 'second_of_pair':
      return cell.form === 'number';
    case 'seconds':
      return cell.form === 'clock' || (cell.form === 'number' && cell.unit === 'seconds');
    default:
      return as satisfies never;
  }
}

interface Output {
  readonly path: readonly (string | number)[];
  readonly text: string;
}

function outputsOf({ value, words, rules }: ColumnSource): Output[] {
  return [
    ...(value === undefined ? [] : [{ path: ['value'], text: value }]),
    ...Object.entries(words).map(([code, text]) => ({ path: ['words', code], text })),
    ...(rules ?? []).map(({ use }, i) => ({ path: ['rules', i, 'use'], text: use })),
  ];
}

function outputFault(definition: ColumnDefinition, { path, text }: Output): SourceFault[] {
  if (plainWord(text) === plainWord(NOT_CHARTED)) return [];
  const reading = readCell(definition, text);
  if (reading.kind !== 'fault') return [];
  const hint = reading.suggestion === undefined ? '' : `. ${reading.suggestion.replace(/\.$/, '')}`;
  return [{ path, rule: `${reading.rule}${hint}` }];
}
