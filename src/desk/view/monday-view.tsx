import { opponentOf } from '../desk-state.ts';
import { PageShelf } from './page-shelf.tsx';
import { keepPages } from './plan-view.tsx';
import { useJob } from './use-job.ts';
import type { ViewProps } from './view-props.ts';
import { WorkLine } from './work-line.tsx';

const PAGES = [
  { file: 'review.html', label: 'Review' },
  { file: 'season.html', label: 'Season page' },
] as const;

/** Monday: Sunday's plan and our calls judged on the finished game. */
export function MondayView({ desk, open, week }: ViewProps) {
  const { work, start } = useJob((made) => keepPages({ desk, open, week }, made));
  const request = { files: open.files, season: open.known.name, week };
  const hasGame = [...open.files.keys()].some((path) => path.startsWith(`${week}/game`));
  return (
    <section class="view">
      <h1>{`Monday after ${opponentOf(open.files, week)}`}</h1>
      {!hasGame && (
        <p>
          The game is not charted yet.{' '}
          <button type="button" onClick={() => desk.show('chart')}>
            Chart it
          </button>{' '}
          Pick "Friday's game against us", then "Our calls in it".
        </p>
      )}
      <p>
        <button
          type="button"
          class="main"
          disabled={work.kind === 'working' || !hasGame}
          onClick={() => void start((at, onStage, onNote) => at.run('monday', request, { onStage, onNote }))}
        >
          Review the game
        </button>
      </p>
      <WorkLine work={work} />
      <PageShelf open={open} week={week} pages={PAGES} />
    </section>
  );
}
