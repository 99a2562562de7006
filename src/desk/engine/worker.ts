/// <reference lib="webworker" />
import type { JobName, Workplace } from './jobs.ts';
import type { JobMessage, StartMessage, WorkerMessage } from './messages.ts';
import { roundAlike } from './same-rounding.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
let started: StartMessage | undefined;
roundAlike();
const engineParts = Promise.all([
  import('./browser-platform.ts'),
  import('./jobs.ts'),
  import('../../season/user-problem.ts'),
]);

scope.onmessage = ({ data }: MessageEvent<StartMessage | JobMessage>) => {
  if (data.kind === 'start') started = data;
  else void work(data);
};

async function work({ id, name, request, today }: JobMessage): Promise<void> {
  const say = (message: WorkerMessage) => scope.postMessage(message);
  if (started === undefined) throw new Error('the worker was not started');
  // The page's first message comes before all of this is evaluated: it must find somebody to hear it.
  const [{ browserPlatform }, { JOBS }, { UserProblem }] = await engineParts;
  const place: Workplace = {
    platform: browserPlatform(started.solver),
    pageScript: started.pageScript,
    listener: {
      note: (text) => say({ kind: 'note', id, text }),
      progress: (text) => say({ kind: 'stage', id, text }),
      today,
    },
  };
  try {
    const job = JOBS[name as JobName] as (given: unknown, at: Workplace) => Promise<unknown>;
    say({ kind: 'done', id, result: await job(request, place) });
  } catch (error) {
    const isOurs = !(error instanceof UserProblem);
    const message = error instanceof Error ? error.message : String(error);
    say({ kind: 'failed', id, message: isOurs ? `${message}\n${(error as Error).stack ?? ''}` : message, isOurs });
  }
}
