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
