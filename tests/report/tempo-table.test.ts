import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../src/game/film.ts';
import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import { opponentTables } from '../../src/pressure/tables/tables.ts';
import { tempoTable } from '../../src/report/view/tempo-table.ts';
import { inventedPlan } from './invented-plan.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const tableOf = (own: readonly SnapRecord[], others: readonly SnapRecord[] | null = null) => {
  const archive = others && filmFromRecords(others);
  const tables = opponentTables({ chart: filmFromRecords(own), archive, cuts });
  return tempoTable({ ...inventedPlan(), tables });
};
const cellsOf = (table: ReturnType<typeof tableOf>) =>
  new Map(table?.rows.map(({ name, cells }) => [name, cells.map(({ text }) => text)]));

/** Four games. They look over on every third snap, and change the play on half of those and on no other. */
const film = Array.from({ length: 120 }, (_, i): SnapRecord => {
  const tempo = i % 3 === 0 ? 'freeze' : 'huddle';
  const checked = i % 6 === 0 ? 'yes' : 'no';
  return { game: `w${Math.floor(i / 30)}`, snap: i, down: (i % 2) + 1, to_go: 10, play_kind: 'run', tempo, checked };
});

describe('tempoTable', () => {
  it('counts each tempo, looks over, checks, and checks by whether they looked over', () => {
    const cells = cellsOf(tableOf(film));
    expect(cells.get('Tempo: huddle')?.[0]).toBe('80 of 120 (67%)');
    expect([...cells.keys()].filter((name) => name.startsWith('Tempo'))).toEqual(['Tempo: huddle']);
    expect(cells.get('Look to the sideline')?.[0]).toBe('40 of 120 (33%)');
    expect(cells.get('Change the play at the line')?.[0]).toBe('20 of 120 (17%)');
    expect(cells.get('Change the play at the line after looking over')?.[0]).toBe('20 of 40 (50%)');
    expect(cells.get('Change the play at the line without looking over')?.[0]).toBe('0 of 80 (0%)');
  });

  it('sets them beside other offenses where there are any', () => {
    const others = ['Elm', 'Fir', 'Oak', 'Pine'].flatMap((offense) =>
      film.map((snap, i): SnapRecord => ({ ...snap, offense, tempo: i % 30 === 0 ? 'freeze' : 'huddle' })),
    );
    const [, usual, sure] = cellsOf(tableOf(film, others)).get('Look to the sideline') ?? [];
    // Each of the others looks over on 4 of 120; the mean of so few offenses leans a little toward even.
    expect(usual).toMatch(/^others [34]%$/);
    expect(sure).toBe('clear');
  });

  it('says after what they change the play where that is more than chance, beside their own rate', () => {
    const downs = film.map((snap, i): SnapRecord => ({ ...snap, checked: i % 2 === 1 ? 'yes' : 'no' }));
    const cells = cellsOf(tableOf(downs));
    expect(cells.get('Change the play at the line on 2nd down')).toEqual(['60 of 60 (100%)', 'they 50%', 'clear']);
    expect(cells.get('Change the play at the line on 1st down')?.[0]).toBe('0 of 60 (0%)');
    expect(cells.has('Look to the sideline on 2nd down')).toBe(false);
  });

  it('leaves out what nobody charted, and is not there where nothing was', () => {
    const bare = film.map(({ tempo: _t, checked: _c, ...snap }) => snap);
    expect(tableOf(bare)).toBeNull();
    const tempoAlone = cellsOf(tableOf(film.map(({ checked: _, ...snap }) => snap)));
    expect([...tempoAlone.keys()]).toEqual(['Tempo: huddle', 'Look to the sideline']);
    const never = cellsOf(tableOf(film.map((snap) => ({ ...snap, checked: 'no' }))));
    expect([...never.keys()].filter((name) => name.startsWith('Change'))).toEqual(['Change the play at the line']);
  });
});
