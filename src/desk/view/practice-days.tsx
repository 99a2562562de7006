import { CONTACT_LEVELS, type WeekSettings } from '../../game/week-settings.ts';
import type { SettingChange } from '../../season/edit-yaml.ts';
import { TypedInput } from './typed-input.tsx';
import type { WeekSettingsPen } from './use-week-settings.ts';

type Day = WeekSettings['practice']['days'][number];
type Period = Day['periods'][number];
/** A period as it stands in the file, where its contact may be left out. */
type WrittenPeriod = Partial<Period>;
interface WrittenDay {
  readonly day?: string;
  readonly periods?: readonly WrittenPeriod[];
}

const PATH = ['practice', 'days'] as const;
const WEEKDAYS: readonly Day['day'][] = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const NEW_PERIOD = { name: 'pressure period', minutes: 10, reps: 12, contact: 'control' } as const;

interface DaysProps {
  readonly days: readonly WrittenDay[];
  readonly change: WeekSettingsPen['change'];
}

/** The practice week: its days, and in each the periods with their minutes, reps and contact. */
export function PracticeDays({ days, change }: DaysProps) {
  const next = WEEKDAYS.find((day) => !days.some((other) => other.day === day)) ?? 'Mon';
  const add = { path: [...PATH, days.length], value: { day: next, periods: [NEW_PERIOD] } };
  return (
    <fieldset class="days">
      <legend>{`Practice days: ${repsIn(days)} reps in all periods`}</legend>
      {days.map((day, at) => (
        <OneDay key={at} day={day} at={at} change={change} />
      ))}
      <button type="button" onClick={() => change([...opened(days), add], true)}>
        Add a day
      </button>
    </fieldset>
  );
}

/** The list is made when there is none. */
function opened(days: readonly unknown[]): SettingChange[] {
  return days.length === 0 ? [{ path: PATH, value: [] }] : [];
}

function repsIn(days: readonly WrittenDay[]): number {
  const reps = days.flatMap(({ periods = [] }) => periods.map((period) => Number(period.reps) || 0));
  return reps.reduce((sum, each) => sum + each, 0);
}

interface DayProps {
  readonly day: WrittenDay;
  readonly at: number;
  readonly change: WeekSettingsPen['change'];
}

function OneDay({ day: { day = '', periods = [] }, at, change }: DayProps) {
  const path = [...PATH, at];
  const add = { path: [...path, 'periods', periods.length], value: NEW_PERIOD };
  return (
    <div class="day">
      <p class="row">
        <label class="short">
          Day
          <select
            value={day}
            onChange={(event) => change([{ path: [...path, 'day'], value: event.currentTarget.value }], true)}
          >
            {WEEKDAYS.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={() => change([add], true)}>
          {`Add a period to ${day}`}
        </button>
        <button type="button" class="quiet" onClick={() => change([{ path, value: undefined }], true)}>
          {`Remove ${day}`}
        </button>
      </p>
      {periods.map((period, i) => (
        <OnePeriod
          key={i}
          period={period}
          path={[...path, 'periods', i]}
          words={`${day} period ${i + 1}`}
          {...{ change }}
        />
      ))}
    </div>
  );
}

interface PeriodProps {
  readonly period: WrittenPeriod;
  readonly path: readonly (string | number)[];
  /** What it is called: `Tue period 2`. */
  readonly words: string;
  readonly change: WeekSettingsPen['change'];
}

function OnePeriod({ period, path, words, change }: PeriodProps) {
  const set = (key: keyof Period, value: unknown, isDone: boolean) => change([{ path: [...path, key], value }], isDone);
  const number = (text: string) => (text.trim() === '' || Number.isNaN(Number(text)) ? text : Number(text));
  return (
    <p class="row period">
      <TypedInput
        attributes={{ 'aria-label': `${words}: what it is for` }}
        text={period.name ?? ''}
        onType={(text) => set('name', text, false)}
        onDone={(text) => set('name', text, true)}
      />
      {(['minutes', 'reps'] as const).map((key) => (
        <span key={key} class="short">
          <TypedInput
            attributes={{ inputMode: 'numeric', 'aria-label': `${words}: ${key}` }}
            text={String(period[key] ?? '')}
            onType={(text) => set(key, number(text), false)}
            onDone={(text) => set(key, number(text), true)}
          />
          {key}
        </span>
      ))}
      <select
        aria-label={`${words}: contact`}
        value={period.contact ?? 'control'}
        onChange={(event) => set('contact', event.currentTarget.value, true)}
      >
        {CONTACT_LEVELS.map((level) => (
          <option key={level} value={level}>
            {level}
          </option>
        ))}
      </select>
      <button
        type="button"
        class="quiet"
        aria-label={`Remove ${words}`}
        onClick={() => change([{ path, value: undefined }], true)}
      >
        Remove
      </button>
    </p>
  );
}
