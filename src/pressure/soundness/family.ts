import type { Call } from '../../game/call-library.ts';
import { coverJobFacts } from '../../game/cover-jobs.ts';
import { familyFacts, type MenKind } from '../../game/families.ts';
import type { Fault } from './fault.ts';
import { edgePeelSides } from './peel.ts';

/** Counts that do not belong to the family the call names. */
export function familyFaults(call: Call): Fault[] {
  const { family } = call;
  const made = familyFacts(family).men;
  const counts = countsOf(call);
  return (Object.entries(made) as [MenKind, number][]).flatMap(([men, wanted]): Fault[] => {
    const found = counts[men];
    const fits = men === 'late' && wanted > 0 ? found >= wanted : found === wanted;
    return fits ? [] : [{ failure: { kind: 'not_the_family', family, men, found, wanted } }];
  });
}

function countsOf(call: Call): Record<MenKind, number> {
  const { rush, cover } = call;
  const started = rush.filter(({ way }) => way !== 'late_if_back_blocks');
  const demands = cover.map(({ job }) => coverJobFacts(job).demand);
  return {
    rush: started.length,
    late: rush.length - started.length,
    deep: demands.filter((demand) => demand === 'deep').length,
    man: demands.filter((demand) => demand === 'man').length,
    under: demands.filter((demand) => demand === 'drop').length,
    hot: cover.filter(({ job }) => coverJobFacts(job).hot).length,
    spy: demands.filter((demand) => demand === 'spy').length,
    peels: edgePeelSides(call).length,
  };
}
