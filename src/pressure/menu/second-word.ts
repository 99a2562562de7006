import type { Call, Role } from '../../game/call-library.ts';
import { coverJobFacts } from '../../game/cover-jobs.ts';
import { solveAssignment } from '../../stats/assignment.ts';
import { checkCall } from '../soundness/soundness.ts';
import { closedCall } from './closed.ts';
import type { MenuInput } from './input.ts';
import type { SecondWord } from './result.ts';
import { isPlainlyWrong } from './worth.ts';

/** Second words named for a path. */
const NAMED = 2;

/**
 * Coverages of the library that could be taught behind a path that has none but its usual one: the path's rushers as they
 * are, the coverage's jobs given to the men who are left, each the nearest to where it is usually played from. Only what
 * is sound, is not closed by what they do, and is not plainly wrong against them is named; most right first.
 */
export function secondWords(input: MenuInput, path: string): readonly SecondWord[] {
  const { library } = input;
  const rush = library.calls.find((call) => call.path === path);
  const taught = new Set(library.calls.filter((call) => call.path === path).map(({ coverage }) => coverage));
  if (rush === undefined) return [];
  const donors = library.calls.filter(({ coverage, family }) => !taught.has(coverage) && family !== 'base');
  return [...new Set(donors.map(({ coverage }) => coverage))]
    .flatMap((coverage): SecondWord[] => {
      const built = donors
        .filter((donor) => donor.coverage === coverage)
        .flatMap((donor) => putBehind(rush, donor, library.roles));
      const [nearest] = built.sort((a, b) => a.apart - b.apart);
      return nearest === undefined ? [] : worthNaming(input, nearest.call);
    })
    .sort((a, b) => b.net - a.net)
    .slice(0, NAMED);
}

function worthNaming(input: MenuInput, call: Call): SecondWord[] {
  const { coverage, family } = call;
  const net = input.fit.families.find((one) => one.family === family && one.situation === 'all')?.net;
  if (net === undefined || isPlainlyWrong(net) || closedCall(input, call).hole !== null) return [];
  if (checkCall(call, input.library).some(({ declared }) => !declared)) return [];
  return [{ coverage, family, net: net.mean, men: call.cover.map(({ role, job }) => ({ role, job })) }];
}

interface PutBehind {
  readonly call: Call;
  /** Yards by which its men are farther from where the jobs are usually played from, in all. */
  readonly apart: number;
}

/** The coverage of one call behind the rush of another; nothing where the men do not come out even. */
function putBehind(rush: Call, donor: Call, roles: readonly Role[]): PutBehind[] {
  const rushing = new Set(rush.rush.map(({ role }) => role));
  const free = roles.filter(({ id }) => !rushing.has(id));
  const late = [...rush.rush, ...donor.rush].some(({ way }) => way === 'late_if_back_blocks');
  const peels = donor.rush.some((man) => man.peels);
  if (late || peels || free.length !== donor.cover.length) return [];
  const place = (call: Call, id: string) =>
    placeOf(
      call,
      roles.find((role) => role.id === id),
    );
  const costs = donor.cover.map(({ role, job }) => {
    const usual = place(donor, role);
    return free.map((man) => (canDo(man, job) ? apart(usual, placeOf(rush, man)) : Number.POSITIVE_INFINITY));
  });
  const { columnOfRow, total } = solveAssignment(costs);
  if (columnOfRow.some((column) => column < 0)) return [];
  const cover = donor.cover.map((man, i) => ({ ...man, role: (free[columnOfRow[i] as number] as Role).id }));
  const name = `${rush.path}, ${donor.coverage}`;
  const call = { ...donor, name, path: rush.path, sent_from: rush.sent_from, rush: withoutPeels(rush), cover };
  return [{ call, apart: total }];
}

function withoutPeels({ rush }: Call): Call['rush'] {
  return rush.map((man) => ({ ...man, peels: false }));
}

function canDo({ cannot }: Role, job: Call['cover'][number]['job']): boolean {
  return !cannot.includes(coverJobFacts(job).demand);
}

interface Place {
  /** Yards toward the side the call is sent from, and off the ball. */
  readonly near: number;
  readonly depth: number;
}

function placeOf({ sent_from }: Call, role: Role | undefined): Place {
  const side = sent_from === 'boundary' ? -1 : 1;
  return { near: side * (role?.lateral ?? 0), depth: role?.depth ?? 0 };
}

function apart(one: Place, other: Place): number {
  return Math.hypot(one.near - other.near, one.depth - other.depth);
}
