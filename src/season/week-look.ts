import { parseDocument } from 'yaml';
import { describeProblem, type RowProblem } from '../ingest/row-problem.ts';
import { readWeekSettings } from '../ingest/settings-text.ts';
import { type SettingChange, withSettings } from './edit-yaml.ts';
import { type SettingField, settingFields } from './setting-fields.ts';

/** A week.yaml to look into, with changes to be made in it first. */
export interface WeekRequest {
  readonly text: string;
  readonly changes: readonly SettingChange[];
}

/** What is wrong with one setting. */
export interface SettingProblem {
  /** Keys with dots between them, places in lists left out: `practice.days.periods.minutes`. */
  readonly path: string;
  /** What stands there and the rule it breaks. */
  readonly words: string;
  /** The same with its line in the file. */
  readonly line: string;
}

/** What week.yaml says, with the changes made. */
export interface WeekLook {
  readonly text: string;
  /** The values as they are written, defaults left out. */
  readonly values: unknown;
  readonly problems: readonly SettingProblem[];
  /** It can be changed value by value; otherwise its form has to be mended in the text first. */
  readonly isWellFormed: boolean;
  readonly fields: readonly SettingField[];
}

/** Makes the changes and reads the settings as the plan will. */
export function lookIntoWeek({ text: before, changes }: WeekRequest): WeekLook {
  const isWellFormed = parseDocument(before).errors.length === 0;
  const text = isWellFormed ? withSettings(before, changes) : before;
  const read = readWeekSettings(text);
  return {
    text,
    values: isWellFormed ? (parseDocument(text).toJS({ maxAliasCount: 0 }) ?? {}) : {},
    problems: read.kind === 'value' ? [] : read.problems.map(settingProblem),
    isWellFormed,
    fields: settingFields(),
  };
}

function settingProblem(problem: RowProblem): SettingProblem {
  const { header = '', found, rule, suggestion } = problem;
  const path = header.replace(/\[\d+\]( \([^)]*\))?/g, '');
  const words = [found === '' ? '' : `"${found}"`, `${rule}.`, suggestion].filter(Boolean).join(' ');
  return { path, words, line: describeProblem(problem) };
}
