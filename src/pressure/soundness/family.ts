import type { Call } from '../../game/call-library.ts';
import type { Family } from '../../game/vocabulary.ts';
import type { Fault } from './fault.ts';
import { demandOf } from './men.ts';
import { edgePeelSides } from './peel.ts';

/** How many men of each kind a call has: at the snap, joining late, deep, man to man, under, hot, spying, peel sides. */
type Count = 'rush' | 'late' | 'deep' | 'man' | 'under' | 'hot' | 'spy' | 'peels';

/**
 * What each family is made of: five rush with three under and three deep, and so on; judgment where a system differs.
 * `late` counts as at least, everything else as exactly.
 */
const FAMILY_COUNTS: Readonly<Record<Family, Readonly<Partial<Record<Count, number>>>>> = {
  base: { rush: 4, late: 0 },
  three_under: { rush: 5, under: 3, deep: 3, late: 0 },
  four_under: { rush: 5, under: 4, deep: 2, late: 0 },
  man_free: { rush: 5, man: 5, deep: 1, late: 0 },
  hot: { rush: 6, hot: 2, deep: 3, late: 0 },
  zero: { rush: 6, man: 5, deep: 0, late: 0 },
  peel: { rush: 6, man: 4, deep: 1, peels: 2, late: 0 },
  peel_spy: { rush: 5, spy: 1, man: 4, deep: 1, peels: 2, late: 0 },
  add_on: { rush: 6, man: 4, deep: 0, peels: 2, late: 1 },
};

const COUNT_WORDS: Readonly<Record<Count, (count: number) => string>> = {
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
  const wanted = FAMILY_COUNTS[call.family];
  const found = countsOf(call);
  return (Object.keys(wanted) as Count[]).flatMap((kind): Fault[] => {
    const need = wanted[kind] ?? 0;
    const fits = kind === 'late' && need > 0 ? found[kind] >= need : found[kind] === need;
    if (fits) return [];
    const family = call.family.replace('_', ' ');
    return [{ rule: 'family', words: `${COUNT_WORDS[kind](found[kind])}; ${family} has ${need}` }];
  });
}

function countsOf(call: Call): Record<Count, number> {
  const { rush, cover } = call;
  const started = rush.filter(({ way }) => way !== 'late_if_back_blocks');
  const demands = cover.map(({ job }) => demandOf(job));
  return {
    rush: started.length,
    late: rush.length - started.length,
    deep: demands.filter((demand) => demand === 'deep').length,
    man: demands.filter((demand) => demand === 'man').length,
    under: demands.filter((demand) => demand === 'drop').length,
    hot: cover.filter(({ job }) => job.startsWith('hot')).length,
    spy: demands.filter((demand) => demand === 'spy').length,
    peels: edgePeelSides(call).length,
  };
}
