import type * as z from 'zod';
import { callLibrarySchema } from '../game/call-library.ts';
import { OWN_FILM_COLUMNS } from '../game/columns.ts';
import { UNNAMED_OPPONENT, type WeekSettings, weekSettingsSchema } from '../game/week-settings.ts';
import { type DictionaryRow, dictionaryRows } from './dictionary.ts';
import { EXAMPLE_DEFENSE } from './example-defense.ts';
import { profileSchema } from './profile.ts';
import { OWN_CALL_COLUMNS, REQUIRED_COLUMNS, type SheetKind } from './sheet-kind.ts';
import { STARTER_DEFENSE } from './starter-defense.ts';
import { TRANSFORM_MEANINGS } from './translate-cell.ts';
import { toCsv } from './write-csv.ts';
import { yamlTemplate } from './yaml-template.ts';

/** The columns a live sheet begins with: what one person can chart between two snaps; judgment. */
const LIVE_COLUMNS = [
  ...['quarter', 'clock', 'score_margin', 'down', 'to_go', 'ball_on', 'hash', 'formation', 'back_spot'],
  ...['play_kind', 'protectors', 'back_action', 'call', 'gain', 'result'],
];

/**
 * A sheet to fill in: remarks that explain every column, then the header. Remarks begin with # and are skipped when
 * the sheet is read, so they may stay.
 */
export function sheetTemplate(kind: SheetKind): string {
  const columns = templateColumns(kind);
  const remarks = [
    '# One row a snap. A blank cell means "not charted"; it never means no or 0. Lines that begin with # may stay.',
    `# Every snap needs ${REQUIRED_COLUMNS[kind].join(', ')}${kind === 'own' ? `, and one of ${OWN_CALL_COLUMNS.join(', ')}` : ''}; other columns may be left out.`,
    ...columns.map(({ header, meaning, values, example }) => `# ${header}: ${meaning}; ${values}; as in ${example}`),
  ];
  return toCsv([...remarks.map((remark) => [remark]), columns.map(({ header }) => header)]);
}

/** What is known of a week when its settings are first written. */
export interface WeekStart {
  /** A placeholder stands for it until it is named. */
  readonly opponent?: string;
  /** Last week's settings: what the staff set then stays, but for opponent, day, and calls that were musts or banned. */
  readonly before?: WeekSettings;
}

/** A week.yaml with every default written out and explained. */
export function weekTemplate({ opponent = UNNAMED_OPPONENT, before }: WeekStart = {}): string {
  const { date: _, ...kept } = before ?? weekSettingsSchema.parse({ opponent });
  const example = { ...kept, opponent, menu: { ...kept.menu, must: [], ban: [] } };
  return yamlTemplate(weekSettingsSchema, example, [
    'This week: the opponent, and everything the staff may set. All but the opponent may be left out.',
  ]);
}

/** The defense.yaml of a new season: short, sound, to be renamed. */
export function defenseStarter(): string {
  return STARTER_DEFENSE;
}

/** A defense.yaml in full: eleven roles and two invented calls, every key explained where it first stands. */
export function defenseTemplate(): string {
  return yamlTemplate(callLibrarySchema, EXAMPLE_DEFENSE, [
    'Our roles and our calls in full, every key explained. What stands here is invented; calls are read from the',
    'defense.yaml of the season folder, where a call may also be a path, a coverage and what differs.',
    'near is the side a call is sent from, far the other one. No player names are needed.',
    'Guidance only: contact limits and rules belong to your state association and licensed athletic trainers.',
  ]);
}

/** A profile.yaml that shows every way a foreign sheet can be read. */
export function profileTemplate(): string {
  const transforms = Object.entries(TRANSFORM_MEANINGS).map(([name, meaning]) => `  ${name}: ${meaning}`);
  return yamlTemplate(profileSchema, EXAMPLE_PROFILE, [
    'How a sheet with headers of its own is read. On the left our column, on the right where it comes from:',
    'a header of the sheet, a fixed value, or rules. Headers that are not named here are listed and not read.',
    'Write codes as they stand in the sheet; a code that is not listed under words is taken as our word.',
    'What may stand after as:',
    ...transforms,
  ]);
}

function templateColumns(kind: SheetKind): readonly DictionaryRow[] {
  const rows = dictionaryRows().filter(({ sheets }) => sheets.includes(kind));
  if (kind === 'opponent') return rows;
  const chosen: readonly string[] = kind === 'own' ? OWN_FILM_COLUMNS : LIVE_COLUMNS;
  return rows.filter(({ header }) => chosen.includes(header));
}

/** Invented headers and codes, one column for each way of reading. */
const EXAMPLE_PROFILE: z.input<typeof profileSchema> = {
  not_charted: ['?'],
  keep_when: [{ header: 'side', is: ['their ball'] }],
  drop_when: [{ header: 'kicking', is: ['yes'] }],
  columns: {
    offense: { value: 'Name of the opponent' },
    game: { header: 'which game' },
    down: { header: 'dn' },
    to_go: { header: 'yards needed' },
    ball_on: { header: 'spot', as: 'minus_is_own' },
    score_margin: { header: 'we lead by', as: 'minus' },
    hash: { header: 'third of field', words: { '1': 'left', '2': 'middle', '3': 'right', '0': 'not charted' } },
    checked: { header: 'changed', as: 'zero_one' },
    concept: { header: 'play name', not_charted: ['none seen'] },
    play_kind: {
      rules: [
        { when: [{ header: 'play type', is: ['R'] }], use: 'run' },
        { when: [{ header: 'play name', is: ['slip', 'tunnel'] }], use: 'screen' },
        { when: [{ header: 'thrown after', at_most: '2.0' }], use: 'quick' },
        { when: [{ header: 'play type', is: ['P'] }], use: 'pass' },
      ],
    },
  },
};
