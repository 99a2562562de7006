import { type Call, LANES, type Lane, type Role } from '../call-library.ts';
import { type RushWords, readRushWords } from './man-words.ts';
import { standardLanes } from './standard-lanes.ts';
import type { WrittenCall } from './written-defense.ts';

/** A rusher in full, before defaults. */
type FullRusher = Pick<Call['rush'][number], 'role'> & Partial<Call['rush'][number]>;

/** Who rushes as written, and what the coverage asks of the rush. */
export interface RushParts {
  readonly men: Pick<WrittenCall, 'send' | 'drop' | 'rush'>;
  readonly late: string | undefined;
  readonly edgesPeel: boolean;
  readonly boundary: boolean;
}

/** Everyone who rushes, each with his lane: as written, else by the standard of where he lines up. */
export function buildRush(parts: RushParts, roles: readonly Role[]): FullRusher[] {
  const men = listedMen(parts, roles);
  const lanes = standardLanes(
    men.filter((man) => man.way !== 'late_if_back_blocks').map((man) => starterOf(man, parts, roles)),
  );
  const laned = men.map((man): FullRusher => {
    const lane = man.lane ?? lanes.get(man.role);
    return lane === undefined ? man : { ...man, lane };
  });
  const peeling = parts.edgesPeel ? peelEdges(laned) : laned;
  return [...peeling, ...lateMan(parts, peeling)];
}

function listedMen({ men }: RushParts, roles: readonly Role[]): FullRusher[] {
  if (men.rush !== undefined) return men.rush.map((one) => (typeof one === 'string' ? wordsOf(one) : one));
  const sent = (men.send ?? []).map(wordsOf);
  const out = new Set([...(men.drop ?? []).map((text) => wordsOf(text).role), ...sent.map(({ role }) => role)]);
  const linemen = roles.filter(({ group, id }) => group === 'line' && !out.has(id)).map(({ id }) => ({ role: id }));
  return [...sent, ...linemen];
}

/** Words that cannot be read were named before a rush is built. */
function wordsOf(text: string): RushWords {
  const read = readRushWords(text);
  return read.kind === 'man' ? read.man : { role: text };
}

function starterOf({ role, lane, from }: FullRusher, { boundary }: RushParts, roles: readonly Role[]) {
  const man = roles.find(({ id }) => id === role);
  const usual = (boundary ? -1 : 1) * (man?.lateral ?? 0);
  const spot = from ?? { lateral: usual, depth: man?.depth ?? 0 };
  return { role, ...spot, lineman: man?.group === 'line', lane };
}

/** The widest man of each side, if he rushes outside the tackle. */
function peelEdges(men: readonly FullRusher[]): FullRusher[] {
  const widest = (['near', 'far'] as const).map((side) => {
    const lanes: readonly Lane[] = [`${side}_D`, `${side}_C`];
    return lanes.map((lane) => men.find((man) => man.lane === lane && man.way !== 'late_if_back_blocks')).find(Boolean);
  });
  return men.map((man) => (widest.includes(man) ? { ...man, peels: true } : man));
}

/** The man who joins late goes through the lane written, else the first one open near, from the inside. */
function lateMan({ late }: RushParts, men: readonly FullRusher[]): FullRusher[] {
  if (late === undefined) return [];
  const words = wordsOf(late);
  const nearest = LANES.filter((lane) => lane.startsWith('near'));
  const lane = words.lane ?? nearest.find((open) => !men.some((man) => man.lane === open)) ?? 'near_D';
  return [{ role: words.role, lane, way: 'late_if_back_blocks' }];
}
