import type { Call, Demand, Role } from '../../game/call-library.ts';
import { coverJobFacts } from '../../game/cover-jobs.ts';
import type { Failure, Fault } from './fault.ts';

/** Men without a job, with two, not of our eleven, or at a job they are not asked to do. */
export function menFaults(call: Call, roles: readonly Role[]): Fault[] {
  return [...countFaults(call, roles), ...strangerFaults(call, roles), ...cannotFaults(call, roles)];
}

function countFaults(call: Call, roles: readonly Role[]): Fault[] {
  const used = jobHolders(call);
  return roles.flatMap(({ id, title }): Fault[] => {
    const jobs = used.filter((role) => role === id).length;
    if (jobs === 1) return [];
    const failure: Failure = jobs === 0 ? { kind: 'no_job', man: title } : { kind: 'several_jobs', man: title, jobs };
    return [{ failure, role: id }];
  });
}

function strangerFaults(call: Call, roles: readonly Role[]): Fault[] {
  const known = new Set(roles.map(({ id }) => id));
  const strangers = [...new Set(jobHolders(call))].filter((role) => !known.has(role));
  return strangers.map((role) => ({ failure: { kind: 'stranger', man: role }, role }));
}

function cannotFaults(call: Call, roles: readonly Role[]): Fault[] {
  return roles.flatMap((role) => {
    const asked = demandsOn(role.id, call).filter((demand) => role.cannot.includes(demand));
    return asked.map((demand): Fault => ({ failure: { kind: 'cannot', man: role.title, demand }, role: role.id }));
  });
}

/** What a call asks of one man. */
export function demandsOn(role: string, { rush, cover }: Call): Demand[] {
  const rushing = rush.filter((man) => man.role === role);
  const covering = cover.filter((man) => man.role === role);
  return [
    ...(rushing.length > 0 || covering.some(({ adds }) => adds) ? (['rush'] as const) : []),
    ...(rushing.some(({ peels }) => peels) ? (['peel'] as const) : []),
    ...covering.map(({ job }) => coverJobFacts(job).demand),
  ];
}

function jobHolders({ rush, cover }: Call): string[] {
  return [...rush, ...cover].map(({ role }) => role);
}
