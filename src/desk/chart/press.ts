import type { SnapCells } from '../../season/chart-sheet.ts';
import { type ChartField, fieldsOf } from './chart-fields.ts';
import { type ChartState, goTo, isOffered, nextStop } from './chart-state.ts';
import { flagged, isFlag, walkedOff } from './flag.ts';
import { newSeries, situationOf } from './follow-on.ts';
import { type Choice, namedChoices } from './keyed-choices.ts';
import { withLookAgain } from './look-again.ts';
import { asBefore, namesAt } from './names.ts';
import { isIncomplete, isPass, isRun } from './play-facts.ts';
import { withCell } from './snap-cells.ts';

/** States kept to go back to. */
const MOST_PAST = 300;

/** A key as the strip takes it: what the keyboard calls it, or a time off the stopwatch. */
export type Stroke = { readonly key: string } | { readonly seconds: number };

/** The chart after one stroke; the same chart when the stroke means nothing there. */
export function press(state: ChartState, stroke: Stroke): ChartState {
  if ('key' in stroke && stroke.key === 'undo') return undone(state);
  const next = 'seconds' in stroke ? timed(state, stroke.seconds) : keyed(state, stroke.key);
  if (next === state) return state;
  const { past, ...before } = state;
  return { ...next, past: [...past.slice(1 - MOST_PAST), before] };
}

function undone(state: ChartState): ChartState {
  const before = state.past.at(-1);
  return before === undefined ? state : { ...before, past: state.past.slice(0, -1) };
}

type Command = (state: ChartState) => ChartState;

const COMMANDS: Readonly<Record<string, Command>> = {
  ' ': confirm,
  Enter: confirm,
  Backspace: back,
  ArrowRight: (state) => move(state, 1),
  ArrowLeft: (state) => move(state, -1),
  ArrowUp: (state) => turn(state, -1),
  ArrowDown: (state) => turn(state, 1),
  Home: (state) => goTo(kept(state), 0),
  End: (state) => goTo(kept(state), kept(state).snaps.length),
  Delete: remove,
  '/': series,
  '!': flag,
};

function keyed(state: ChartState, key: string): ChartState {
  const field = fieldsOf(state.kind)[state.stop];
  if (field === undefined) return state;
  const typed = typing(state, field, key);
  if (typed !== null) return typed;
  if (key === '.') return likeBefore(state, field);
  if (key === ',') return withLookAgain(state);
  return COMMANDS[key]?.(state) ?? chosen(state, field, key);
}

/** Characters of a number, ball position, time or new name; null when the key is none of them. */
function typing(state: ChartState, field: ChartField, key: string): ChartState | null {
  if (field.entry.kind === 'name') return naming(state, field, key);
  if (field.entry.kind === 'ball' && key === 'o' && state.entry !== '') return settled(state, `opp ${state.entry}`);
  if (field.column === 'down') return typingFlag(state, key);
  return isCharacter(field.entry, state.entry, key) ? { ...state, entry: state.entry + key } : null;
}

/** At the down + or - begins the yards of a flag; F takes them with a first down. */
function typingFlag(state: ChartState, key: string): ChartState | null {
  const entry = state.entry + key;
  if (isFlag(entry)) return { ...state, entry };
  return state.entry !== '' && key.toLowerCase() === 'f' ? walkOff(state, true) : null;
}

/** A new name begins with = or, where none is known yet, with its first letter. */
function naming(state: ChartState, { column }: ChartField, key: string): ChartState | null {
  const { entry } = state;
  if (key.length !== 1) return null;
  if (entry !== '') return { ...state, entry: entry + key };
  if (key === '=') return { ...state, entry: key };
  return /\w/.test(key) && namesAt(state, column).length === 0 ? { ...state, entry: `=${key}` } : null;
}

/** The yard line that is nobody's own. */
const MIDFIELD = 50;

function isCharacter(entry: ChartField['entry'], before: string, key: string): boolean {
  if (entry.kind === 'choice' || entry.kind === 'name') return false;
  if (entry.kind === 'number' && entry.signed && key === '-') return before === '';
  if (entry.kind === 'time' && key === '.') return true;
  if (!/^\d$/.test(key)) return false;
  return entry.kind === 'ball' ? Number(before + key) <= MIDFIELD : before.length < 4;
}

/** One of the choices; beside a number it says how the play ended, and takes the number. */
function chosen(state: ChartState, field: ChartField, key: string): ChartState {
  const found = choicesAt(state, field).find((choice) => choice.key === key.toLowerCase());
  if (found === undefined) return state;
  if (found.value === 'penalty') return flag(state);
  if (field.entry.kind !== 'number') return settled(state, found.value);
  return confirm({ ...state, draft: withCell(state.draft, 'result', found.value) });
}

/** The choices at a field, each with its key. */
export function choicesAt(
  state: ChartState,
  { entry, column }: Pick<ChartField, 'entry' | 'column'>,
): readonly Choice[] {
  if (entry.kind === 'choice' || entry.kind === 'number') return entry.choices;
  return entry.kind === 'name' ? namedChoices(namesAt(state, column)) : [];
}

/** Space or Enter: what was typed is taken; with nothing typed what stands there stays. */
function confirm(state: ChartState): ChartState {
  const { entry } = state;
  if (entry === '') return advanced(state);
  const field = fieldsOf(state.kind)[state.stop];
  if (field?.column === 'down') return walkOff(state, false);
  if (field?.entry.kind === 'name') return settled(state, asBefore(state, field, entry.slice(1).trim()));
  if (field?.entry.kind === 'ball') return settled(state, entry === '50' ? entry : `own ${entry}`);
  return settled(state, entry === '-' ? '' : entry);
}

/** The cell under the pen is charted, and the pen goes on. */
function settled(state: ChartState, text: string): ChartState {
  const column = fieldsOf(state.kind)[state.stop]?.column;
  if (column === undefined) return state;
  const draft = withGoal(withCell(state.draft, column, text));
  return advanced({ ...state, draft, entry: '' });
}

/** Inside the ten it is first and goal. */
function withGoal(draft: SnapCells): SnapCells {
  const { down, toGo, ballOn } = situationOf(draft);
  return down === 1 && toGo === 10 && ballOn < 10 ? { ...draft, to_go: String(ballOn) } : draft;
}

function advanced(state: ChartState): ChartState {
  const stop = nextStop(state);
  if (stop >= 0) return { ...state, stop, entry: '' };
  const done = kept(state);
  return goTo(done, nextSnap(done));
}

/** The second pass goes from pass to pass; the first to the next snap. */
function nextSnap({ passes, snaps, at }: ChartState): number {
  if (passes !== 'second') return at + 1;
  const later = snaps.findIndex((snap, i) => i > at && isPass(snap));
  return later < 0 ? at : later;
}

/** The snap under the pen put among the others, when anything of it was charted. */
export function kept(state: ChartState): ChartState {
  const { draft, snaps, at } = state;
  if (snaps[at] === draft || (snaps[at] === undefined && !isTouched(state))) return state;
  const next = [...snaps];
  next[at] = finished(draft);
  return { ...state, snaps: next, draft: next[at] };
}

/** A new snap counts once its play, its end or its gain is charted. */
function isTouched({ draft }: ChartState): boolean {
  return (
    draft.play_kind !== undefined || draft.gain !== undefined || draft.result !== undefined || draft.call !== undefined
  );
}

/** What follows from the play: a run ends in a rush, a pass that fell gains nothing. */
function finished(draft: SnapCells): SnapCells {
  if (isRun(draft) && draft.result === undefined) return { ...draft, result: 'rush' };
  return isIncomplete(draft) && draft.gain === undefined ? { ...draft, gain: '0' } : draft;
}

/** Backspace: takes the last character away, else goes one stop back and empties it. */
function back(state: ChartState): ChartState {
  if (state.entry !== '') return { ...state, entry: state.entry.slice(0, -1) };
  const moved = move(state, -1);
  const column = fieldsOf(moved.kind)[moved.stop]?.column;
  return column === undefined || moved.stop === state.stop
    ? state
    : { ...moved, draft: withCell(moved.draft, column, '') };
}

function move(state: ChartState, step: 1 | -1): ChartState {
  const fields = fieldsOf(state.kind);
  for (let i = state.stop + step; i >= 0 && i < fields.length; i += step) {
    if (isOffered(state, fields[i] as ChartField)) return { ...state, stop: i, entry: '' };
  }
  return state;
}

function turn(state: ChartState, step: 1 | -1): ChartState {
  const done = kept(state);
  const at = done.at + step;
  return at < 0 || at > done.snaps.length ? state : goTo(done, at);
}

function remove(state: ChartState): ChartState {
  if (state.snaps[state.at] === undefined) return goTo(state, state.at);
  return goTo({ ...state, snaps: state.snaps.filter((_, i) => i !== state.at) }, state.at);
}

function series(state: ChartState): ChartState {
  const { cells, known } = newSeries(state.draft);
  const stop = fieldsOf(state.kind).findIndex(({ column }) => column === 'ball_on');
  return { ...state, draft: cells, known, stop, entry: '' };
}

function likeBefore(state: ChartState, { column }: ChartField): ChartState {
  const before = state.snaps[state.at - 1]?.[column];
  return before === undefined ? state : settled(state, before);
}

/** A flag and no play: the snap is done, and the next one asks for the down. */
function flag(state: ChartState): ChartState {
  const done = kept({ ...state, draft: flagged(state.draft), entry: '' });
  return goTo(done, nextSnap(done));
}

function walkOff(state: ChartState, isFirst: boolean): ChartState {
  if (!/\d/.test(state.entry)) return { ...state, entry: '' };
  const { cells, known } = walkedOff(state.draft, state.entry, isFirst);
  return advanced({ ...state, draft: cells, known, entry: '' });
}

/** Snap to throw off the stopwatch; the pen goes on when it stood there. */
function timed(state: ChartState, seconds: number): ChartState {
  const fields = fieldsOf(state.kind);
  const place = fields.findIndex(({ column }) => column === 'time_to_throw');
  const text = String(Math.round(seconds * 100) / 100);
  const draft = { ...state.draft, time_to_throw: text };
  if (place < 0) return state;
  return state.stop === place ? advanced({ ...state, draft, entry: '' }) : { ...state, draft };
}
