import type { Call, CallLibrary } from '../../game/call-library.ts';
import { plainWords } from '../words/label.ts';
import { listed } from '../words/number-words.ts';

/** Who rushes which lane, in words. */
export function rushWords(library: CallLibrary, call: Call): string {
  return listed(call.rush.map((rusher) => `${titleOf(library, rusher.role)} ${laneWords(rusher)}`));
}

/** Who covers what, in words. */
export function coverWords(library: CallLibrary, call: Call): string {
  return listed(call.cover.map((man) => `${titleOf(library, man.role)} ${plainWords(man.job).toLowerCase()}`));
}

/** What the staff calls a role. */
export function titleOf(library: CallLibrary, id: string): string {
  return library.roles.find((role) => role.id === id)?.title ?? plainWords(id);
}

/**
 * A lane in words.
 *
 * @example laneLabel('near_D') // "near D"
 */
export function laneLabel(lane: string): string {
  return lane.replace('_', ' ');
}

function laneWords({ lane, way, peels }: Call['rush'][number]): string {
  const late = way === 'late_if_back_blocks' ? ' if the back stays' : '';
  const loop = way === 'loop' ? ' looping' : '';
  return `${laneLabel(lane)}${loop}${late}${peels ? ' (peels)' : ''}`;
}
