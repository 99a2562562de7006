import type { Lane, Role } from '../../game/call-library.ts';
import { gapOf, sideOf } from '../../game/lane.ts';
import type { CallProtection, ProtectionPicture, RusherFate } from '../../pressure/protection/protection-result.ts';

type Met = Omit<CallProtection, 'share'>;

/**
 * Who is free and why, in one sentence.
 *
 * @example 'Will comes free off the far edge: they keep six and slide near'
 */
export function protectionWords(met: Met, roles: readonly Role[]): string {
  const title = (id: string) => roles.find((role) => role.id === id)?.title ?? id;
  const open = openMen(met).map((rusher) => `${title(rusher.role)} ${openWords(rusher, met)}`);
  const who = open.length > 0 ? open.join(' and ') : 'everyone is blocked';
  const pickedUp = met.rushers
    .filter((rusher) => met.added.includes(rusher.role) && !openMen(met).includes(rusher))
    .map((rusher) => `${title(rusher.role)} ${joinWords(rusher, met)} is picked up`);
  const peeled = met.peeled.map((id) => `${title(id)} takes the back wide`);
  return [`${who}: ${pictureWords(met.picture)}`, ...pickedUp, ...peeled].join('; ');
}

/** A picture in words, as the offense's doing. */
function pictureWords(picture: ProtectionPicture): string {
  return `${protectorWords(picture)}${backWords(picture)}`;
}

/** Free men before half-blocked ones. */
function openMen({ rushers }: Met): readonly RusherFate[] {
  return [...rushers.filter(({ fate }) => fate === 'free'), ...rushers.filter(({ fate }) => fate === 'late')];
}

function openWords(rusher: RusherFate, met: Met): string {
  const how = rusher.fate === 'free' ? 'comes free' : 'is only half blocked';
  const joined = met.added.includes(rusher.role) ? `${joinWords(rusher, met)} ` : '';
  return `${joined}${how} ${laneWords(rusher.lane)}`;
}

function joinWords({ role }: RusherFate, { rushers }: Met): string {
  const place = rushers.findIndex((rusher) => rusher.role === role);
  return `joins as the ${ORDINALS[place] ?? 'next'} and`;
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];

function laneWords(lane: Lane): string {
  const gap = gapOf(lane);
  return gap === 'A' || gap === 'B' ? `through the ${sideOf(lane)} ${gap} gap` : `off the ${sideOf(lane)} edge`;
}

function protectorWords({ protection, slide }: ProtectionPicture): string {
  const turn = slide === 'none' ? 'block man to man' : `slide ${slide}`;
  switch (protection) {
    case 'five_man_slide':
      return `five block and ${turn}`;
    case 'five_man_man':
      return 'five block man to man';
    case 'half_slide_covered':
    case 'half_slide_uncovered':
      return `they keep six and ${turn}`;
    case 'full_slide':
      return slide === 'none' ? 'they keep six and block man to man' : `they keep six and all slide ${slide}`;
    case 'man_dual_read':
      return 'they keep six and block man to man';
    case 'scan':
      return `they keep six and ${turn}, the back crosses`;
    case 'seven_man':
      return `they keep seven and ${turn}`;
    case 'max':
      return `they keep eight and ${turn}`;
    default:
      return protection satisfies never;
  }
}

function backWords({ protection, back }: ProtectionPicture): string {
  if (back === 'wide_near' || back === 'wide_far')
    return `, the back goes wide ${back === 'wide_near' ? 'near' : 'far'}`;
  return back === 'out' && protection.startsWith('five') ? ', the back is out' : '';
}
