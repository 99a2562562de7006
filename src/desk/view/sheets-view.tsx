import { useRef, useState } from 'preact/hooks';
import { counted } from '../../report/words/number-words.ts';
import type { AdoptedSheet } from '../../season/adopt-sheet.ts';
import { createEngine } from '../engine/engine.ts';
import type { ViewProps } from './view-props.ts';

const engine = createEngine();

interface Taken {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly kind: 'opponent' | 'own';
}

/** Sheets: any sheet dropped here, understood by its values, with what it does not say asked. */
export function SheetsView({ desk, open, week }: ViewProps) {
  const [taken, setTaken] = useState<Taken | null>(null);
  const [adopted, setAdopted] = useState<AdoptedSheet | null>(null);
  const [answers, setAnswers] = useState<Readonly<Record<string, string>>>({});
  // What is kept is the reading with the last answer, also while it is still being made.
  const reading = useRef<Promise<AdoptedSheet | null>>(Promise.resolve(null));
  const read = async (sheet: Taken, given: Readonly<Record<string, string>>) => {
    try {
      return await engine.run('adopt', { ...sheet, answers: given }).result;
    } catch (error) {
      desk.complain(error);
      return null;
    }
  };
  const ask = async (sheet: Taken, given: Readonly<Record<string, string>>) => {
    setTaken(sheet);
    setAnswers(given);
    reading.current = read(sheet, given);
    const made = await reading.current;
    if (made !== null) setAdopted(made);
  };
  const take = async (file: File | undefined, kind: Taken['kind']) => {
    if (file !== undefined) await ask({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()), kind }, {});
  };
  const keep = async () => {
    const made = await reading.current;
    if (taken === null || made === null) return;
    if (await desk.save(filesOf(week, taken, made))) setAdopted(null);
  };
  return (
    <section
      class="view"
      aria-label="Sheets"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        void take(event.dataTransfer?.files[0], 'opponent');
      }}
    >
      <h1>Sheets</h1>
      <p>
        Drop a sheet here, from a spreadsheet or another program (.csv, .tsv, .txt, .xlsx). The desk works its columns
        out from their values and asks about the rest. Your sheet is never changed.
      </p>
      <div class="row">
        <Pick label="A sheet of their film" onPick={(file) => void take(file, 'opponent')} />
        <Pick label="A sheet of our calls" onPick={(file) => void take(file, 'own')} />
      </div>
      <Known open={open} week={week} />
      {taken !== null && adopted !== null && (
        <>
          <Questions
            adopted={adopted}
            answers={answers}
            onAnswer={(key, answer) => void ask(taken, { ...answers, [key]: answer })}
          />
          <Preview adopted={adopted} />
          <p>
            <button type="button" class="main" onClick={() => void keep()}>
              {`Keep ${taken.name} in ${week}`}
            </button>
          </p>
        </>
      )}
    </section>
  );
}

function Pick({ label, onPick }: { readonly label: string; readonly onPick: (file: File | undefined) => void }) {
  return (
    <label>
      {label}
      <input
        type="file"
        accept=".csv,.tsv,.txt,.xlsx"
        onChange={(event) => {
          onPick(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
    </label>
  );
}

/** The sheet under a name that is read, and how it is read beside it. */
function filesOf(week: string, { name, bytes, kind }: Taken, { profile }: AdoptedSheet) {
  const start = kind === 'own' ? 'ours' : 'opponent';
  const file = name.toLowerCase().startsWith(start) ? name : `${start}-${name}`;
  const folder = kind === 'own' ? '' : `${week}/`;
  return [
    { name: `${folder}${file}`, text: bytes },
    { name: kind === 'own' ? 'ours-profile.yaml' : `${week}/profile.yaml`, text: profile },
  ];
}

function Known({ open, week }: Pick<ViewProps, 'open' | 'week'>) {
  const sheets = [...open.files.keys()].filter(
    (path) => path.startsWith(`${week}/`) && /\.(csv|tsv|txt|xlsx)$/i.test(path),
  );
  const isProfiled = open.files.has(`${week}/profile.yaml`) || open.files.has('profile.yaml');
  return (
    <>
      <h2>In this week</h2>
      <ul class="lines">
        {sheets
          .filter((path) => !path.includes('/out/'))
          .sort()
          .map((path) => (
            <li key={path}>{path.slice(week.length + 1)}</li>
          ))}
      </ul>
      {isProfiled && <p class="soft">Their sheets of this week are read through profile.yaml.</p>}
    </>
  );
}

interface QuestionProps {
  readonly adopted: AdoptedSheet;
  readonly answers: Readonly<Record<string, string>>;
  readonly onAnswer: (key: string, answer: string) => void;
}

function Questions({ adopted, answers, onAnswer }: QuestionProps) {
  if (adopted.questions.length === 0) return <p>No questions left.</p>;
  return (
    <>
      <h2>{counted(adopted.questions.length, 'question', 'questions')}</h2>
      {adopted.questions.map((question) => (
        <Asked
          key={question.key}
          question={question}
          answer={answers[question.key]}
          onAnswer={(answer) => onAnswer(question.key, answer)}
        />
      ))}
    </>
  );
}

interface AskedProps {
  readonly question: AdoptedSheet['questions'][number];
  readonly answer: string | undefined;
  readonly onAnswer: (answer: string) => void;
}

function Asked({ question: { key, text, choices, guess }, answer, onAnswer }: AskedProps) {
  const id = `asked ${key}`.replace(/\W+/g, '-');
  return (
    <div class="question">
      <label for={id}>{plainWords(text)}</label>
      {choices.length === 0 ? (
        <input
          id={id}
          value={answer ?? ''}
          placeholder={guess}
          onChange={(event) => onAnswer(event.currentTarget.value)}
        />
      ) : (
        <select id={id} value={answer ?? guess ?? ''} onChange={(event) => onAnswer(event.currentTarget.value)}>
          <option value="">not sure yet</option>
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice.replaceAll('_', ' ')}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}

/** Our words without their underscores; what is quoted stands as it does in the sheet. */
function plainWords(text: string): string {
  return text.replace(/"[^"]*"|_/g, (found) => (found === '_' ? ' ' : found));
}

function Preview({ adopted: { preview, snaps, rejected, unread, problems } }: { readonly adopted: AdoptedSheet }) {
  return (
    <>
      <h2>{`${counted(snaps, 'snap', 'snaps')} read, ${counted(rejected, 'row', 'rows')} with faults`}</h2>
      <ul class="lines">
        {problems.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {unread.length > 0 && <p class="soft">{`Not read: ${unread.join(', ')}`}</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by keyboard too */}
      <section class="scroll" tabIndex={0} aria-label="The first ten snaps as they are read">
        <table>
          <thead>
            <tr>
              {preview.header.map((name) => (
                <th key={name} scope="col">
                  {name || 'Column'}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {preview.rows.map(([name, ...cells]) => (
              <tr key={name}>
                <th scope="row">{name?.replaceAll('_', ' ')}</th>
                {cells.map((cell, i) => (
                  <td key={i}>{cell.replaceAll('_', ' ')}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
