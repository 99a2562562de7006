import { useState } from 'preact/hooks';
import type { Desk } from '../desk.ts';
import type { DeskState } from '../desk-state.ts';
import type { KnownSeason } from '../store/database.ts';
import { pickedSeason } from '../store/season-files.ts';

interface StartProps {
  readonly desk: Desk;
  readonly state: DeskState;
}

/** Without a season: the ones known, a new one, one from files, or the invented demo. */
export function StartView({ desk, state }: StartProps) {
  return (
    <div class="start">
      <h1>Sunday night starts here</h1>
      <p>
        Chart their film, get a plan you can defend, print it. Everything stays on this machine: the page asks for
        nothing from the network and works without one.
      </p>
      {state.seasons.length > 0 && <Known desk={desk} state={state} />}
      <div class="ways">
        <NewSeason desk={desk} />
        <FromFiles desk={desk} />
        <section>
          <h2>Try it first</h2>
          <p>A whole invented season: three weeks charted, a defense to call. No real school.</p>
          <button type="button" class="main" onClick={() => void desk.demo()}>
            Open the invented demo
          </button>
        </section>
      </div>
      <p class="small">
        Guidance only. Rules, contact limits and heat policy belong to your state association; who plays belongs to your
        licensed athletic trainer. Use no player names.
      </p>
    </div>
  );
}

function Known({ desk, state }: StartProps) {
  return (
    <section>
      <h2>Your seasons</h2>
      <ul class="seasons">
        {state.seasons.map((known) => (
          <li key={known.id}>
            <button type="button" class="main" onClick={() => void desk.openKnown(known)}>
              {known.name}
            </button>{' '}
            <span>{known.where === 'folder' ? 'in a folder on disk' : "in this browser's own storage"}</span>{' '}
            <Forget desk={desk} known={known} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Taking a season out of the browser asks twice, for nothing brings it back. */
function Forget({ desk, known }: { readonly desk: Desk; readonly known: KnownSeason }) {
  const [asked, ask] = useState(false);
  const words = known.where === 'folder' ? 'Take off this list' : 'Delete from this browser';
  if (!asked)
    return (
      <button type="button" class="quiet" aria-label={`${words}: ${known.name}`} onClick={() => ask(true)}>
        {words}
      </button>
    );
  return (
    <>
      <span>{known.where === 'folder' ? 'The folder stays.' : 'There is no undo.'}</span>{' '}
      <button type="button" onClick={() => void desk.forget(known)}>
        {words} now
      </button>{' '}
      <button type="button" onClick={() => ask(false)}>
        Keep it
      </button>
    </>
  );
}

function NewSeason({ desk }: { readonly desk: Desk }) {
  const [name, setName] = useState('season');
  const [opponent, setOpponent] = useState('');
  const make = (event: Event) => {
    event.preventDefault();
    void desk.newSeason({ name: name.trim() || 'season', opponent: opponent.trim() });
  };
  return (
    <section>
      <h2>Start a season</h2>
      <form onSubmit={make}>
        <label>
          Name of the season
          <input value={name} onInput={(event) => setName(event.currentTarget.value)} />
        </label>
        <label>
          First opponent
          <input required value={opponent} onInput={(event) => setOpponent(event.currentTarget.value)} />
        </label>
        <button type="submit" class="main">
          Start the season
        </button>
      </form>
    </section>
  );
}

function FromFiles({ desk }: { readonly desk: Desk }) {
  const take = (input: HTMLInputElement) => {
    const picked = [...(input.files ?? [])];
    input.value = '';
    if (picked.length > 0)
      pickedSeason(picked).then(
        (season) => desk.bringIn(season),
        (error) => desk.complain(error),
      );
  };
  return (
    <section>
      <h2>Open one you have</h2>
      {'showDirectoryPicker' in window && (
        <p>
          <button type="button" class="main" onClick={() => void desk.openFolder()}>
            Work in a season folder
          </button>
          <br />
          Reads and writes the folder itself, the one the command line uses.
        </p>
      )}
      <label>
        Copy a season folder into this browser
        <input type="file" {...{ webkitdirectory: true }} onChange={(event) => take(event.currentTarget)} />
      </label>
      <label>
        Copy a season from a .zip
        <input type="file" accept=".zip" onChange={(event) => take(event.currentTarget)} />
      </label>
    </section>
  );
}
