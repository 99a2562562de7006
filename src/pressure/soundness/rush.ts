import type { Call, Role } from '../../game/call-library.ts';
import { gapOf } from '../../game/lane.ts';
import type { Fault } from './fault.ts';
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
    const why = crowdWords(men.length, men.filter(({ way }) => way === 'loop').length);
    if (why === null) return [];
    const names = men.map(({ role }) => title(role)).join(' and ');
    const second = men.filter(({ way }) => way !== 'loop')[1] ?? men[1];
    return [
      {
        rule: 'lane',
        ...(second && { role: second.role }),
        words: `${names} share the ${laneWords(lane)} lane and ${why}`,
      },
    ];
  });
}

/** Two men fit in one lane when one of them loops behind the other. */
function crowdWords(men: number, loops: number): string | null {
  if (men < 2) return null;
  if (men > 2) return 'two is the most, one of them looping';
  if (loops === 1) return null;
  return loops === 0 ? 'neither loops' : 'both loop';
}

function containFaults(call: Call, side: 'near' | 'far', title: TitleOf): Fault[] {
  const men = startersOn(call, side);
  const edges = men.filter(({ lane }) => gapOf(lane) >= 'C');
  const excuse = `contain_${side}` as const;
  if (edges.length === 0) return [{ rule: 'contain', words: `nobody contains the ${side} edge`, excuse }];
  const peeler = edges.find(({ peels }) => peels);
  if (!peeler || men.length > 1) return [];
  const words = `${title(peeler.role)} peels and no inside rusher replaces him on the ${side} edge`;
  return [{ rule: 'contain', role: peeler.role, words, excuse }];
}

/** A run straight at a side on which both the A and the B gap are open meets nobody of the rush. */
function insideFaults(call: Call, side: 'near' | 'far'): Fault[] {
  if (startersOn(call, side).some(({ lane }) => gapOf(lane) < 'C')) return [];
  const excuse = `inside_${side}` as const;
  return [{ rule: 'inside', words: `nobody rushes the A or B gap on the ${side} side`, excuse }];
}

/** The man who joins late reads whether the back blocks; a man with his hand down on the line cannot. */
function addOnFaults({ rush }: Call, roles: readonly Role[]): Fault[] {
  const late = rush.filter(({ way }) => way === 'late_if_back_blocks');
  const linemen = new Set(roles.filter(({ group }) => group === 'line').map(({ id }) => id));
  return late
    .filter(({ role }) => linemen.has(role))
    .map(({ role }) => ({
      rule: 'add-on',
      role,
      words: `${roleTitle(role, roles)} is on the line and cannot read the back first; a linebacker or defensive back adds himself`,
    }));
}

function laneWords(lane: string): string {
  return lane.replace('_', ' ');
}
