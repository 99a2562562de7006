import type { Call, Role } from '../../game/call-library.ts';
import type { CoverJob } from '../../game/cover-jobs.ts';
import { coverJobFacts } from '../../game/cover-jobs.ts';
import type { Fault, Side } from './fault.ts';
import { roleTitle } from './role-title.ts';

/** Deep middle, flats and quarterback run that nobody owns, and places two men have. */
export function spaceFaults(call: Call, roles: readonly Role[]): Fault[] {
  const flats = (['near', 'far'] as const).flatMap((side) => flatFaults(call, side));
  return [...deepFaults(call, roles), ...doubledFaults(call, roles), ...flats, ...quarterbackFaults(call)];
}

function deepFaults(call: Call, roles: readonly Role[]): Fault[] {
  const jobs = call.cover.map(({ job }) => job);
  if (jobs.some((job) => coverJobFacts(job).deepMiddle)) return [];
  const halves = (['near', 'far'] as const).filter((side) => jobs.includes(`deep_half_${side}`));
  // Two halves share the deep middle; one alone leaves it, and the other half of the field.
  if (halves.length === 2) return [];
  const excuse = 'deep_middle';
  if (halves.length === 1) {
    const open = halves[0] === 'near' ? 'far' : 'near';
    return [{ failure: { kind: 'deep_half_open', side: open }, excuse }];
  }
  const late = call.rush.find(({ way }) => way === 'late_if_back_blocks');
  if (!late) return [{ failure: { kind: 'deep_middle_open' }, excuse }];
  return [{ failure: { kind: 'deep_middle_left', man: roleTitle(late.role, roles) }, role: late.role, excuse }];
}

/** Two men in one place leave another place open. */
function doubledFaults({ cover }: Call, roles: readonly Role[]): Fault[] {
  return cover.flatMap(({ role, job }, i): Fault[] => {
    const first = cover.findIndex((man) => man.job === job);
    if (first === i || coverJobFacts(job).shared) return [];
    const men = [cover[first]?.role ?? '', role].map((id) => roleTitle(id, roles));
    return [{ failure: { kind: 'same_place', men, job }, role }];
  });
}

/** A flat belongs to the man in it, or to the man on number two when the call is man to man. */
function flatFaults({ cover }: Call, side: Side): Fault[] {
  if (cover.some(({ job }) => coverJobFacts(job).flat === side)) return [];
  return [{ failure: { kind: 'flat_open', side }, excuse: `flat_${side}` }];
}

/** A quarterback who runs belongs to a spy, or to men who drop with their eyes on him. */
function quarterbackFaults({ cover }: Call): Fault[] {
  const eyes = (job: CoverJob) => ['drop', 'spy'].includes(coverJobFacts(job).demand);
  if (cover.some(({ job }) => eyes(job))) return [];
  return [{ failure: { kind: 'quarterback_open' }, excuse: 'quarterback_run' }];
}
