import { useLayoutEffect, useRef } from 'preact/hooks';
import { ordinal } from '../../report/words/number-words.ts';
import { type ChartField, fieldsOf } from '../chart/chart-fields.ts';
import { type ChartState, isOffered } from '../chart/chart-state.ts';
import { lookAgain } from '../chart/look-again.ts';
import { choicesAt, type Stroke } from '../chart/press.ts';
import { snapProblems } from '../chart/snap-problems.ts';

interface StripProps {
  readonly state: ChartState;
  readonly onStroke: (stroke: Stroke) => void;
  /** Goes to the fault before or after the pen. */
  readonly onFault: (step: 1 | -1) => void;
}

/** A space bar held at least this long is a throw timed, in milliseconds: the shortest time a sheet may hold. */
const HELD = 300;

/** The strip: one snap, one stop at a time, every choice one key. The keyboard is heard wherever in it the focus is. */
export function ChartStrip({ state, onStroke, onFault }: StripProps) {
  const place = useRef<HTMLElement>(null);
  const stopwatch = useStopwatch(onStroke);
  useLayoutEffect(() => place.current?.focus({ preventScroll: true }), []);
  const hear = (event: KeyboardEvent) => {
    const key = strokeOf(event);
    if (key === null) return;
    event.preventDefault();
    if (key === ' ') return stopwatch.press(event);
    if (key === '[' || key === ']') return onFault(key === ']' ? 1 : -1);
    onStroke({ key });
  };
  return (
    <section
      ref={place}
      class="strip"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the strip takes every key itself, as an application does
      tabIndex={0}
      role="application"
      aria-label="Charting strip"
      onKeyDown={hear}
      onKeyUp={stopwatch.release}
    >
      <Situation state={state} />
      <Stops state={state} />
      <Now state={state} onStroke={onStroke} />
      <Faults state={state} />
    </section>
  );
}

/** The space bar: a tap is a key, held down from the snap to the throw it is a time. */
function useStopwatch(onStroke: StripProps['onStroke']) {
  const pressed = useRef<number | null>(null);
  return {
    press: (event: KeyboardEvent) => {
      if (!event.repeat) pressed.current = event.timeStamp;
    },
    release: (event: KeyboardEvent) => {
      if (event.key !== ' ' || pressed.current === null) return;
      event.preventDefault();
      const held = event.timeStamp - pressed.current;
      pressed.current = null;
      onStroke(held < HELD ? { key: ' ' } : { seconds: held / 1000 });
    },
  };
}

/** Keys that are the browser's own stay so: Tab, and everything with a modifier but undo. */
function strokeOf(event: KeyboardEvent): string | null {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z') return 'undo';
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  if (event.key.length > 1 && !NAMED_KEYS.has(event.key)) return null;
  return event.key;
}

const NAMED_KEYS: ReadonlySet<string> = new Set([
  ...['Enter', 'Backspace', 'Delete', 'Home', 'End', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'],
]);

function Situation({ state: { draft, snaps, at } }: { readonly state: ChartState }) {
  const where = `${downWords(draft.down)} and ${draft.to_go ?? '?'}`;
  return (
    <p class="situation">
      <strong>{where}</strong> <span>{draft.ball_on ?? 'ball on ?'}</span>{' '}
      <span class="soft">
        {at < snaps.length ? `snap ${at + 1} of ${snaps.length}` : `new snap, ${snaps.length} charted`}
        {draft.drive === undefined ? '' : `, series ${draft.drive}`}
      </span>
    </p>
  );
}

function downWords(down: string | undefined): string {
  return down === undefined ? '?' : ordinal(Number(down));
}

function Stops({ state }: { readonly state: ChartState }) {
  return (
    <ol class="stops">
      {fieldsOf(state.kind).map((field, i) =>
        isOffered(state, field) ? (
          <Stop key={field.column} state={state} field={field} isHere={i === state.stop} />
        ) : null,
      )}
    </ol>
  );
}

interface StopProps {
  readonly state: ChartState;
  readonly field: ChartField;
  readonly isHere: boolean;
}

function Stop({ state, field, isHere }: StopProps) {
  const text = state.draft[field.column];
  const found = choicesAt(state, field).find(({ value }) => value === text);
  return (
    <li aria-current={isHere ? 'step' : undefined} class={text === undefined ? 'blank' : ''}>
      <span class="soft">{field.label.split(/[,:]/)[0]}</span> <b>{found?.label ?? text ?? '·'}</b>
    </li>
  );
}

function Now({ state, onStroke }: Pick<StripProps, 'state' | 'onStroke'>) {
  const field = fieldsOf(state.kind)[state.stop];
  if (field === undefined) return null;
  return (
    <div class="now">
      <p aria-live="polite" class="ask">
        {field.label}
        {state.entry !== '' && <b class="entry">{state.entry.replace(/^=/, '')}</b>}
      </p>
      <div class="choices">
        {choicesAt(state, field).map(({ key, value, label }) => (
          <button
            key={value}
            type="button"
            tabIndex={-1}
            aria-pressed={state.draft[field.column] === value}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => onStroke({ key })}
          >
            <kbd>{key.toUpperCase()}</kbd> {label}
          </button>
        ))}
      </div>
      <p class="soft">{hintOf(field)}</p>
      <LookAgain state={state} />
    </div>
  );
}

/** One key for what the formation had last time, said before it is taken. */
function LookAgain({ state }: { readonly state: ChartState }) {
  const cells = lookAgain(state);
  if (cells === null) return null;
  const words = fieldsOf(state.kind).flatMap(({ column, entry }) => {
    const text = cells[column];
    return text === undefined
      ? []
      : [choicesAt(state, { column, entry }).find(({ value }) => value === text)?.label ?? text];
  });
  return (
    <p>
      <kbd>,</kbd>
      {`as last time in ${state.draft.formation}: ${words.join(', ')}`}
    </p>
  );
}

const HINTS = {
  choice: 'Space leaves it blank, which means not charted.',
  number: 'Type the number, then Space.',
  ball: 'Yard line, then Space on the offense’s own side of the 50, O on ours.',
  name: 'Press the key of a name you used before, or = and a new name, then Enter.',
  time: 'Hold the space bar down from the snap to the throw. Or type seconds, then Enter.',
} as const;

const COLUMN_HINTS: Partial<Record<ChartField['column'], string>> = {
  down: 'After a flag: + or − and the yards, then Space, or F for a first down. − is against the offense.',
  gain: 'Yards, then Space; minus for a loss. F instead of Space: fumble lost. P: flag, no play.',
  target_depth: 'Yards, then Space; minus behind the line.',
};

function hintOf({ column, entry }: ChartField): string {
  return COLUMN_HINTS[column] ?? HINTS[entry.kind];
}

function Faults({ state }: { readonly state: ChartState }) {
  const { snaps, at, kind } = state;
  const here = snaps[at];
  const before = snaps[at - 1];
  const lines =
    here === undefined ? before && problemsOf(before, kind, 'The snap before: ') : problemsOf(here, kind, '');
  return (
    <div role="status">
      <ul class="faults">
        {(lines ?? []).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

function problemsOf(snap: ChartState['draft'], kind: ChartState['kind'], start: string): string[] {
  return snapProblems(snap, kind).map(({ column, words }) => `${start}${column.replaceAll('_', ' ')} ${words}`);
}
