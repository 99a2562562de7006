import { opponentOf } from '../desk-state.ts';
import type { PagesMade } from '../engine/jobs.ts';
import { PageShelf } from './page-shelf.tsx';
import { useJob } from './use-job.ts';
import type { ViewProps } from './view-props.ts';
import { WeekForm } from './week-form.tsx';
import { WorkLine } from './work-line.tsx';

const PAGES = [
  { file: 'report.html', label: 'Report', hasScript: true },
  { file: 'call-sheet.html', label: 'Call sheet' },
  { file: 'tip-sheet.html', label: 'Tip sheet' },
  { file: 'wristband.html', label: 'Wristband' },
] as const;

/** Sunday: the plan worked out, and its pages. */
export function PlanView({ desk, open, week }: ViewProps) {
  const { work, start } = useJob((made) => keepPages({ desk, open, week }, made));
  const request = { files: open.files, season: open.known.name, week };
  return (
    <section class="view">
      <h1>{`The plan for ${opponentOf(open.files, week)}`}</h1>
      <p>
        <button
          type="button"
          class="main"
          disabled={work.kind === 'working'}
          onClick={() => void start((at, onStage, onNote) => at.run('sunday', request, { onStage, onNote }))}
        >
          Work out the plan
        </button>
      </p>
      <WorkLine work={work} />
      <WeekForm key={week} {...{ desk, open, week }} />
      <PageShelf open={open} week={week} pages={PAGES} />
    </section>
  );
}

/** Puts pages made into the week's out folder. */
export function keepPages({ desk, week }: ViewProps, { pages }: PagesMade): Promise<boolean> {
  return desk.save(pages.map(({ name, text }) => ({ name: `${week}/out/${name}`, text })));
}
