import { type CallLibrary, GIVEN, LANES, SENT_FROM } from '../../game/call-library.ts';
import { COVER_JOBS } from '../../game/cover-jobs.ts';
import { FAMILIES } from '../../game/families.ts';
import { ROTATIONS } from '../../game/vocabulary.ts';
import { familyLabel } from '../../report/words/label.ts';

type Call = CallLibrary['calls'][number];

interface FormProps {
  readonly library: CallLibrary;
  readonly call: Call;
  readonly onChange: (call: Call) => void;
}

/** A call as a form: what it is called, and one job for each of our eleven. */
export function CallForm({ library, call, onChange }: FormProps) {
  const set = (change: Partial<Call>) => onChange({ ...call, ...change });
  return (
    <div class="call-form">
      <div class="knobs">
        <Text label="Name on the field" text={call.name} onText={(name) => set({ name })} />
        <Text label="Path (calls that look alike share it)" text={call.path} onText={(path) => set({ path })} />
        <Text label="Coverage behind it" text={call.coverage} onText={(coverage) => set({ coverage })} />
        <Pick
          label="Family"
          value={call.family}
          among={FAMILIES}
          onPick={(family) => set({ family })}
          words={familyLabel}
        />
        <Pick label="Sent from" value={call.sent_from} among={SENT_FROM} onPick={(sent_from) => set({ sent_from })} />
        <Pick
          label="Coverage rotates"
          value={call.rotation}
          among={ROTATIONS}
          onPick={(rotation) => set({ rotation })}
        />
        <Reps call={call} onChange={onChange} />
      </div>
      <Men library={library} call={call} onChange={onChange} />
      <Answers call={call} onChange={onChange} />
    </div>
  );
}

interface TextProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
}

function Text({ label, text, onText }: TextProps) {
  return (
    <label>
      {label}
      <input value={text} onInput={(event) => onText(event.currentTarget.value)} />
    </label>
  );
}

interface PickProps<Word extends string> {
  readonly label: string;
  readonly value: Word;
  readonly among: readonly Word[];
  readonly onPick: (word: Word) => void;
  readonly words?: (word: Word) => string;
}

function Pick<Word extends string>({ label, value, among, onPick, words = plain }: PickProps<Word>) {
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => onPick(event.currentTarget.value as Word)}>
        {among.map((word) => (
          <option key={word} value={word}>
            {words(word)}
          </option>
        ))}
      </select>
    </label>
  );
}

function plain(word: string): string {
  return word.replaceAll('_', ' ');
}

type PartProps = Pick<FormProps, 'call' | 'onChange'>;

function Reps({ call, onChange }: PartProps) {
  const set = (change: Partial<Call['reps']>) => onChange({ ...call, reps: { ...call.reps, ...change } });
  return (
    <>
      <Text
        label="Reps to install"
        text={String(call.reps.first)}
        onText={(text) => set({ first: Number(text) || 0 })}
      />
      <Text
        label="Reps each week"
        text={String(call.reps.weekly)}
        onText={(text) => set({ weekly: Number(text) || 0 })}
      />
    </>
  );
}

/** What a man does: `rush near_A` or `cover hook_near`. */
function jobOf({ rush, cover }: Call, role: string): string {
  const rusher = rush.find((man) => man.role === role);
  if (rusher !== undefined) return `rush ${rusher.lane} ${rusher.way}`;
  const man = cover.find((candidate) => candidate.role === role);
  return man === undefined ? '' : `cover ${man.job}`;
}

/** The call with another job for one man; what he does beside it (a peel, an add) goes with the old one. */
function withJob(call: Call, role: string, job: string): Call {
  const [kind, what = '', way = 'straight'] = job.split(' ');
  const rush = call.rush.filter((man) => man.role !== role);
  const cover = call.cover.filter((man) => man.role !== role);
  if (job === '') return { ...call, rush, cover };
  if (kind === 'rush') {
    const rusher = { role, lane: what, way, peels: false } as Call['rush'][number];
    return { ...call, rush: [...rush, rusher], cover };
  }
  return { ...call, rush, cover: [...cover, { role, job: what, adds: false } as Call['cover'][number]] };
}

function Men({ library, call, onChange }: FormProps) {
  return (
    <fieldset class="men">
      <legend>Our eleven</legend>
      {library.roles.map(({ id, title }) => (
        <div key={id}>
          <label>
            {title}
            <select
              value={jobOf(call, id)}
              onChange={(event) => onChange(withJob(call, id, event.currentTarget.value))}
            >
              <option value="">no job yet</option>
              <Lanes />
              <optgroup label="Covers">
                {COVER_JOBS.map((job) => (
                  <option key={job} value={`cover ${job}`}>
                    {plain(job)}
                  </option>
                ))}
              </optgroup>
            </select>
          </label>
          <Beside call={call} role={id} onChange={onChange} />
        </div>
      ))}
    </fieldset>
  );
}

const WAYS = { straight: 'Rushes', loop: 'Loops into', late_if_back_blocks: 'Adds on if the back blocks' } as const;

function Lanes() {
  return (
    <>
      {Object.entries(WAYS).map(([way, label]) => (
        <optgroup key={way} label={label}>
          {LANES.map((lane) => (
            <option key={lane} value={`rush ${lane} ${way}`}>
              {`${label.split(' ')[0]} ${plain(lane)}`}
            </option>
          ))}
        </optgroup>
      ))}
    </>
  );
}

/** A rusher may peel with the back; a cover man may join the rush when his man stays in. */
function Beside({ call, role, onChange }: PartProps & { readonly role: string }) {
  const rusher = call.rush.find((man) => man.role === role);
  const man = call.cover.find((candidate) => candidate.role === role);
  const isOn = rusher?.peels ?? man?.adds ?? false;
  const turn = () =>
    onChange({
      ...call,
      rush: call.rush.map((other) => (other.role === role ? { ...other, peels: !isOn } : other)),
      cover: call.cover.map((other) => (other.role === role ? { ...other, adds: !isOn } : other)),
    });
  return (
    <label class="soft check">
      <input type="checkbox" checked={isOn} onChange={turn} />
      {rusher === undefined ? 'adds on when his man blocks' : 'peels with the back'}
    </label>
  );
}

const LOOKS = ['trips', 'empty', 'two_backs', 'fast_motion', 'heavy'] as const;

/** What the call does against each look, or that it gives it up on purpose. */
function Answers({ call, onChange }: PartProps) {
  const given = (word: (typeof GIVEN)[number]) =>
    onChange({
      ...call,
      given: call.given.includes(word) ? call.given.filter((other) => other !== word) : [...call.given, word],
    });
  return (
    <>
      <fieldset class="answers">
        <legend>Against the looks it must answer</legend>
        {LOOKS.map((look) => (
          <Text
            key={look}
            label={plain(look)}
            text={call.adjust[look] ?? ''}
            onText={(text) => onChange({ ...call, adjust: withWords(call.adjust, look, text) })}
          />
        ))}
      </fieldset>
      <fieldset>
        <legend>Given up on purpose</legend>
        {GIVEN.map((word) => (
          <button key={word} type="button" aria-pressed={call.given.includes(word)} onClick={() => given(word)}>
            {plain(word)}
          </button>
        ))}
      </fieldset>
    </>
  );
}

function withWords(adjust: Call['adjust'], look: (typeof LOOKS)[number], text: string): Call['adjust'] {
  const { [look]: _, ...rest } = adjust;
  return text === '' ? rest : { ...rest, [look]: text };
}
