import type { Call, Role } from '../../game/call-library.ts';
import { coverJobFacts, type Receiver } from '../../game/cover-jobs.ts';
import { solveAssignment } from '../../stats/assignment.ts';
import type { Fault } from './fault.ts';
import { edgePeelSides } from './peel.ts';
import { roleTitle } from './role-title.ts';

/**
 * Receivers nobody has first, and jobs left open by a man who peels or adds. Each cover man owns at most one receiver,
 * the back is also owned by peel men when there is one on each side.
 */
export function ownerFaults(call: Call, roles: readonly Role[]): Fault[] {
  const receivers = receiversOf(call);
  const owners: (readonly Receiver[])[] = call.cover.map(({ job }) => coverJobFacts(job).owns);
  if (edgePeelSides(call).length === 2) owners.push(['back']);
  const lost = unowned(receivers, owners);
  return [...lost.map((receiver) => lostFault(receiver, call)), ...addFaults(call, roles)];
}

function receiversOf({ cover }: Call): readonly Receiver[] {
  const jobs = cover.map(({ job }) => job);
  if (jobs.includes('man_3_near')) return ['near_1', 'near_2', 'near_3', 'far_1', 'back'];
  if (jobs.includes('man_3_far')) return ['near_1', 'far_1', 'far_2', 'far_3', 'back'];
  return ['near_1', 'near_2', 'far_1', 'far_2', 'back'];
}

function unowned(receivers: readonly Receiver[], owners: readonly (readonly Receiver[])[]): Receiver[] {
  if (owners.length === 0) return [...receivers];
  // The back counts a little less, so that when one receiver must be left it is he who is named.
  const gain = (receiver: Receiver) => (receiver === 'back' ? 1 : 2);
  const gains = receivers.map((receiver) =>
    owners.map((owned) => (owned.includes(receiver) ? gain(receiver) : Number.NEGATIVE_INFINITY)),
  );
  const { columnOfRow } = solveAssignment(gains, 'maximize');
  return receivers.filter((_, i) => columnOfRow[i] === -1);
}

function lostFault(receiver: Receiver, call: Call): Fault {
  if (receiver !== 'back') return { failure: { kind: 'receiver_open', receiver } };
  const peels = edgePeelSides(call);
  if (peels.length !== 1) return { failure: { kind: 'back_open' }, excuse: 'back' };
  return { failure: { kind: 'back_open_to', side: peels[0] === 'near' ? 'far' : 'near' }, excuse: 'back' };
}

/**
 * A zone left by a man who adds must be the next job of another man who stays; a man's receiver stays in, so he leaves
 * nobody.
 */
function addFaults({ cover }: Call, roles: readonly Role[]): Fault[] {
  return cover
    .filter(({ adds, job }) => adds && coverJobFacts(job).demand !== 'man')
    .filter(({ job, role }) => !cover.some((other) => other.role !== role && other.next === job && !other.adds))
    .map(({ role, job }) => ({ failure: { kind: 'no_second_owner', man: roleTitle(role, roles), job }, role }));
}
