import type { LibraryProblem } from '../call-library-checks.ts';
import { buildCover } from './build-cover.ts';
import { buildRush, type RushParts } from './build-rush.ts';
import { layCover } from './lay-cover.ts';
import { tradeSides } from './trade-sides.ts';
import type { WrittenCall, WrittenCoverage, WrittenDefense, WrittenPath } from './written-defense.ts';

/** What one call is put together from: its own words first, then its coverage, then its path. */
export interface CallParts {
  readonly call: WrittenCall;
  /** Index of the call in the file. */
  readonly at: number;
  readonly path: WrittenPath | undefined;
  readonly coverage: WrittenCoverage | undefined;
  readonly defense: WrittenDefense;
}

/** A call in full, before its own checks, and what kept it from being put together. */
export interface PutTogether {
  readonly call: Readonly<Record<string, unknown>>;
  readonly problems: readonly LibraryProblem[];
}

/** One call in full from its path, its coverage and what it says itself. */
export function putTogether(parts: CallParts): PutTogether {
  const { call, path, coverage, defense } = parts;
  const missing = missingParts(parts);
  if (missing.length > 0) return { call: {}, problems: missing };
  const sentFrom = call.sent_from ?? path?.sent_from;
  const boundary = sentFrom === 'boundary';
  const behind = boundary && coverage ? { ...coverage, ...tradeSides(coverage, defense.trade) } : coverage;
  const rush = buildRush(rushParts(parts, behind, boundary), defense.roles);
  const { cover, open } = buildCover(
    layCover(behind?.cover, call.cover) ?? {},
    rush.map(({ role }) => role),
  );
  const { send: _s, drop: _d, late: _l, edges_peel: _e, like: _k, ...said } = call;
  const { like: _c, cover: _o, late: _a, edges_peel: _p, ...fromCoverage } = behind ?? {};
  const rotation = call.rotation ?? coverage?.rotation ?? path?.rotation;
  const full = {
    ...fromCoverage,
    ...said,
    ...(sentFrom && { sent_from: sentFrom }),
    ...(rotation && { rotation }),
    adjust: { ...coverage?.adjust, ...call.adjust },
    ...{ rush, cover },
  };
  return { call: full, problems: open.map(({ job, men }) => openJob(parts, job, men)) };
}

function missingParts({ call, at, path, coverage, defense }: CallParts): LibraryProblem[] {
  const problems: LibraryProblem[] = [];
  const missing = (key: 'path' | 'coverage', known: object, instead: string) => {
    const names = Object.keys(known).join(', ') || `none yet; write it under ${key}s`;
    const what =
      call[key] === undefined ? `says no ${key}: write one of` : `has a ${key} that does not stand under ${key}s:`;
    problems.push({ path: ['calls', at, key], message: `${call.name} ${what} ${names}; or ${instead}` });
  };
  if (!path && !call.rush && !call.send) missing('path', defense.paths, 'who rushes in this call under rush');
  if (!coverage && !call.cover) missing('coverage', defense.coverages, 'who covers in this call under cover');
  const boundary = (call.sent_from ?? path?.sent_from) === 'boundary';
  if (boundary && !Array.isArray(call.cover) && coverage?.cover && defense.trade.length === 0) {
    problems.push({
      path: ['calls', at, 'name'],
      message: `${call.name} is sent from the boundary: write trade, the pairs of men who trade places then, such as trade: [[corner_field, corner_boundary]], or write all of its cover as a list`,
    });
  }
  return problems;
}

/** A path written from one side and called from the other has its men traded. */
function rushParts({ call, path, defense }: CallParts, behind: CallParts['coverage'], boundary: boolean): RushParts {
  const own = call.rush !== undefined || call.send !== undefined;
  const turned = path !== undefined && (path.sent_from === 'boundary') !== boundary;
  const ofPath = path && turned ? tradeSides(path, defense.trade) : path;
  return {
    men: own ? call : (ofPath ?? {}),
    late: call.late ?? behind?.late,
    edgesPeel: call.edges_peel ?? behind?.edges_peel ?? path?.edges_peel ?? false,
    boundary,
  };
}

function openJob({ call, at }: CallParts, job: string, men: readonly string[]): LibraryProblem {
  const where = call.cover ? 'here' : `under coverages, ${call.coverage}, cover`;
  const message = `${call.name}: nobody is left for ${job}: ${men.join(' and ')} ${men.length > 1 ? 'rush or have' : 'rushes or has'} another job; name one more man for it ${where}, or write ${job}: none in the call`;
  return { path: ['calls', at, call.cover ? 'cover' : 'coverage'], message };
}
