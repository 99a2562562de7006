import type { Call } from '../../game/call-library.ts';
import { coverJobFacts } from '../../game/cover-jobs.ts';
import { familyFacts, type MenKind } from '../../game/families.ts';
import type { Fault } from './fault.ts';
import { edgePeelSides } from './peel.ts';

const MEN_WORDS: Readonly<Record<MenKind, (count: number) => string>> = {
  rush: (count) => `${count} rush at the snap`,
  late: (count) => `${count} join late`,
  deep: (count) => `${count} play deep`,
  man: (count) => `${count} play man to man`,
  under: (count) => `${count} drop under`,
  hot: (count) => `${count} play hot`,
  spy: (count) => `${count} spy`,
  peels: (count) => `edges peel on ${count} of 2 sides`,
};

/** Counts that do not belong to the family the call names. */
export function familyFaults(call: Call): Fault[] {
  const wanted = familyFacts(call.family).men;
  const found = countsOf(call);
  return (Object.keys(wanted) as MenKind[]).flatMap((kind): Fault[] => {
    const need = wanted[kind] ?? 0;
    const fits = kind === 'late' && need > 0 ? found[kind] >= need : found[kind] === need;
    if (fits) return [];
    const family = familyFacts(call.family).words;
    return [{ rule: 'family', words: `${MEN_WORDS[kind](found[kind])}; ${family} has ${need}` }];
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
