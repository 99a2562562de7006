import { localDay } from '../../season/local-day.ts';
import type { JobName, JobRequest, JobResult } from './jobs.ts';
import type { JobMessage, StartMessage, WorkerMessage } from './messages.ts';
import { unpack, unpackText } from './packed.ts';

/** A job under way. */
export interface RunningJob<Result> {
  readonly result: Promise<Result>;
  /** Ends the job at once; its result never comes. */
  readonly cancel: () => void;
}

/** What a job says while it works. */
export interface JobWatcher {
  /** Hears what is being worked on. */
  readonly onStage?: (text: string) => void;
  /** Hears a line the coach should read. */
  readonly onNote?: (text: string) => void;
}

/** A job that could not be done, in words the coach can use. */
export class JobProblem extends Error {
  override readonly name = 'JobProblem';
  /** A bug in Pressure Plan, not something to mend in the files. */
  readonly isOurs: boolean;

  constructor(message: string, isOurs: boolean) {
    super(message);
    this.isOurs = isOurs;
  }
}

/** A worker that does one job after another. */
export interface Engine {
  /** Starts a job. */
  readonly run: <Name extends JobName>(
    name: Name,
    request: JobRequest<Name>,
    watcher?: JobWatcher,
  ) => RunningJob<JobResult<Name>>;
}

/** An engine; its worker starts with the first job, and again after a job was canceled. */
export function createEngine(): Engine {
  let worker: Worker | undefined;
  let jobs = 0;
  const stop = () => {
    worker?.terminate();
    worker = undefined;
  };
  return {
    run: (name, request, watcher = {}) => {
      worker ??= startWorker();
      const at = worker;
      const id = ++jobs;
      const result = listen(at, id, watcher) as Promise<never>;
      const job: JobMessage = { kind: 'job', id, name, request, today: today() };
      at.postMessage(job);
      return { result, cancel: stop };
    },
  };
}

function startWorker(): Worker {
  const address = URL.createObjectURL(new Blob([unpack('engine')], { type: 'text/javascript' }));
  const worker = new Worker(address);
  const start: StartMessage = { kind: 'start', solver: unpack('solver'), pageScript: unpackText('page-script') };
  worker.postMessage(start, [start.solver.buffer as ArrayBuffer]);
  return worker;
}

type Said = WorkerMessage & { readonly kind: 'stage' };

function listen(worker: Worker, id: number, { onStage, onNote }: JobWatcher): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const ends = new AbortController();
    const say: Readonly<Record<WorkerMessage['kind'], (message: never) => void>> = {
      stage: ({ text }: Said) => onStage?.(text),
      note: ({ text }: Said) => onNote?.(text),
      done: ({ result }: WorkerMessage & { readonly kind: 'done' }) => resolve(result),
      failed: ({ message, isOurs }: WorkerMessage & { readonly kind: 'failed' }) =>
        reject(new JobProblem(message, isOurs)),
    };
    const hear = ({ data }: MessageEvent<WorkerMessage>) => {
      if (data.id !== id) return;
      if (data.kind === 'done' || data.kind === 'failed') ends.abort();
      say[data.kind](data as never);
    };
    worker.addEventListener('message', hear, { signal: ends.signal });
    worker.addEventListener('error', ({ message }) => reject(new JobProblem(message || 'the engine stopped', true)));
  });
}

/** The day by this machine's clock, as the command line takes it. */
export function today(): string {
  return localDay(new Date());
}
