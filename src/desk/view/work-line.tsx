import { deskWords } from './desk-words.ts';
import type { Work } from './use-job.ts';

/** How long work stands: what it is at, with a way out; what to read when it is done; what to mend when it failed. */
export function WorkLine({ work }: { readonly work: Work }) {
  if (work.kind === 'idle') return null;
  if (work.kind === 'working')
    return (
      <p role="status" class="working">
        {work.stage || 'Working'}{' '}
        <button type="button" onClick={work.cancel}>
          Cancel
        </button>
      </p>
    );
  if (work.kind === 'failed') return <Failed problem={work.problem} isOurs={work.isOurs} />;
  return (
    <div role="status">
      <p>Done.</p>
      <ul class="lines">
        {work.lines.map((line) => (
          <li key={line}>{deskWords(line)}</li>
        ))}
      </ul>
    </div>
  );
}

function Failed({ problem, isOurs }: { readonly problem: string; readonly isOurs: boolean }) {
  return (
    <div role="alert" class="problem">
      {isOurs && <p>This is a bug in Pressure Plan. Please report it with what follows:</p>}
      {deskWords(problem)
        .split('\n')
        .map((line) => (
          <p key={line}>{line}</p>
        ))}
    </div>
  );
}
