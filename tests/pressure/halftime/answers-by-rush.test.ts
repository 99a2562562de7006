import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { answersByRush } from '../../../src/pressure/halftime/answers-by-rush.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const { library, settings } = inventedPlan();

describe('their answers tonight by how many we sent', () => {
  it('counts runs, passes by kind and what held, by the rushers charted or the men of our call', () => {
    const live = filmFromRecords([
      { down: 1, to_go: 10, play_kind: 'run', gain: 2, call: 'Steady' },
      { down: 1, to_go: 10, play_kind: 'quick', gain: 8, call: 'Rake' },
      { down: 2, to_go: 9, play_kind: 'screen', gain: -2, call: 'Steady', rushers_faced: 6 },
      { down: 2, to_go: 9, play_kind: 'screen', rushers_faced: 5 },
      { down: 2, to_go: 9, play_kind: 'run', gain: 1, call: 'Nobody knows' },
    ]);
    const found = answersByRush(live, library, settings.situations);
    expect(found.map(({ group, snaps }) => [group, snaps])).toEqual([
      ['four', 1],
      ['five', 2],
      ['six_or_more', 1],
    ]);
    expect(found[0]).toMatchObject({ runs: { count: 1, trials: 1 }, passes: [], held: { count: 1, trials: 1 } });
    expect(found[1]?.passes).toEqual([
      { answer: 'screen', count: 1 },
      { answer: 'quick', count: 1 },
    ]);
    expect(found[1]).toMatchObject({ runs: { count: 0, trials: 2 }, held: { count: 0, trials: 1 } });
    expect(found[2]).toMatchObject({ runs: { count: 0, trials: 1 }, held: { count: 1, trials: 1 } });
  });

  it('says nothing of snaps with neither a call nor rushers', () => {
    const live = filmFromRecords([{ down: 1, to_go: 10, play_kind: 'run', gain: 2 }]);
    expect(answersByRush(live, null, settings.situations)).toEqual([]);
  });
});
