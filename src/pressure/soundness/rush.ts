import type { Call, Role } from '../../game/call-library.ts';
import { gapOf, sideOf } from '../protection/arrival.ts';
import type { Fault } from './fault.ts';

/** Two men in one lane with neither looping, edges nobody contains, and peel men nobody replaces on the edge. */
export function rushFaults(call: Call, roles: readonly Role[]): Fault[] {
  const title = (id: string) => roles.find((role) => role.id === id)?.title ?? id;
  return [
    ...laneFaults(call, title),
    ...(['near', 'far'] as const).flatMap((side) => containFaults(call, side, title)),
  ];
}

type TitleOf = (role: string) => string;

function laneFaults({ rush }: Call, title: TitleOf): Fault[] {
  const lanes = [...new Set(rush.map(({ lane }) => lane))];
  return lanes.flatMap((lane): Fault[] => {
    const men = rush.filter((rusher) => rusher.lane === lane);
    const straight = men.filter(({ way }) => way !== 'loop');
    if (men.length < 2 || straight.length < 2) return [];
    const names = men.map(({ role }) => title(role)).join(' and ');
    const second = straight[1];
    return [
      {
        rule: 'lane',
        ...(second && { role: second.role }),
        words: `${names} share the ${laneWords(lane)} lane and neither loops`,
      },
    ];
  });
}

function containFaults({ rush }: Call, side: 'near' | 'far', title: TitleOf): Fault[] {
  const men = rush.filter(({ lane, way }) => sideOf(lane) === side && way !== 'late_if_back_blocks');
  const edges = men.filter(({ lane }) => gapOf(lane) >= 'C');
  const excuse = `contain_${side}` as const;
  if (edges.length === 0) return [{ rule: 'contain', words: `nobody contains the ${side} edge`, excuse }];
  const peeler = edges.find(({ peels }) => peels);
  if (!peeler || men.length > 1) return [];
  const words = `${title(peeler.role)} peels and no inside rusher replaces him on the ${side} edge`;
  return [{ rule: 'contain', role: peeler.role, words, excuse }];
}

function laneWords(lane: string): string {
  return lane.replace('_', ' ');
}
