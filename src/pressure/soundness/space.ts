import type { Call, CoverJob, Role } from '../../game/call-library.ts';
import type { Fault } from './fault.ts';

/** Deep middle, flats and quarterback run that nobody owns. */
export function spaceFaults(call: Call, roles: readonly Role[]): Fault[] {
  const flats = (['near', 'far'] as const).flatMap((side) => flatFaults(call, side));
  return [...deepFaults(call, roles), ...flats, ...quarterbackFaults(call)];
}

/** Two halves share the deep middle. */
const DEEP_MIDDLE: readonly CoverJob[] = ['deep_middle', 'deep_third_middle', 'deep_half_near', 'deep_half_far'];

function deepFaults(call: Call, roles: readonly Role[]): Fault[] {
  if (call.cover.some(({ job }) => DEEP_MIDDLE.includes(job))) return [];
  const late = call.rush.find(({ way }) => way === 'late_if_back_blocks');
  if (!late) return [{ rule: 'deep middle', words: 'nobody has the deep middle', excuse: 'deep_middle' }];
  const title = roles.find(({ id }) => id === late.role)?.title ?? late.role;
  const words = `${title} leaves the deep middle to nobody when he joins the rush`;
  return [{ rule: 'deep middle', role: late.role, words, excuse: 'deep_middle' }];
}

/** A flat belongs to the man in it, or to the man on number two when the call is man to man. */
function flatFaults({ cover }: Call, side: 'near' | 'far'): Fault[] {
  const owners: readonly CoverJob[] = [`flat_${side}`, `man_2_${side}`, `man_3_${side}`];
  if (cover.some(({ job }) => owners.includes(job))) return [];
  return [{ rule: 'flat', words: `nobody has the ${side} flat`, excuse: `flat_${side}` }];
}

/** A quarterback who runs belongs to a spy, or to men who drop with their eyes on him. */
function quarterbackFaults({ cover }: Call): Fault[] {
  const eyes = (job: CoverJob) => !job.startsWith('deep') && !job.startsWith('man');
  if (cover.some(({ job }) => eyes(job))) return [];
  return [{ rule: 'quarterback run', words: 'nobody has the quarterback when he runs', excuse: 'quarterback_run' }];
}
