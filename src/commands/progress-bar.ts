import type { Terminal } from './terminal.ts';

/** A progress line that somebody who watches sees once the work has taken a while. */
export interface ProgressBar {
  /** Shows how many of how many parts are done. */
  readonly step: (done: number, total: number) => void;
  /** Wipes the line. */
  readonly end: () => void;
}

/** Work shorter than this needs no bar, in milliseconds. */
const PATIENCE = 1000;
/** Redrawn no more often than this, in milliseconds. */
const REDRAW = 100;
const WIDTH = 30;

/** A bar under the given words; says nothing where standard error is no terminal. */
export function progressBar(words: string, terminal: Terminal, now: () => number = Date.now): ProgressBar {
  const start = now();
  let drawn = start + PATIENCE - REDRAW;
  let shown = false;
  return {
    step: (done, total) => {
      if (now() - drawn < REDRAW) return;
      drawn = now();
      shown = true;
      const filled = Math.round((WIDTH * done) / total);
      terminal.progress(
        `${words} [${'#'.repeat(filled)}${'.'.repeat(WIDTH - filled)}] ${Math.floor((100 * done) / total)}%`,
      );
    },
    end: () => {
      if (shown) terminal.progress('');
    },
  };
}
