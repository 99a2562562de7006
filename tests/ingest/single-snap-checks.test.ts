import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../src/game/film.ts';
import { createSnapChecks } from '../../src/ingest/single-snap-checks.ts';

const findings = (snap: SnapRecord) => {
  const { columns } = filmFromRecords([snap]);
  return createSnapChecks(columns)
    .map((check) => check(0))
    .filter((finding) => finding !== undefined);
};
const PLACE: SnapRecord = { down: 1, to_go: 10, ball_on: 65 };

describe('checks within one snap', () => {
  const table: readonly { what: string; snap: SnapRecord; finds: string | undefined }[] = [
    { what: 'a distance up to the goal line', snap: { to_go: 5, ball_on: 5 }, finds: undefined },
    { what: 'a distance beyond the goal line', snap: { to_go: 6, ball_on: 5 }, finds: 'fault to_go' },
    { what: 'a touchdown', snap: { ...PLACE, gain: 65 }, finds: undefined },
    { what: 'a gain beyond the goal line', snap: { ...PLACE, gain: 66 }, finds: 'fault gain' },
    { what: 'a safety', snap: { ...PLACE, ball_on: 95, gain: -5 }, finds: undefined },
    { what: 'a loss beyond the own goal line', snap: { ...PLACE, ball_on: 95, gain: -6 }, finds: 'fault gain' },
    { what: 'both backs released', snap: { personnel: '21', backs_released: 2 }, finds: undefined },
    {
      what: 'more backs released than there are',
      snap: { personnel: '11', backs_released: 2 },
      finds: 'fault backs_released',
    },
    { what: 'seven protectors from 11', snap: { personnel: '11', protectors: 7 }, finds: undefined },
    { what: 'eight protectors from 11', snap: { personnel: '11', protectors: 8 }, finds: 'fault protectors' },
    {
      what: 'eight protectors from 11 with a sixth lineman',
      snap: { personnel: '11*', protectors: 8 },
      finds: undefined,
    },
    {
      what: 'seven protectors from 11 with the back out',
      snap: { personnel: '11', protectors: 7, backs_released: 1 },
      finds: 'fault protectors',
    },
    {
      what: 'a job for no back (spot)',
      snap: { back_spot: 'none', back_action: 'blocks' },
      finds: 'fault back_action',
    },
    {
      what: 'a job for no back (personnel)',
      snap: { personnel: '02', back_action: 'blocks' },
      finds: 'fault back_action',
    },
    {
      what: 'a tight end in the back spot',
      snap: { personnel: '02', back_spot: 'weak', back_action: 'blocks' },
      finds: undefined,
    },
    { what: 'no back and no job', snap: { back_spot: 'none', back_action: 'none' }, finds: undefined },
    { what: 'a time to throw on a sack', snap: { result: 'sack', time_to_throw: 3 }, finds: 'warning time_to_throw' },
    { what: 'a time to throw on a throw', snap: { result: 'complete', time_to_throw: 3 }, finds: undefined },
    { what: 'eight rushers', snap: { rushers_faced: 8 }, finds: undefined },
    { what: 'nine rushers', snap: { rushers_faced: 9 }, finds: 'warning rushers_faced' },
    { what: 'no rusher', snap: { rushers_faced: 0 }, finds: 'warning rushers_faced' },
    { what: 'a run that was caught', snap: { play_kind: 'run', result: 'complete' }, finds: 'warning result' },
    { what: 'a run', snap: { play_kind: 'run', result: 'rush' }, finds: undefined },
  ];

  it.each(table)('$what: $finds', ({ snap, finds }) => {
    const found = findings(snap).map(({ severity, column }) => `${severity} ${column}`);
    expect(found).toEqual(finds === undefined ? [] : [finds]);
  });

  it('never finds anything in what was not charted', () => {
    const charted: SnapRecord = {
      ...{ to_go: 10, ball_on: 5, gain: 50, backs_released: 3, protectors: 10, back_action: 'blocks' },
      ...{ personnel: '00', back_spot: 'none', time_to_throw: 3, result: 'sack', rushers_faced: 11, play_kind: 'run' },
    };
    const alone = Object.entries(charted).filter(([name]) => name !== 'rushers_faced');
    for (const [name, value] of alone) expect(findings({ [name]: value }), name).toEqual([]);
    const blank = filmFromRecords([charted, {}]);
    for (const check of createSnapChecks(blank.columns)) expect(check(1)).toBeUndefined();
  });
});
