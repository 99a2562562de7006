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

/** A call under the pen; `was` is its name in the library, null for a new one. */
interface Editing {
  readonly was: string | null;
  readonly call: Call;
}

const PATH = 'defense.yaml';

/** Calls: the library as cards, and a call drawn and held to the soundness rules while it is typed. */
export function CallsView({ desk, open }: ViewProps) {
  const text = textOf(open.files, PATH);
  const [look, setLook] = useState<CallsLook | null>(null);
  const [editing, setEditing] = useState<Editing | null>(null);
  const [tried, setTried] = useState<CallsLook | null>(null);
  useEffect(() => {
    void engine.run('calls', { text }).result.then(setLook, (error) => desk.complain(error));
  }, [text]);
  // A call is kept at every key until it is in the file or left as it was.
  useEffect(() => void desk.keptDraft(PATH).then((left) => setEditing((left as Editing | undefined) ?? null)), []);
  const edit = (next: Editing | null) => {
    setEditing(next);
    void desk.keepDraft(PATH, next ?? undefined);
  };
  useEffect(() => {
    if (editing === null || look?.library == null) return setTried(null);
    const change = { at: placeOf(look.library, editing.was), call: editing.call };
    void engine.run('calls', { text, change }).result.then(setTried, (error) => desk.complain(error));
  }, [editing, look]);
  const keep = async () => {
    if (tried?.library && (await desk.save([{ name: PATH, text: tried.text }]))) edit(null);
  };
  useEffect(() => window.scrollTo(0, 0), [editing?.was, editing === null]);
  if (look === null) return null;
  if (look.library === null) return <Broken problems={look.problems} />;
  if (editing !== null)
    return (
      <Edit
        {...{ editing, tried }}
        library={look.library}
        onChange={(call) => edit({ ...editing, call })}
        onKeep={() => void keep()}
        onLeave={() => edit(null)}
      />
    );
  return <Cards look={look} library={look.library} onEdit={setEditing} />;
}

/** A call that is not there any more is a new one. */
function placeOf({ calls }: CallLibrary, name: string | null): number | null {
  const at = calls.findIndex((call) => call.name === name);
  return at < 0 ? null : at;
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
        {library.calls.map((call) => (
          <div key={call.name} class="card">
            <h2>{call.name}</h2>
            <Drawing library={library} call={call} />
            <p>{`${familyLabel(call.family)}, ${call.coverage}. Path ${call.path}.`}</p>
            <Soundness faults={look.faults.filter((fault) => fault.call === call.name)} />
            <p>
              <button
                type="button"
                aria-label={`Change it: ${call.name}`}
                onClick={() => onEdit({ was: call.name, call })}
              >
                Change it
              </button>{' '}
              <button
                type="button"
                aria-label={`New one like it: ${call.name}`}
                onClick={() => onEdit({ was: null, call: { ...call, name: `${call.name} 2` } })}
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

function Edit({ editing: { was, call }, library, tried, onChange, onKeep, onLeave }: EditProps) {
  return (
    <section class="view">
      <h1>{was === null ? `New call: ${call.name}` : call.name}</h1>
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
              Leave it unchanged
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
