import { filmFromRecords, type SnapRecord } from '../../src/game/film.ts';
import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import { differentChapter } from '../../src/pressure/different/different.ts';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { pressuredChapter } from '../../src/pressure/pressured/pressured.ts';
import { opponentTables } from '../../src/pressure/tables/tables.ts';
import { countedForecast, type InventedOffense, inventedRecords } from '../pressure/invented-offense.ts';

/** What a staff asks first, counted on invented snaps of an offense that screens when five come. */
export function inventedQuestions(): Pick<WeekPlan, 'pressured' | 'tables' | 'different'> {
  const cuts = weekSettingsSchema.parse({ opponent: 'Larkmoor Herons' }).situations;
  const chart = filmFromRecords(faced(inventedRecords({ snaps: 236 }), 'Larkmoor Herons'));
  const archive = filmFromRecords(OTHERS.flatMap(([offense, mix]) => faced(inventedRecords(mix), offense)));
  const { forecasts, tells } = countedForecast(chart);
  const pressured = pressuredChapter({ chart, archive, forecasts, cuts });
  const tables = opponentTables({ chart, archive, cuts });
  return { pressured, tables, different: differentChapter({ chart, archive, cuts, pressured, tells }) };
}

const OTHERS: readonly (readonly [string, InventedOffense])[] = [
  ['Alder Gap', { answers: { run: 52, screen: 4, quick: 20, dropback: 24 } }],
  ['Coldbrook', { answers: { run: 48, screen: 3, quick: 22, dropback: 27 } }],
  ['Pinlow', { answers: { run: 50, screen: 5, quick: 18, dropback: 27 } }],
];

/** The same snaps in four games, five rushers on every third of them and on all screens but one in four. */
function faced(records: readonly SnapRecord[], offense: string): SnapRecord[] {
  return records.map((snap, i): SnapRecord => {
    const five = snap['play_kind'] === 'screen' ? i % 4 !== 0 : i % 3 === 0;
    return { ...snap, offense, game: `w0${1 + (i % 4)} ${offense}`, ...lined(snap, i), ...rushed(five) };
  });
}

function lined(snap: SnapRecord, i: number): SnapRecord {
  return {
    formation: snap['receivers'] === '3x1' ? 'trey' : 'doubles',
    hash: ['left', 'middle', 'right'][i % 3] as string,
    strength: ['left', 'right'][i % 2] as string,
    tempo: i % 7 === 0 ? 'freeze' : 'huddle',
    checked: i % 21 === 0 ? 'yes' : 'no',
    concept: `play ${String(snap['play_kind']).slice(0, 1)}`,
  };
}

function rushed(five: boolean): SnapRecord {
  return five ? { rushers_faced: 5, coverage_faced: 'man_free' } : { rushers_faced: 4, coverage_faced: 'three_deep' };
}
