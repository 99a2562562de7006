import { useEffect, useRef } from 'preact/hooks';
import { opponentOf } from '../desk-state.ts';
import { ChartPad } from './chart-pad.tsx';
import { PageShelf } from './page-shelf.tsx';
import { keepPages } from './plan-view.tsx';
import { useJob } from './use-job.ts';
import type { ViewProps } from './view-props.ts';
import { WorkLine } from './work-line.tsx';

const PAGES = [
  { file: 'halftime.html', label: 'Plan now' },
  { file: 'call-sheet.html', label: "Sunday's call sheet" },
] as const;

/** Quiet after a snap before the plan is brought up to date, in milliseconds. */
const UPDATE_AFTER = 1500;

/** Tonight: the first half by the same strip, with the plan changing beside it. */
export function TonightView({ desk, open, week }: ViewProps) {
  const path = `${week}/live.csv`;
  return (
    <section class="view">
      <h1>{`Tonight: ${opponentOf(open.files, week)}`}</h1>
      <ChartPad
        {...{ desk, open, week }}
        sheet={{ path, label: 'Tonight: live.csv', kind: 'live' }}
        side={<Update {...{ desk, open, week }} live={open.files.get(path)} />}
      />
    </section>
  );
}

interface UpdateProps extends ViewProps {
  /** Tonight's sheet as it was written last. */
  readonly live: Uint8Array | undefined;
}

/** The plan beside the strip. It follows every snap once Sunday's plan is there; before that it would take too long. */
function Update({ desk, open, week, live }: UpdateProps) {
  const { work, start } = useJob((made) => keepPages({ desk, open, week }, made));
  const request = { files: open.files, season: open.known.name, week };
  const update = () => void start((at, onStage, onNote) => at.run('halftime', request, { onStage, onNote }));
  const isPlanned = open.files.has(`${week}/out/report.json`);
  const seen = useRef<Uint8Array | undefined>(undefined);
  // A snap typed while the plan was brought up to date is waited for too.
  useEffect(() => {
    if (!isPlanned || live === seen.current || work.kind === 'working') return;
    const timer = setTimeout(() => {
      seen.current = live;
      update();
    }, UPDATE_AFTER);
    return () => clearTimeout(timer);
  }, [live, work.kind]);
  return (
    <div>
      <p>
        <button type="button" disabled={work.kind === 'working'} onClick={update}>
          Update the plan
        </button>
      </p>
      {!isPlanned && <p class="soft">Work out Sunday's plan first: then this follows every snap.</p>}
      <WorkLine work={work} />
      <PageShelf open={open} week={week} pages={PAGES} />
    </div>
  );
}
