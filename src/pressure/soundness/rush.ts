import type { Call, Role } from '../../game/call-library.ts';
import { gapOf } from '../../game/lane.ts';
import type { Fault, Side } from './fault.ts';
import { roleTitle } from './role-title.ts';
import { startersOn } from './starters.ts';

/**
 * Lanes with more men than one, or two when the second loops; edges nobody contains; peel men nobody replaces on the
 * edge; a side with nobody inside the tackle; and an add-on joined by a man who cannot see the back.
 */
export function rushFaults(call: Call, roles: readonly Role[]): Fault[] {
  const title = (id: string) => roleTitle(id, roles);
  return [
    ...laneFaults(call, title),
    ...(['near', 'far'] as const).flatMap((side) => [...containFaults(call, side, title), ...insideFaults(call, side)]),
    ...addOnFaults(call, roles),
  ];
}

type TitleOf = (role: string) => string;

function laneFaults({ rush }: Call, title: TitleOf): Fault[] {
  const lanes = [...new Set(rush.map(({ lane }) => lane))];
  return lanes.flatMap((lane): Fault[] => {
    const men = rush.filter((rusher) => rusher.lane === lane);
    const loops = men.filter(({ way }) => way === 'loop').length;
    // Two men fit in one lane when one of them loops behind the other.
    const second = men.filter(({ way }) => way !== 'loop')[1] ?? men[1];
    if (second === undefined || (men.length === 2 && loops === 1)) return [];
    const names = men.map(({ role }) => title(role));
    return [{ failure: { kind: 'crowded_lane', men: names, lane, loops }, role: second.role }];
  });
}

function containFaults(call: Call, side: Side, title: TitleOf): Fault[] {
  const men = startersOn(call, side);
  const edges = men.filter(({ lane }) => gapOf(lane) >= 'C');
  const excuse = `contain_${side}` as const;
  if (edges.length === 0) return [{ failure: { kind: 'edge_open', side }, excuse }];
  const peeler = edges.find(({ peels }) => peels);
  if (!peeler || men.length > 1) return [];
  return [{ failure: { kind: 'edge_left_by_peel', man: title(peeler.role), side }, role: peeler.role, excuse }];
}

/** A run straight at a side on which both the A and the B gap are open meets nobody of the rush. */
function insideFaults(call: Call, side: Side): Fault[] {
  if (startersOn(call, side).some(({ lane }) => gapOf(lane) < 'C')) return [];
  const excuse = `inside_${side}` as const;
  return [{ failure: { kind: 'inside_open', side }, excuse }];
}

/** The man who joins late reads whether the back blocks; a man with his hand down on the line cannot. */
function addOnFaults({ rush }: Call, roles: readonly Role[]): Fault[] {
  const late = rush.filter(({ way }) => way === 'late_if_back_blocks');
  const linemen = new Set(roles.filter(({ group }) => group === 'line').map(({ id }) => id));
  return late
    .filter(({ role }) => linemen.has(role))
    .map(({ role }) => ({ failure: { kind: 'late_lineman', man: roleTitle(role, roles) }, role }));
}
