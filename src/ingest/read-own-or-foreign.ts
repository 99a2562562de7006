import type { Profile } from './profile.ts';
import { profileHeaders } from './profile-headers.ts';
import { readSheet, type SheetKind, type SheetReading } from './read-sheet.ts';
import type { SheetOptions } from './sheet-reading.ts';

/** How a sheet is read that may be in our own headers or in those a profile knows. */
export interface OwnOrForeign {
  readonly kind: SheetKind;
  readonly profile: Profile | null;
  readonly leaveOut?: SheetOptions['leaveOut'];
}

/**
 * A sheet read through the profile, or by our own headers where the sheet has none of the profile's: a template beside
 * the staff's own sheet, and a sheet typed tonight, need no profile.
 */
export function readOwnOrForeign(
  input: { readonly file: string; readonly bytes: Uint8Array },
  { kind, profile, leaveOut }: OwnOrForeign,
): SheetReading {
  const rest = leaveOut === undefined ? {} : { leaveOut };
  if (profile === null) return readSheet(input, { kind, ...rest });
  const foreign = readSheet(input, { kind, profile, ...rest });
  if (foreign.chart.size > 0 || hasHeaderOf(profile, foreign)) return foreign;
  const own = readSheet(input, { kind, ...rest });
  const isOurs = own.headers.length > 0 && own.unmapped.length < own.headers.length / 2;
  return isOurs ? own : foreign;
}

/** Whether the sheet has a header that only the profile explains. */
function hasHeaderOf(profile: Profile, { headers }: SheetReading): boolean {
  const known = new Set(profileHeaders(profile).map((header) => header.trim().toLowerCase()));
  const ours = new Set(Object.keys(profile.columns));
  return headers.some((header) => known.has(header.trim().toLowerCase()) && !ours.has(header.trim().toLowerCase()));
}
