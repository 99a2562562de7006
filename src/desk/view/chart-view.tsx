import { useState } from 'preact/hooks';
import { type OpenSeason, opponentOf } from '../desk-state.ts';
import { ChartPad } from './chart-pad.tsx';
import type { SheetChoice } from './sheet-choice.ts';
import type { ViewProps } from './view-props.ts';

/** Chart: their film and Friday's game, one snap at a time. */
export function ChartView({ desk, open, week }: ViewProps) {
  const sheets = sheetsOf(open, week);
  const [path, setPath] = useState(sheets[0]?.path ?? '');
  const sheet = sheets.find((choice) => choice.path === path) ?? sheets[0];
  if (sheet === undefined) return <p>There is no week yet. Start one under Season.</p>;
  return (
    <section class="view">
      <h1>{`Chart ${opponentOf(open.files, week)}`}</h1>
      <label class="inline">
        Sheet
        <select value={sheet.path} onChange={(event) => setPath(event.currentTarget.value)}>
          {sheets.map((choice) => (
            <option key={choice.path} value={choice.path}>
              {choice.label}
            </option>
          ))}
        </select>
      </label>
      <ChartPad key={sheet.path} {...{ desk, open, week }} sheet={sheet} />
    </section>
  );
}

/** The sheets of a week, those there and those that may begin. */
function sheetsOf({ files }: OpenSeason, week: string): readonly SheetChoice[] {
  if (week === '') return [];
  const names = [...files.keys()]
    .filter((path) => path.startsWith(`${week}/opponent`) && /\.csv$/i.test(path))
    .map((path) => path.slice(week.length + 1))
    .sort();
  const next = `opponent-${names.length + 1}.csv`;
  const film = names.length === 0 ? ['opponent.csv'] : names;
  return [
    ...film.map((name) => ({ path: `${week}/${name}`, label: `Their film: ${name}`, kind: 'opponent' as const })),
    ...(names.length === 0
      ? []
      : [{ path: `${week}/${next}`, label: `Their film, another sheet: ${next}`, kind: 'opponent' as const }]),
    { path: `${week}/game.csv`, label: "Friday's game against us: game.csv", kind: 'opponent' },
    { path: `${week}/ours.csv`, label: 'Our calls in it: ours.csv', kind: 'own' },
  ];
}
