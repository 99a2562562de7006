import type { Call, CallLibrary } from '../../game/call-library.ts';
import { familyFaults } from './family.ts';
import type { SoundnessFault } from './fault.ts';
import { soundnessFault } from './fault.ts';
import { lookFaults } from './looks.ts';
import { menFaults } from './men.ts';
import { ownerFaults } from './owners.ts';
import { peelFaults } from './peel.ts';
import { rushFaults } from './rush.ts';
import { spaceFaults } from './space.ts';

/**
 * Every failed rule of every call, in the order of the library. A call is sound when all its faults are declared.
 *
 * @see {@link checkCall} for the rules
 */
export function checkLibrary(library: CallLibrary): SoundnessFault[] {
  return library.calls.flatMap((call) => checkCall(call, library));
}

/**
 * Every failed rule of one call: eleven men with one job each, none he is not asked to do; each of five receivers has a
 * first owner, and where that man peels or adds a second; one man a lane, or two when one loops; both edges contained
 * and a man inside on each side; one peel man a side, the widest; an add-on who reads the back; one man a place; deep
 * middle, flats and quarterback run owned; an answer to trips, empty, two backs, fast motion and heavy; and as many men
 * at each job as its family has. What a call gives up on purpose is listed as declared.
 *
 * @see Pressure Coverages 101, 2024; Coaching Stress Areas, 2020; the rest is common practice
 */
export function checkCall(call: Call, library: Pick<CallLibrary, 'roles'>): SoundnessFault[] {
  const { roles } = library;
  const faults = [
    ...menFaults(call, roles),
    ...ownerFaults(call, roles),
    ...rushFaults(call, roles),
    ...peelFaults(call, roles),
    ...spaceFaults(call, roles),
    ...lookFaults(call),
    ...familyFaults(call),
  ];
  return faults.map((fault) => soundnessFault(call, fault));
}
