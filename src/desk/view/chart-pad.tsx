import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { callNames } from '../../season/edit-yaml.ts';
import { type ChartField, DEPTHS, type Depth } from '../chart/chart-fields.ts';
import { type ChartState, goTo, type Passes } from '../chart/chart-state.ts';
import { kept, press, type Stroke } from '../chart/press.ts';
import { opponentOf, textOf } from '../desk-state.ts';
import { ChartList } from './chart-list.tsx';
import { ChartSide } from './chart-side.tsx';
import { ChartStrip } from './chart-strip.tsx';
import { lastPlan } from './last-plan.ts';
import { printForm } from './print-form.ts';
import type { SheetChoice } from './sheet-choice.ts';
import { type Chart, useChart } from './use-chart.ts';
import { useLook } from './use-look.ts';
import { usePace } from './use-pace.ts';
import type { ViewProps } from './view-props.ts';

interface PadProps extends ViewProps {
  readonly sheet: SheetChoice;
  /** What stands beside the strip in place of the counts. */
  readonly side?: JSX.Element;
}

/** One sheet under the pen: the strip, the snaps around it, and what they do so far. */
export function ChartPad({ desk, open, week, sheet, side }: PadProps) {
  const opponent = opponentOf(open.files, week);
  const game = useMemo(() => firstGame(sheet, opponent, week), [sheet.path]);
  const report = `${week}/out/report.json`;
  // By the files, not by the season: they are long, and the season is another after every snap.
  const plan = useMemo(() => lastPlan(textOf(open.files, report)), [open.files.get(report)]);
  const names = useMemo(() => callNames(textOf(open.files, 'defense.yaml')), [open.files.get('defense.yaml')]);
  const chart = useChart({
    desk,
    path: sheet.path,
    kind: sheet.kind,
    game,
    calls: [...new Set([...plan.calls.filter((name) => names.includes(name)), ...names])],
  });
  const look = useLook({ sheet, opponent, text: () => chart.keeper.text(), snaps: chart.state?.snaps });
  const pace = usePace(chart.state?.snaps.length ?? 0);
  const { state, keeper } = chart;
  const take = (next: ChartState) => keeper.take(next);
  if (chart.isForeign) return <Foreign />;
  if (state === null) return null;
  const stroke = (given: Stroke) => {
    const next = press(state, given);
    if (next !== state) take(next);
  };
  const fault = (step: 1 | -1) => {
    const at = look === null ? undefined : faultFrom(state, look, step);
    if (at !== undefined) take(goTo(kept(state), at));
  };
  return (
    <>
      {chart.isStuck && <Stuck chart={chart} path={sheet.path} />}
      <div class="pad">
        <div>
          <ChartStrip state={state} onStroke={stroke} onFault={fault} />
          <Keys />
          <ChartList state={state} onTurn={(at) => take(goTo(kept(state), at))} />
          <p>
            <button type="button" onClick={() => void printForm(state, opponent, false)}>
              Print a blank form
            </button>{' '}
            <button type="button" onClick={() => void printForm(state, opponent, true)}>
              Print this sheet
            </button>
          </p>
        </div>
        <aside class="side">
          {side ?? <ChartSide look={look?.look ?? null} worth={plan.worth} />}
          <Knobs state={state} take={take} pace={pace} />
        </aside>
      </div>
    </>
  );
}

/** What every snap of a new sheet says of its game. */
function firstGame({ path, kind }: SheetChoice, opponent: string, week: string): ChartState['game'] {
  if (kind === 'live') return { game: `${week} ${opponent}` };
  const played = /game\.csv$|ours\.csv$/.test(path);
  const number = /\d+/.exec(week)?.[0] ?? '';
  const name = played
    ? `week ${Number(number)} ${opponent}`
    : `${opponent} game ${/\d+(?=\.csv$)/.exec(path)?.[0] ?? '1'}`;
  if (kind === 'own') return { game: name, week: String(Number(number)) };
  return { offense: opponent, game: name, ...(played ? { week: String(Number(number)) } : {}) };
}

function Foreign() {
  return (
    <p>
      This sheet has its own headers and is read through a profile. Fix it where it was made, or pick another sheet to
      chart here: they all count together.
    </p>
  );
}

function Stuck({ chart, path }: { readonly chart: Chart; readonly path: string }) {
  return (
    <div class="problem" role="alert">
      <p>{`${path} was changed outside of this page while you charted. Neither is lost: your snaps are kept here.`}</p>
      <p>
        <button type="button" onClick={() => void chart.keeper.keepBeside()}>
          Save mine as kept-… and open theirs
        </button>
      </p>
    </div>
  );
}

const DEPTH_WORDS: Readonly<Record<Depth, string>> = {
  quick:
    'Play, end, gain: 2 to 4 minutes of typing a game. The plan gets run or pass, screen, quick and deep by down and distance.',
  plan: 'Adds hash, receivers, the back, how they protect and how fast the ball is out: 5 to 12 minutes of typing. The plan then knows which path beats their protection.',
  full: 'Adds personnel, formation, motion, tempo, coverage they faced and where it was thrown: 8 to 25 minutes of typing. The plan then finds tells in the look.',
};

const PASS_WORDS: Readonly<Record<Passes, string>> = {
  both: 'Everything in one go',
  first: 'First time through: look and play',
  second: 'Second time: protection and release',
};

interface KnobProps {
  readonly state: ChartState;
  readonly take: (next: ChartState) => void;
  readonly pace: string;
}

function Knobs({ state, take, pace }: KnobProps) {
  const turn = (change: Partial<ChartState>) => take(reopened({ ...kept(state), ...change }));
  const rename = (column: ChartField['column'], text: string) =>
    take({ ...state, game: { ...state.game, [column]: text }, draft: { ...state.draft, [column]: text } });
  return (
    <div class="knobs">
      <fieldset>
        <legend>How much</legend>
        {DEPTHS.map((depth) => (
          <button key={depth} type="button" aria-pressed={state.depth === depth} onClick={() => turn({ depth })}>
            {depth}
          </button>
        ))}
      </fieldset>
      <fieldset>
        <legend>Times through</legend>
        {(Object.keys(PASS_WORDS) as Passes[]).map((passes) => (
          <button key={passes} type="button" aria-pressed={state.passes === passes} onClick={() => turn({ passes })}>
            {PASS_WORDS[passes]}
          </button>
        ))}
      </fieldset>
      <label>
        Game
        <input value={state.draft.game ?? ''} onInput={(event) => rename('game', event.currentTarget.value)} />
      </label>
      <label class="short">
        Quarter
        <input
          inputMode="numeric"
          value={state.draft.quarter ?? ''}
          onInput={(event) => rename('quarter', event.currentTarget.value)}
        />
      </label>
      <p class="soft">{state.kind === 'opponent' ? `${DEPTH_WORDS[state.depth]} ${pace}` : pace}</p>
    </div>
  );
}

/** The pen goes back to the first stop that the new depth or pass has. */
function reopened(state: ChartState): ChartState {
  return goTo(state, state.passes === 'second' ? Math.max(0, state.at - 1) : state.at);
}

const KEYS = [
  ['Backspace', 'one back'],
  ['Arrows', 'stops and snaps'],
  ['Ctrl Z', 'undo'],
  ['/', 'new series'],
  ['!', 'flag, no play'],
  ['.', 'same as the snap before'],
  [',', 'look of this formation as last time'],
  ['Delete', 'delete the snap'],
  ['End', 'new snap'],
  ['[ ]', 'last and next fault'],
] as const;

function Keys() {
  return (
    <p class="soft keys">
      {KEYS.map(([key, words]) => (
        <span key={key}>
          <kbd>{key}</kbd>
          {words}
        </span>
      ))}
    </p>
  );
}

/** The snap of the fault after (or before) the pen. */
function faultFrom(
  { at }: ChartState,
  { rows }: { readonly rows: readonly number[] },
  step: 1 | -1,
): number | undefined {
  return step === 1 ? rows.find((row) => row > at) : [...rows].reverse().find((row) => row < at);
}
