import type { Family } from '../../game/families.ts';
import type { Spread } from '../../stats/spread.ts';
import type { TABLE_ZONES } from '../tables/tables-result.ts';

/** One field zone of the tables. */
export type TableZone = (typeof TABLE_ZONES)[number];

/** A carried pressure in one field zone. */
export interface ZoneCall {
  readonly call: string;
  readonly family: Family;
  /** Right less wrong on the snaps to expect there, -1 to 1, with its 95% interval. */
  readonly net: Spread;
  /** `best`: right plainly more often than wrong there; `out`: wrong on a quarter more of the snaps than right. */
  readonly does: 'best' | 'carry' | 'out';
}

/** What to call in one field zone. */
export interface ZoneCalls {
  readonly zone: TableZone;
  /** Film snaps in the zone on which their answer, or run or pass, was charted. */
  readonly snaps: number;
  /** Carried pressures, best fit first; empty where their film shows no such snap. */
  readonly calls: readonly ZoneCall[];
}
