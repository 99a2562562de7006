import type { Call, Lane, Role } from '../../game/call-library.ts';
import { gapOf, sideOf } from '../../game/lane.ts';
import { type RushWay, rushSpot, rushYards, SHOWN_PASSER_DEPTH, type Spot, usualSpot } from './arrival.ts';
import { byName } from './by-name.ts';
import { type CountedBy, LINE_SPOTS, type Threat } from './protection-blockers.ts';
import type { ProtectionPicture } from './protection-result.ts';

/** A man who rushes against one picture: as the protection sees him, and how he gets there. */
export interface Rusher extends Threat {
  readonly man: Role;
  readonly spot: Spot;
  readonly way: RushWay;
}

/** Who rushes in a call against one picture, and who changed his job for it. */
export interface RushOfCall {
  readonly rushers: readonly Rusher[];
  /** Role ids of rushers who take the back who releases wide. */
  readonly peeled: readonly string[];
  /** Role ids of men who join because a back, or a second man, stays in to block. */
  readonly added: readonly string[];
}

/**
 * Who rushes in a call against one picture. The widest peel man of a side takes a back who releases wide there. A man
 * who joins late does so only when the back stays in; a cover man who adds joins when his man stays: the back's when the
 * back is in, a receiver's when seven or eight protect. Late men go through the first open lane away from the slide, the
 * man nearest the line first. The order in which a call lists its men means nothing.
 */
export function rushOfCall(call: Call, roles: readonly Role[], picture: ProtectionPicture): RushOfCall {
  const peeled = peelMen(call, picture);
  const counted = countOf(call, roles);
  const started = call.rush.filter(({ role, way }) => way !== 'late_if_back_blocks' && !peeled.includes(role));
  const joining = lateMen(call, roles, picture);
  const taken = started.map(({ lane }) => lane);
  const rushers = started.flatMap((entry) => rusherOf({ call, roles, counted }, { ...entry, late: false }));
  for (const { role, lane } of joining) {
    const found = openLane(taken, lane ?? startingLane(role, call, roles), picture);
    taken.push(found);
    const entry = { role, lane: found, way: 'late_if_back_blocks' as const, late: true };
    rushers.push(...rusherOf({ call, roles, counted }, entry));
  }
  return { rushers, peeled, added: joining.map(({ role }) => role) };
}

function peelMen(call: Call, { back }: ProtectionPicture): string[] {
  if (back !== 'wide_near' && back !== 'wide_far') return [];
  const side = back === 'wide_near' ? 'near' : 'far';
  const widest = call.rush
    .filter(({ peels, lane }) => peels && sideOf(lane) === side)
    .sort((a, b) => gapOf(b.lane).charCodeAt(0) - gapOf(a.lane).charCodeAt(0) || byName(a, b))[0];
  return widest ? [widest.role] : [];
}

interface LateMan {
  readonly role: string;
  readonly lane?: Lane;
}

function lateMen(call: Call, roles: readonly Role[], picture: ProtectionPicture): LateMan[] {
  const { back, protection } = picture;
  if (back !== 'in') return [];
  const nearestFirst = (a: LateMan, b: LateMan) => depthOf(a, roles) - depthOf(b, roles) || byName(a, b);
  const declared = call.rush.filter(({ way }) => way === 'late_if_back_blocks').sort(nearestFirst);
  const adds = call.cover.filter(({ adds }) => adds);
  const onBack = adds.filter(({ job }) => job === 'man_back').sort(nearestFirst);
  const receiversIn = protection === 'seven_man' ? 1 : protection === 'max' ? 2 : 0;
  const others = adds.filter(({ job }) => job !== 'man_back');
  const staying = others.sort((a, b) => stayOrder(a, picture) - stayOrder(b, picture) || nearestFirst(a, b));
  return [
    ...declared.map(({ role, lane }) => ({ role, lane })),
    ...[...onBack, ...staying.slice(0, receiversIn)].map(({ role }) => ({ role })),
  ];
}

function depthOf({ role }: LateMan, roles: readonly Role[]): number {
  return roles.find(({ id }) => id === role)?.depth ?? 0;
}

/** Which receiver stays in first: an inside one before a wide one, on the side away from the slide before the other. */
function stayOrder({ job }: Call['cover'][number], { slide }: ProtectionPicture): number {
  const wide = job.startsWith('man_1') ? 2 : 0;
  return wide + (slide !== 'none' && job.endsWith(slide) ? 1 : 0);
}

/** The first lane from the inside that nobody has, on the side away from the slide; as declared when nothing slides. */
function openLane(taken: readonly Lane[], declared: Lane, { slide }: ProtectionPicture): Lane {
  if (slide === 'none') return taken.includes(declared) ? firstOpen(taken, sideOf(declared)) : declared;
  return firstOpen(taken, slide === 'near' ? 'far' : 'near');
}

function firstOpen(taken: readonly Lane[], side: 'near' | 'far'): Lane {
  const lanes = (['A', 'B', 'C', 'D'] as const).map((gap): Lane => `${side}_${gap}`);
  return lanes.find((lane) => !taken.includes(lane)) ?? `${side}_D`;
}

function startingLane(role: string, call: Call, roles: readonly Role[]): Lane {
  const man = roles.find(({ id }) => id === role);
  return man && usualSpot(man, call).lateral < 0 ? 'far_A' : 'near_A';
}

interface RushContext {
  readonly call: Call;
  readonly roles: readonly Role[];
  readonly counted: ReadonlyMap<string, CountedBy>;
}

type RushEntry = Pick<Call['rush'][number], 'role' | 'lane' | 'way' | 'from'> & { readonly late: boolean };

function rusherOf({ call, roles, counted }: RushContext, entry: RushEntry): Rusher[] {
  const man = roles.find(({ id }) => id === entry.role);
  if (!man) return [];
  const { role, lane, way, late } = entry;
  const spot = entry.from ?? usualSpot(man, call);
  const path = rushYards(spot, lane, SHOWN_PASSER_DEPTH);
  return [{ role, lane, way, late, path, man, spot, countedBy: counted.get(role) ?? 'nobody' }];
}

/**
 * Who has each of our men in a man protection: linemen take our linemen and then linebackers inside out until
 * five are counted; the back reads the rest of the men within five yards of the ball's line and eight of the ball
 * (judgment); a man from depth is nobody's until film shows him to them.
 */
function countOf(call: Call, roles: readonly Role[]): ReadonlyMap<string, CountedBy> {
  const spotted = roles.map((role) => ({ role, spot: countSpot(role, call) }));
  const box = spotted
    .filter(({ role, spot }) => role.group === 'line' || (spot.depth <= 5 && Math.abs(spot.lateral) <= 8))
    .sort((a, b) => groupOrder(a.role) - groupOrder(b.role) || Math.abs(a.spot.lateral) - Math.abs(b.spot.lateral));
  const across = box.slice(0, LINE_SPOTS.length).sort((a, b) => acrossOrder(a) - acrossOrder(b));
  const counted = new Map<string, CountedBy>();
  for (const { role } of box) counted.set(role.id, 'back');
  across.forEach(({ role }, i) => {
    counted.set(role.id, LINE_SPOTS[i] ?? 'back');
  });
  return counted;
}

function countSpot(role: Role, call: Call): Spot {
  const rusher = call.rush.find((entry) => entry.role === role.id);
  return rusher ? rushSpot(rusher, role, call) : usualSpot(role, call);
}

function groupOrder({ group }: Role): number {
  return { line: 0, linebacker: 1, secondary: 2 }[group];
}

/** From the far side to the near side; at one width a lineman counts as the wider man. */
function acrossOrder({ role, spot }: { readonly role: Role; readonly spot: Spot }): number {
  return spot.lateral + Math.sign(spot.lateral) * (role.group === 'line' ? 0.01 : 0);
}
