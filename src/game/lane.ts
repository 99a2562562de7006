import type { Lane } from './call-library.ts';

/** The gap of a lane, A (inside guard) to D (outside the tight end). */
export function gapOf(lane: Lane): 'A' | 'B' | 'C' | 'D' {
  return lane.slice(-1) as 'A' | 'B' | 'C' | 'D';
}

/** The side of a lane. */
export function sideOf(lane: Lane): 'near' | 'far' {
  return lane.startsWith('near') ? 'near' : 'far';
}
