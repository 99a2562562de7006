import type { Desk } from '../desk.ts';
import type { OpenSeason } from '../desk-state.ts';

/** What every view of a week is given. */
export interface ViewProps {
  readonly desk: Desk;
  readonly open: OpenSeason;
  readonly week: string;
}
