import { ANSWER_TABLE, type Answer } from '../../game/answers.ts';
import { type Family, familyFacts } from '../../game/families.ts';
import { eachAnswer } from './by-answer.ts';
import { type Measured, OPEN_BASE, OPEN_DIFFERENCES, OPEN_RUN_SHARES } from './open-data-table.ts';
import { EXPLOSIVES_POOLED, shrunkEffect } from './open-data-trust.ts';

/** To be printed with any figure made from the open-data table, which is under CC BY-SA 4.0 itself. */
export const OPEN_DATA_ATTRIBUTION =
  'Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse (CC BY-SA 4.0). Participation: NFL NextGenStats ' +
  'via nflverse (CC BY-SA 4.0). Columns selected, renamed and joined; families, answers and outcomes derived.';

/**
 * Outcome shares against a plain four-man rush when the offense answers so, in the order of the outcome kinds; for runs
 * those against six and seven in the box, whoever rushed.
 */
export function baseShares(answer: Answer): Readonly<Float64Array> {
  return BASE_SHARES[answer];
}

const BASE_SHARES = eachAnswer((answer) => {
  const proxy = ANSWER_TABLE[answer].openData;
  const shares = Float64Array.from(proxy === null ? OPEN_RUN_SHARES : OPEN_BASE[proxy]);
  const total = shares.reduce((sum, value) => sum + value, 0);
  return shares.map((value) => value / total);
});

/**
 * How much more often a dropback against a family is explosive than against four rushers, as a share, with its error;
 * pulled to all pressures as far as families do not differ by more than chance.
 */
export function extraExplosives(family: Family): Measured {
  if (family === 'base') return { value: 0, error: 0 };
  const proxy = familyFacts(family).openData;
  if (proxy === null || proxy === 'base') {
    return { value: EXPLOSIVES_POOLED.mean, error: Math.sqrt(EXPLOSIVES_POOLED.between) };
  }
  return shrunkEffect(OPEN_DIFFERENCES[proxy].explosive, EXPLOSIVES_POOLED);
}
