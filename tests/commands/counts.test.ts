import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { counts } from '../../src/commands/counts.ts';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { countedSnaps } from '../../src/pressure/forecast/counts/count-row.ts';
import { readWeek } from '../../src/season/read-week.ts';
import { readSeasonFolder } from '../../src/season/season-folder.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'counts-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function run(week: string | undefined, options: { sql?: boolean; check?: string } = {}) {
  const [out, notes] = [[] as string[], [] as string[]];
  const told = { out: (text: string) => void out.push(text), note: (line: string) => void notes.push(line) };
  const code = await counts(week, options, { ...told, progress: () => undefined, today: '2026-11-25' });
  return { code, text: out.join(''), notes };
}

/** A season of one week that has the demo opponent's film and, of other offenses, only a file of tallies. */
function seasonWith(name: string, tallies: string): string {
  const season = join(folder, name);
  mkdirSync(join(season, 'archive'), { recursive: true });
  cpSync('data/demo/season/week-09', join(season, 'week-01'), { recursive: true });
  writeFileSync(join(season, 'archive', 'league-counts.csv'), tallies);
  return join(season, 'week-01');
}

describe('tallies from one season to another', () => {
  it('arrive whole, less those of the opponent, and are told apart from film', async () => {
    const { text, code, notes } = await run('data/demo/season/week-09');
    expect(code).toBe(0);
    expect(text.split('\r\n')[0]).toBe('offense,situation,state,target,class,count');
    const { week: film } = await readWeek(await readSeasonFolder(diskWeek('data/demo/season/week-09')));
    expect(notes.at(-1)).toContain(`${film.chart.size + (film.archive?.size ?? 0)} snaps by`);
    const { week } = await readWeek(await readSeasonFolder(diskWeek(seasonWith('fine', text))));
    expect(week.archive).toBeNull();
    expect(countedSnaps(week.counts)).toBe(film.archive?.size);
    expect(week.counts.some(({ offense }) => offense === week.opponent)).toBe(false);
  });

  it('of an offense that is on film too are left out, and the film counts', async () => {
    const { text } = await run('data/demo/season/week-09');
    const week = seasonWith('twice', text);
    cpSync('data/demo/season/archive/larkmoor.csv', join(week, '..', 'archive', 'larkmoor.csv'));
    const { week: reading } = await readWeek(await readSeasonFolder(diskWeek(week)));
    expect(reading.counts.some(({ offense }) => offense === 'Larkmoor')).toBe(false);
    expect(reading.counts.some(({ offense }) => offense === 'Stonewater')).toBe(true);
    expect(reading.tallyNotes).toHaveLength(2);
    expect(reading.film.problems.join()).toMatch(
      /the tallies of Larkmoor \(\d+ snaps\) are left out: its film is here/,
    );
  });

  it('are refused with file, row, column, value, rule and what may have been meant', async () => {
    const week = seasonWith(
      'faulty',
      'offense,situation,state,target,class,count\nLarkmoor,third_lng,normal,screen,screen,4\n',
    );
    const reading = readSeasonFolder(diskWeek(week)).then(readWeek);
    await expect(reading).rejects.toThrow(
      /league-counts\.csv, row 2, column B \("situation"\): "third_lng" is no situation; it is one of .*\. Did you mean "third_long"\?/,
    );
  });

  it('are checked before they are used, and say what they hold', async () => {
    const { text } = await run('data/demo/season/week-09');
    const file = join(folder, 'league-counts.csv');
    writeFileSync(file, text);
    const checked = await run(undefined, { check: file });
    expect(checked.code).toBe(0);
    const { week: film } = await readWeek(await readSeasonFolder(diskWeek('data/demo/season/week-09')));
    expect(checked.text).toMatch(new RegExp(`Harrow Creek +${film.chart.size} +\\d+`));
    expect(checked.notes.at(-1)).toContain('can be used');
    writeFileSync(file, text.replace('first_ten', 'first_tenn'));
    await expect(run(undefined, { check: file })).rejects.toThrow('Did you mean "first_ten"?');
    await expect(run(undefined)).rejects.toThrow('name the folder of a week');
  });

  it('can be made elsewhere by the SQL it prints, with the cut-offs of the week', async () => {
    const { text, code } = await run('data/demo/season/week-09', { sql: true });
    expect(code).toBe(0);
    expect(text).toMatch(/^WITH charted AS \(/);
    expect(text).toContain("THEN 'third_short'");
  });
});
