import type { Desk } from '../desk.ts';
import { type DeskState, type OpenSeason, opponentOf, VIEWS, weeksOf } from '../desk-state.ts';

const SAVING = { saved: 'Saved', saving: 'Saving', failed: 'Not saved' } as const;

/** The head of the page: which season and week, whether all is saved, and the views. */
export function Masthead({ desk, state }: { readonly desk: Desk; readonly state: DeskState }) {
  return (
    <header>
      <p class="brand">Pressure Plan</p>
      {state.open !== null && <SeasonLine desk={desk} state={state} open={state.open} />}
      {state.open !== null && <ViewBar desk={desk} state={state} />}
    </header>
  );
}

interface LineProps {
  readonly desk: Desk;
  readonly state: DeskState;
  readonly open: OpenSeason;
}

function SeasonLine({ desk, state, open }: LineProps) {
  return (
    <div class="season-line">
      <span class="season-name">{open.known.name}</span>
      <label>
        Week{' '}
        <select value={state.week} onChange={(event) => desk.turnTo(event.currentTarget.value)}>
          {weeksOf(open.files).map((week) => (
            <option key={week} value={week}>
              {`${week}: ${opponentOf(open.files, week)}`}
            </option>
          ))}
        </select>
      </label>
      <span class="saving" data-saving={state.saving}>
        {SAVING[state.saving]} {open.known.where === 'folder' ? 'in the folder' : 'in this browser'}
      </span>
      <button type="button" onClick={() => desk.close()}>
        Close the season
      </button>
    </div>
  );
}

function ViewBar({ desk, state }: { readonly desk: Desk; readonly state: DeskState }) {
  return (
    <nav aria-label="The week">
      {VIEWS.map(({ id, label }, i) => (
        <button
          key={id}
          type="button"
          aria-current={state.view === id ? 'page' : undefined}
          title={`Alt ${i + 1}`}
          onClick={() => desk.show(id)}
        >
          {label}
        </button>
      ))}
    </nav>
  );
}
