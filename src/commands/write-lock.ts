import { closeSync, openSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';

/** A run holds the lock for milliseconds; one this old was left by a run that was killed. Judgment. */
const STALE_MILLISECONDS = 5_000;

/** How long to wait before looking again. */
const PAUSE_MILLISECONDS = 20;

/**
 * Does `work` while no other run of this program does its own in this folder, so that the files of two runs never mix. The work
 * is one stretch without waiting, which no signal interrupts.
 */
export async function alone(folder: string, work: () => void): Promise<void> {
  const lock = join(folder, '.writing');
  // Between taking the lock and giving it back nothing waits: a signal is heard only after it.
  while (!taken(lock)) await setTimeout(PAUSE_MILLISECONDS);
  try {
    work();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** Whether the lock is ours now. A lock left behind by a killed run is taken away first. */
function taken(lock: string): boolean {
  try {
    closeSync(openSync(lock, 'wx'));
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    if (isStale(lock)) rmSync(lock, { force: true });
    return false;
  }
}

function isStale(lock: string): boolean {
  const made = statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
  return made !== undefined && Math.abs(Date.now() - made) > STALE_MILLISECONDS;
}
