import { useState } from 'preact/hooks';
import { opponentOf, weeksOf } from '../desk-state.ts';
import { zipSeason } from '../store/season-files.ts';
import { download } from './download.ts';
import { PageShelf } from './page-shelf.tsx';
import { teamNote } from './team-note.ts';
import type { ViewProps } from './view-props.ts';

const PAGES = [{ file: 'season.html', label: 'Season page' }] as const;

/** The season: its weeks, the next one, a copy of it all, and the season page. */
export function SeasonView({ desk, open, week }: ViewProps) {
  const [opponent, setOpponent] = useState('');
  const make = (event: Event) => {
    event.preventDefault();
    void desk.newWeek(opponent.trim());
    setOpponent('');
  };
  const copy = () => {
    const zip = zipSeason({ name: open.known.name, files: open.files });
    download(`${open.known.name}.zip`, zip, 'application/zip');
  };
  return (
    <section class="view">
      <h1>Season</h1>
      <ul class="lines">
        {weeksOf(open.files).map((name) => (
          <li key={name}>{`${name}: ${opponentOf(open.files, name)}, ${doneIn(open.files, name)}`}</li>
        ))}
      </ul>
      <form class="row" onSubmit={make}>
        <label>
          Next opponent
          <input required value={opponent} onInput={(event) => setOpponent(event.currentTarget.value)} />
        </label>
        <button type="submit" class="main">
          Start the next week
        </button>
        <span class="fault" role="status">
          {teamNote(opponent, open.files)}
        </span>
      </form>
      <p>
        <button type="button" onClick={copy}>
          Save a copy of the season (.zip)
        </button>{' '}
        {`${open.files.size} files. The command line reads the same folder.`}
      </p>
      <PageShelf open={open} week={week} pages={PAGES} />
    </section>
  );
}

const DONE = [
  ['report.json', 'planned'],
  ['script.html', 'scripted'],
  ['halftime.html', 'updated at halftime'],
  ['review.json', 'reviewed'],
] as const;

function doneIn(files: ReadonlyMap<string, unknown>, week: string): string {
  const done = DONE.filter(([file]) => files.has(`${week}/out/${file}`)).map(([, words]) => words);
  return done.length === 0 ? 'not planned yet' : done.join(', ');
}
