import { useEffect, useState } from 'preact/hooks';
import type { CallLibrary } from '../../game/call-library.ts';
import { callPicture } from '../../report/field/call-picture.ts';
import { fieldDrawing } from '../../report/field/field-drawing.ts';
import { coverWords, rushWords } from '../../report/view/call-words.ts';
import { familyLabel } from '../../report/words/label.ts';
import { failureWords } from '../../report/words/soundness-words.ts';
import { textOf } from '../desk-state.ts';
import type { CallsLook } from '../engine/calls-job.ts';
import { createEngine } from '../engine/engine.ts';
import { CallForm } from './call-form.tsx';
import type { ViewProps } from './view-props.ts';

type Call = CallLibrary['calls'][number];

const engine = createEngine();

/** A call under the pen; `at` is its place in the library, null for a new one. */
interface Editing {
  readonly at: number | null;
  readonly call: Call;
}

/** Calls: the library as cards, and a call drawn and held to the soundness rules while it is typed. */
export function CallsView({ desk, open }: ViewProps) {
  const text = textOf(open.files, 'defense.yaml');
  const [look, setLook] = useState<CallsLook | null>(null);
  const [editing, setEditing] = useState<Editing | null>(null);
  const [tried, setTried] = useState<CallsLook | null>(null);
  useEffect(() => {
    void engine.run('calls', { text }).result.then(setLook, (error) => desk.complain(error));
  }, [text]);
  useEffect(() => {
    if (editing === null) return setTried(null);
    void engine.run('calls', { text, change: editing }).result.then(setTried, (error) => desk.complain(error));
  }, [editing, text]);
  const keep = async () => {
    if (tried?.library && (await desk.save([{ name: 'defense.yaml', text: tried.text }]))) setEditing(null);
  };
  useEffect(() => window.scrollTo(0, 0), [editing?.at, editing === null]);
  if (look === null) return null;
  if (look.library === null) return <Broken problems={look.problems} />;
  if (editing !== null)
    return (
      <Edit
        {...{ editing, tried }}
        library={look.library}
        onChange={(call) => setEditing({ ...editing, call })}
        onKeep={() => void keep()}
        onLeave={() => setEditing(null)}
      />
    );
  return <Cards look={look} library={look.library} onEdit={setEditing} />;
}

function Broken({ problems }: { readonly problems: readonly string[] }) {
  return (
    <section class="view">
      <h1>Calls</h1>
      <p>defense.yaml cannot be read as it stands:</p>
      <ul class="lines">
        {problems.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

interface CardsProps {
  readonly look: CallsLook;
  readonly library: CallLibrary;
  readonly onEdit: (editing: Editing) => void;
}

function Cards({ look, library, onEdit }: CardsProps) {
  return (
    <section class="view">
      <h1>{`${library.calls.length} calls`}</h1>
      <p>
        Seen from behind the offense. Filled: rushes; dashed arrow: only if the back stays in; hook: peels with the
        back. Open: drops to the bar, or has the man in the ring.
      </p>
      <div class="cards">
        {library.calls.map((call, at) => (
          <div key={call.name} class="card">
            <h2>{call.name}</h2>
            <Drawing library={library} call={call} />
            <p>{`${familyLabel(call.family)}, ${call.coverage}. Path ${call.path}.`}</p>
            <Soundness faults={look.faults.filter((fault) => fault.call === call.name)} />
            <p>
              <button type="button" aria-label={`Change it: ${call.name}`} onClick={() => onEdit({ at, call })}>
                Change it
              </button>{' '}
              <button
                type="button"
                aria-label={`New one like it: ${call.name}`}
                onClick={() => onEdit({ at: null, call: { ...call, name: `${call.name} 2` } })}
              >
                New one like it
              </button>
            </p>
          </div>
        ))}
      </div>
    </section>
  );
}

interface EditProps {
  readonly editing: Editing;
  readonly library: CallLibrary;
  readonly tried: CallsLook | null;
  readonly onChange: (call: Call) => void;
  readonly onKeep: () => void;
  readonly onLeave: () => void;
}

function Edit({ editing: { at, call }, library, tried, onChange, onKeep, onLeave }: EditProps) {
  return (
    <section class="view">
      <h1>{at === null ? `New call: ${call.name}` : call.name}</h1>
      <div class="pad">
        <CallForm library={library} call={call} onChange={onChange} />
        <div class="card">
          <Drawing library={library} call={call} />
          {tried?.library === null ? (
            <ul class="faults">
              {tried.problems.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          ) : (
            <Soundness faults={(tried?.faults ?? []).filter((fault) => fault.call === call.name)} />
          )}
          <p>
            <button type="button" class="main" disabled={!tried?.library} onClick={onKeep}>
              Keep the call
            </button>{' '}
            <button type="button" onClick={onLeave}>
              Leave it as it was
            </button>
          </p>
        </div>
      </div>
    </section>
  );
}

/** The call on the field. The drawing is this program's own markup; every letter of a file in it is escaped. */
function Drawing({ library, call }: { readonly library: CallLibrary; readonly call: Call }) {
  const words = `${call.name}. Rush: ${rushWords(library, call)}. Cover: ${coverWords(library, call)}.`;
  const { text } = fieldDrawing(callPicture(library, call), library.level, words);
  return <div class="drawing" dangerouslySetInnerHTML={{ __html: text }} />;
}

function Soundness({ faults }: { readonly faults: CallsLook['faults'] }) {
  if (faults.length === 0) return <p>Sound: eleven men, one job each, every receiver owned.</p>;
  return (
    <ul class="faults">
      {faults.map(({ failure, declared }) => (
        <li key={failureWords(failure)} class={declared ? 'soft' : ''}>
          {`${declared ? 'Given up on purpose: ' : ''}${failureWords(failure)}`}
        </li>
      ))}
    </ul>
  );
}
