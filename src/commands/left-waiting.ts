import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * Takes away the temporary files that a killed run left in a folder. Those of a run that still lives are its own, and a
 * name that only looks like one is the coach's.
 */
export async function removeLeftWaiting(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    const run = LEFT_WAITING.exec(name)?.[1];
    if (run !== undefined && !isRunning(Number(run))) await rm(join(folder, name), { force: true });
  }
}

/** The process id and the number of the call, as the writer marks them. */
const LEFT_WAITING = /\.writing-(\d+)-\d+$/;

function isRunning(run: number): boolean {
  try {
    return process.kill(run, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
