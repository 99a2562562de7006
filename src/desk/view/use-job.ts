import { useEffect, useRef, useState } from 'preact/hooks';
import { createEngine, type Engine, JobProblem, type RunningJob } from '../engine/engine.ts';
import type { PagesMade } from '../engine/jobs.ts';

/** The engine of long work; looks into a sheet have one of their own. */
const engine = createEngine();

/** Long work under way. */
interface UnderWay {
  readonly kind: 'working';
  readonly stage: string;
  readonly cancel: () => void;
}

/** How a piece of long work stands. */
export type Work =
  | { readonly kind: 'idle' }
  | UnderWay
  | { readonly kind: 'done'; readonly lines: readonly string[] }
  | { readonly kind: 'failed'; readonly problem: string; readonly isOurs: boolean };

/** Starts a job on the engine, saying what it is at. */
export type StartJob = (
  at: Engine,
  onStage: (stage: string) => void,
  onNote: (line: string) => void,
) => RunningJob<PagesMade>;

/** Long work of one view. */
export interface LongWork {
  readonly work: Work;
  /** Starts it. */
  readonly start: (begin: StartJob) => Promise<void>;
}

/** Long work of one view: how it stands, and how to start it. Leaving the view ends it. */
export function useJob(keep: (made: PagesMade) => Promise<boolean>): LongWork {
  const [work, setWork] = useState<Work>({ kind: 'idle' });
  const running = useRef<(() => void) | null>(null);
  useEffect(() => () => running.current?.(), []);
  const start = async (begin: StartJob) => {
    const notes: string[] = [];
    const job = begin(
      engine,
      (stage) => setWork({ kind: 'working', stage, cancel }),
      (line) => notes.push(line),
    );
    const cancel = () => {
      running.current = null;
      job.cancel();
      setWork({ kind: 'idle' });
    };
    running.current = cancel;
    setWork({ kind: 'working', stage: 'Reading the sheets', cancel });
    try {
      const made = await job.result;
      running.current = null;
      const kept = await keep(made);
      setWork({ kind: 'done', lines: kept ? [...notes, ...made.lines] : ['The pages could not be saved.'] });
    } catch (error) {
      running.current = null;
      const isOurs = error instanceof JobProblem && error.isOurs;
      setWork({ kind: 'failed', problem: (error as Error).message, isOurs });
    }
  };
  return { work, start };
}
