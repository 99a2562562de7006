import { PageShelf } from './page-shelf.tsx';
import { keepPages } from './plan-view.tsx';
import { useJob } from './use-job.ts';
import type { ViewProps } from './view-props.ts';
import { WorkLine } from './work-line.tsx';

const PAGES = [{ file: 'script.html', label: 'Practice script' }] as const;

/** Tuesday: the practice script and scout cards from Sunday's plan. */
export function PracticeView({ desk, open, week }: ViewProps) {
  const { work, start } = useJob((made) => keepPages({ desk, open, week }, made));
  const request = { files: open.files, season: open.known.name, week };
  return (
    <section class="view">
      <h1>Practice</h1>
      <p>
        Every pressure on the menu gets its reps against the looks and protections they show most. Contact over the
        week's limits stops the script.
      </p>
      <p>
        <button
          type="button"
          class="main"
          disabled={work.kind === 'working'}
          onClick={() => void start((at, onStage, onNote) => at.run('practice', request, { onStage, onNote }))}
        >
          Write the script
        </button>
      </p>
      <WorkLine work={work} />
      <PageShelf open={open} week={week} pages={PAGES} />
    </section>
  );
}
