import type { Call, Role } from '../../game/call-library.ts';
import { coverJobFacts } from '../../game/cover-jobs.ts';
import type { Fault } from './fault.ts';

/** Men without a job, with two, not of our eleven, or at a job they are not asked to do. */
export function menFaults(call: Call, roles: readonly Role[]): Fault[] {
  return [...countFaults(call, roles), ...strangerFaults(call, roles), ...cannotFaults(call, roles)];
}

function countFaults(call: Call, roles: readonly Role[]): Fault[] {
  const used = jobHolders(call);
  return roles.flatMap(({ id, title }): Fault[] => {
    const jobs = used.filter((role) => role === id).length;
    if (jobs === 1) return [];
    const words = jobs === 0 ? `${title} has no job: eleven men, one job each` : `${title} has ${jobs} jobs`;
    return [{ rule: 'eleven men', role: id, words }];
  });
}

function strangerFaults(call: Call, roles: readonly Role[]): Fault[] {
  const known = new Set(roles.map(({ id }) => id));
  const strangers = [...new Set(jobHolders(call))].filter((role) => !known.has(role));
  return strangers.map((role) => ({ rule: 'eleven men', role, words: `${role} is not one of our eleven` }));
}

function cannotFaults(call: Call, roles: readonly Role[]): Fault[] {
  return roles.flatMap((role) => {
    const asked = demandsOn(role.id, call).filter((demand) => role.cannot.includes(demand));
    return asked.map((demand) => ({
      rule: 'cannot',
      role: role.id,
      words: `${role.title} is not asked to ${DEMAND_WORDS[demand]}, and this call asks it`,
    }));
  });
}

/** A kind of job a man can be asked to do, or not. */
export type Demand = Role['cannot'][number];

const DEMAND_WORDS: Readonly<Record<Demand, string>> = {
  rush: 'rush',
  drop: 'drop into a zone',
  man: 'play man to man',
  deep: 'play deep',
  peel: 'peel with a back',
  spy: 'spy the quarterback',
};

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
