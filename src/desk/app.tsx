import { useEffect, useState } from 'preact/hooks';
import { Desk } from './desk.ts';
import { type DeskState, EMPTY_DESK, type OpenSeason, VIEWS, type ViewId } from './desk-state.ts';
import { CallsView } from './view/calls-view.tsx';
import { ChartView } from './view/chart-view.tsx';
import { Masthead } from './view/masthead.tsx';
import { MondayView } from './view/monday-view.tsx';
import { PlanView } from './view/plan-view.tsx';
import { PracticeView } from './view/practice-view.tsx';
import { SeasonView } from './view/season-view.tsx';
import { SheetsView } from './view/sheets-view.tsx';
import { StartView } from './view/start-view.tsx';
import { TonightView } from './view/tonight-view.tsx';
import type { ViewProps } from './view/view-props.ts';

const desk = new Desk();

/** The whole page: the start without a season, else the week's views. */
export function App() {
  const [state, setState] = useState<DeskState>(EMPTY_DESK);
  useEffect(() => void desk.start(setState), []);
  useEffect(() => {
    const look = () => void desk.reread();
    const turn = (event: KeyboardEvent) => turnWith(event);
    window.addEventListener('focus', look);
    window.addEventListener('keydown', turn);
    return () => {
      window.removeEventListener('focus', look);
      window.removeEventListener('keydown', turn);
    };
  }, []);
  return (
    <>
      <Masthead desk={desk} state={state} />
      <Words state={state} />
      <main>
        {state.open === null ? <StartView desk={desk} state={state} /> : <Body state={state} open={state.open} />}
      </main>
    </>
  );
}

/** Alt and a digit turn to a view, in the order in which they stand. */
function turnWith(event: KeyboardEvent): void {
  const view = event.altKey ? VIEWS[Number(/^Digit([1-9])$/.exec(event.code)?.[1] ?? 0) - 1] : undefined;
  if (view === undefined || desk.state.open === null) return;
  event.preventDefault();
  desk.show(view.id);
}

/** What went wrong, and what was done. */
function Words({ state: { problem, note, open } }: { readonly state: DeskState }) {
  return (
    <>
      <div class="problem" role="alert">
        {problem !== null && (
          <p>
            {problem}{' '}
            <button type="button" onClick={() => desk.dismiss()}>
              Close
            </button>
          </p>
        )}
      </div>
      {open?.isElsewhere && (
        <p class="problem">
          This season is open in another tab. Nothing you type here is kept.{' '}
          <button type="button" onClick={() => void desk.takeOver()}>
            Type here instead
          </button>
        </p>
      )}
      <p class="note" role="status">
        {note}
      </p>
    </>
  );
}

const BODIES: Readonly<Record<ViewId, (props: ViewProps) => preact.JSX.Element | null>> = {
  chart: ChartView,
  sheets: SheetsView,
  calls: CallsView,
  plan: PlanView,
  practice: PracticeView,
  tonight: TonightView,
  monday: MondayView,
  season: SeasonView,
};

function Body({ state, open }: { readonly state: DeskState; readonly open: OpenSeason }) {
  const View = BODIES[state.view];
  return <View key={`${open.known.id} ${state.week}`} desk={desk} open={open} week={state.week} />;
}
