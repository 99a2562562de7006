import type { SnapCells } from '../../season/chart-sheet.ts';

/** The play is a run, also the quarterback's. */
export function isRun({ play_kind: kind }: SnapCells): boolean {
  return kind === 'run' || kind === 'quarterback_run';
}

/** The play is charted, and as a pass. */
export function isPass(snap: SnapCells): boolean {
  return snap.play_kind !== undefined && !isRun(snap);
}

/** The pass fell, so the gain is zero. */
export function isIncomplete({ result }: SnapCells): boolean {
  return result === 'incomplete' || result === 'throwaway';
}

/** How it ended is asked: a run ends in a rush, unless its flag has to be taken back. */
export function isEndAsked(snap: SnapCells): boolean {
  return !isRun(snap) || snap.result === 'penalty';
}

/** There is a gain to chart: the pass did not fall, and the play counts. */
export function isGainAsked(snap: SnapCells): boolean {
  return !isIncomplete(snap) && snap.result !== 'penalty';
}
