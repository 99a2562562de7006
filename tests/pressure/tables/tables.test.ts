import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { opponentTables } from '../../../src/pressure/tables/tables.ts';
import type { OpponentTables, TableSplit } from '../../../src/pressure/tables/tables-result.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

const RUN: SnapRecord = { play_kind: 'run', concept: 'power', result: 'rush' };
const THROW: SnapRecord = { play_kind: 'quick', concept: 'stick', result: 'complete' };
/** Of eight snaps in a row. */
const RUNS = [0, 2, 6];

/** Forty snaps in two games, written out so that every count below can be made by hand. */
const RECORDS: readonly SnapRecord[] = Array.from(
  { length: 40 },
  (_, i): SnapRecord => ({
    offense: 'Cinder Vale',
    game: i < 20 ? 'w1' : 'w2',
    drive: Math.floor(i / 5) + 1,
    down: [1, 2, 3, 4, 1][i % 5] as number,
    to_go: 10,
    ball_on: [95, 60, 15, 3][i % 4] as number,
    hash: ['left', 'right', 'middle', 'left'][i % 4] as string,
    strength: ['right', 'right', 'left', 'left'][i % 4] as string,
    formation: ['trey', 'doubles', 'doubles', 'doubles'][i % 4] as string,
    gain: 3,
    ...(RUNS.includes(i % 8) ? RUN : THROW),
    ...(i < 30 ? { tempo: i % 3 === 0 ? 'freeze' : 'huddle' } : {}),
    ...(i < 20 ? { checked: i % 6 === 0 ? 'yes' : 'no' } : {}),
  }),
);

const tablesOf = (records: readonly SnapRecord[], others: readonly SnapRecord[] | null = null) =>
  opponentTables({ chart: filmFromRecords(records), archive: others && filmFromRecords(others), cuts });

const rowOf = ({ tables }: OpponentTables, by: TableSplit, value: string) =>
  tables.find((table) => table.by === by)?.rows.find((row) => row.value === value);

describe('opponentTables', () => {
  it('counts runs, plays and concepts of a formation over its own snaps', () => {
    const trey = rowOf(tablesOf(RECORDS), 'formation', 'trey');
    expect(trey?.used.film).toMatchObject({ count: 10, trials: 40 });
    expect(trey?.runs.film).toMatchObject({ count: 5, trials: 10 });
    expect(trey?.answers).toEqual({
      top: [
        { name: 'quick', count: 5 },
        { name: 'run', count: 5 },
      ],
      trials: 10,
    });
    expect(trey?.concepts.trials).toBe(10);
    expect(trey?.snaps).toEqual([0, 4, 8, 12, 16, 20, 24, 28, 32, 36]);
    expect(trey?.runs.games).toEqual([
      { game: 'w1', count: 3, trials: 5 },
      { game: 'w2', count: 2, trials: 5 },
    ]);
  });

  it('cuts the field where the staff does, and tells field from boundary', () => {
    const tables = tablesOf(RECORDS);
    const used = (by: TableSplit, value: string) => rowOf(tables, by, value)?.used.film.count;
    expect(['backed_up', 'open_field', 'red_zone', 'goal_line'].map((zone) => used('field_zone', zone))).toEqual([
      10, 10, 10, 10,
    ]);
    // Left hash with strength right is to the field; right hash with strength right into the boundary.
    expect(used('strength_side', 'to_field')).toBe(10);
    expect(used('strength_side', 'to_boundary')).toBe(20);
    expect(used('strength_side', 'ball_in_middle')).toBe(10);
  });

  it('never takes a blank for a no', () => {
    const { tempo } = tablesOf(RECORDS);
    expect(tempo.looksOver?.film).toMatchObject({ count: 10, trials: 30 });
    expect(tempo.checks?.film).toMatchObject({ count: 4, trials: 20 });
    expect(tempo.checksAfterLook).toMatchObject({ count: 4, trials: 7 });
    expect(tempo.checksOtherwise).toMatchObject({ count: 0, trials: 13 });
    const bare = tablesOf(RECORDS.map(({ tempo: _t, checked: _c, ...rest }) => rest)).tempo;
    expect([bare.looksOver, bare.checks, bare.after.length]).toEqual([null, null, 0]);
  });

  it('is unlike nobody without an archive, and says where it is unlike one', () => {
    const alone = rowOf(tablesOf(RECORDS), 'formation', 'trey');
    expect([alone?.used.others, alone?.used.adjusted, alone?.used.sure]).toEqual([null, null, 'none']);
    const others = ['Elm', 'Fir', 'Oak', 'Pine'].flatMap((offense) =>
      Array.from({ length: 6 }, () => RECORDS)
        .flat()
        .map(
          (snap, i): SnapRecord => ({ ...snap, offense, formation: i % 80 === 0 || i % 80 === 4 ? 'trey' : 'doubles' }),
        ),
    );
    const beside = rowOf(tablesOf(RECORDS, others), 'formation', 'trey');
    expect(beside?.used.others?.offenses).toHaveLength(4);
    expect(beside?.used.others?.offenses[0]).toMatchObject({ count: 6, trials: 240 });
    expect(beside?.used.others?.usual).toBeCloseTo(0.025, 2);
    expect(beside?.used.sure).not.toBe('none');
    expect(beside?.runs.sure).toBe('none');
  });

  it('finds after what they change the play', () => {
    const records = Array.from({ length: 120 }, (_, i): SnapRecord => {
      const lost = i % 6 === 2;
      const after = i % 6 === 3;
      return {
        game: `w${Math.floor(i / 30)}`,
        drive: Math.floor(i / 6) + 1,
        down: (i % 4) + 1,
        to_go: 10,
        ball_on: 50,
        play_kind: 'run',
        gain: lost ? -3 : 5,
        result: 'rush',
        checked: after || i % 20 === 0 ? 'yes' : 'no',
      };
    });
    const { after } = tablesOf(records).tempo;
    const rows = after.filter(({ question, after: kind }) => question === 'checks' && kind === 'last_play');
    const lost = rows.find(({ value }) => value === 'loss');
    expect(lost?.film).toMatchObject({ count: 20, trials: 20 });
    expect(lost?.sure).toBe('clear');
    expect(rows.find(({ value }) => value === 'first_of_series')?.film.trials).toBe(20);
  });

  it('is empty for no film', () => {
    expect(tablesOf([])).toMatchObject({ tables: [], looked: 0 });
  });
});
