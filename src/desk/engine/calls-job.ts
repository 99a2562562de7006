import type { CallLibrary } from '../../game/call-library.ts';
import { describeProblem } from '../../ingest/row-problem.ts';
import { readCallLibrary } from '../../ingest/settings-text.ts';
import type { SoundnessFault } from '../../pressure/soundness/fault.ts';
import { checkLibrary } from '../../pressure/soundness/soundness.ts';
import { withCall } from '../../season/edit-yaml.ts';

/** A defense.yaml to look into, with a call to be changed or added in it. */
export interface CallsRequest {
  readonly text: string;
  readonly change?: {
    /** The call's place among the calls, null for a new one. */
    readonly at: number | null;
    readonly call: Readonly<Record<string, unknown>>;
  };
}

/** What the library says, with the change made. */
export interface CallsLook {
  readonly text: string;
  readonly library: CallLibrary | null;
  readonly faults: readonly SoundnessFault[];
  /** Why the text is not a library, in words. */
  readonly problems: readonly string[];
}

/** Reads the calls and holds every one to the soundness rules. */
export async function callsJob({ text: before, change }: CallsRequest): Promise<CallsLook> {
  const text = change === undefined ? before : withCall(before, change.at, change.call);
  const read = readCallLibrary(text);
  if (read.kind === 'problems')
    return { text, library: null, faults: [], problems: read.problems.map(describeProblem) };
  return { text, library: read.value, faults: checkLibrary(read.value), problems: [] };
}
