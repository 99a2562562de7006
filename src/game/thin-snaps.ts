/** Below this many snaps a share is thin: shown with an open mark, and never an order. Common practice, no source. */
export const THIN_SNAPS = 20;
