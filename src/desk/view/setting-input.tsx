import type { SettingField } from '../../season/setting-fields.ts';
import { TypedInput } from './typed-input.tsx';

interface InputProps {
  readonly field: SettingField;
  /** What stands in the file; undefined where nothing does. */
  readonly value: unknown;
  /** What is wrong with it; empty when nothing is. */
  readonly fault: string;
  /** Something to look at. */
  readonly note: string;
  readonly onType: (value: unknown) => void;
  /** The coach is done with it. */
  readonly onDone: (value: unknown) => void;
}

/** One setting: what it means, what stands there, what counts when it is blank, and what is wrong with it as it is typed. */
export function SettingInput({ field, value, fault, note, onType, onDone }: InputProps) {
  const id = field.path.join('-');
  const done = (text: string) => onDone(written(field, text));
  const shared = { id, 'aria-invalid': fault !== '', 'aria-describedby': `${id}-fault` };
  return (
    <div class="setting">
      <label for={id}>{labelOf(field)}</label>
      {isPicked(field) ? (
        <select {...shared} value={textOfValue(value)} onChange={(event) => done(event.currentTarget.value)}>
          <option value="">{`usual: ${plain(field.usual, field)}`}</option>
          {wordsOf(field).map((word) => (
            <option key={word} value={word}>
              {plain(word, field)}
            </option>
          ))}
        </select>
      ) : (
        <TypedInput
          attributes={{
            ...shared,
            inputMode: field.form === 'number' ? 'decimal' : 'text',
            placeholder: field.form === 'date' ? 'YYYY-MM-DD' : field.usual,
          }}
          text={textOfValue(value)}
          onType={(text) => onType(written(field, text))}
          onDone={done}
        />
      )}
      <span id={`${id}-fault`} class="fault">
        {fault || note}
      </span>
    </div>
  );
}

function isPicked({ form }: SettingField): boolean {
  return form === 'choice' || form === 'yes_no';
}

function wordsOf({ form, words }: SettingField): readonly string[] {
  return form === 'yes_no' ? ['true', 'false'] : words;
}

function plain(word: string, { form }: SettingField): string {
  if (form === 'yes_no') return word === 'true' ? 'yes' : 'no';
  return word.replaceAll('_', ' ');
}

/** The keys, as in the file, and what they mean. */
function labelOf({ path, meaning }: SettingField): string {
  const keys = (path.length === 1 ? path : path.slice(1)).join(', ').replaceAll('_', ' ');
  return `${keys[0]?.toUpperCase()}${keys.slice(1)}${meaning === '' ? '' : `: ${meaning}`}`;
}

function textOfValue(value: unknown): string {
  return value === undefined || value === null ? '' : String(value);
}

/** What was typed, as the file should hold it; a blank takes the key away, and what is not a number stays as it was typed. */
function written({ form }: SettingField, text: string): unknown {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  if (form === 'yes_no') return trimmed === 'true';
  return form === 'number' && !Number.isNaN(Number(trimmed)) ? Number(trimmed) : text;
}
