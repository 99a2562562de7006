import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { textAt } from '../../src/game/film.ts';
import { readWeek } from '../../src/season/read-week.ts';
import { readSeasonFolder } from '../../src/season/season-folder.ts';

const root = mkdtempSync(join(tmpdir(), 'read-week-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

const HEAD = 'game,snap,down,to_go,ball_on,play_kind,offense';

/** A season with one snap of Cinder Vale, and an archive and own film where they are given. */
function seasonWith(name: string, files: Readonly<Record<string, string>>) {
  const season = join(root, name);
  for (const folder of ['week-09', 'archive']) mkdirSync(join(season, folder), { recursive: true });
  writeFileSync(join(season, 'week-09', 'opponent.csv'), `${HEAD}\nfirst,1,1,10,own 30,run,Cinder Vale\n`);
  for (const [file, text] of Object.entries(files)) writeFileSync(join(season, file), text);
  return readSeasonFolder(diskWeek(join(season, 'week-09')))
    .then(readWeek)
    .then(({ week }) => week);
}

const absentParts = ({ film }: Awaited<ReturnType<typeof readWeek>>['week']) => film.absent;

describe('readWeek', () => {
  it.each([
    ['another offense', `${HEAD}\nfirst,1,1,10,own 30,run,Stonewater\n`, 1],
    ['the opponent alone, however it is written', `${HEAD}\nfirst,1,1,10,own 30,run, cinder vale \n`, 0],
    ['no offense that is named', `${HEAD}\nfirst,1,1,10,own 30,run,\nfirst,2,2,5,own 35,pass,\n`, 2],
    ['a header alone', `${HEAD}\n`, 0],
  ])('of an archive with %s says whether it is there as it then gives it', async (name, text, snaps) => {
    const week = await seasonWith(`archive ${snaps} ${name.length}`, { 'archive/one.csv': text });
    expect(absentParts(week).includes('archive')).toBe(snaps === 0);
    expect(week.archive?.size ?? 0).toBe(snaps);
  });

  it('names an offense that is the opponent but for a slip of the pen, also where no snap is left', async () => {
    const text = `${HEAD}\nsecond,1,1,10,own 30,run,Cinder Vael\n`;
    const week = await seasonWith('slip', { 'archive/one.csv': text });
    expect(week.unread.join()).toContain('offense "Cinder Vael" on 1 snap is close to "Cinder Vale"');
    const none = seasonWith('slip in the week', { 'week-09/week.yaml': 'opponent: Cindre Vale\n' });
    await expect(none).rejects.toThrow(/no usable snap of Cindre Vale.*close to "Cindre Vale"/s);
  });

  it.each([
    [
      'the teams on film where none is the opponent',
      `${HEAD}\nfirst,1,1,10,own 30,run,CV\nfirst,2,2,5,own 35,pass,CV\n`,
      'The offense on film is "CV" on 2 snaps. Write the opponent in week.yaml as the sheet does: opponent: "CV"',
    ],
    [
      'the way to a profile for other headers',
      'quarter,dn,dist\n1,1,10\n',
      'week-09/opponent.csv" drafts it from the values.',
    ],
  ])('without a snap of the opponent names %s', async (name, text, said) => {
    const files = { 'week-09/opponent.csv': text, 'week-09/week.yaml': 'opponent: Cinder Vale\n' };
    const problem = await seasonWith(name, files).catch((thrown: Error) => thrown.message);
    expect(problem).toContain('no usable snap of');
    expect(problem).toContain(said);
  });

  it('puts archive and own film together once, when asked', async () => {
    const { week } = await readWeek(await readSeasonFolder(diskWeek('data/demo/season/week-09')));
    expect(week.archive).not.toBeNull();
    expect(week.archive).toBe(week.archive);
    expect(week.ownFilm).toBe(week.ownFilm);
    const spread = { ...week };
    expect(spread.ownFilm).toBe(week.ownFilm);
  });

  it('fills what the call says into the own film it gives, and names calls that are unknown', async () => {
    const week = await seasonWith('own', {
      'defense.yaml': readFileSync('data/demo/season/defense.yaml', 'utf8'),
      'ours.csv': `game,snap,down,to_go,ball_on,call\nours,1,1,10,own 30,Latch Lock\nours,2,2,8,own 32,No Such Call\n`,
    });
    if (week.ownFilm === null) throw new Error('there is own film');
    expect(textAt(week.ownFilm, 'family', 0)).toBe('man_free');
    expect(textAt(week.ownFilm, 'family', 1)).toBeUndefined();
    expect(week.ownProblems).toEqual([
      'our film names the call "No Such Call" on 1 snaps, which defense.yaml does not have',
    ]);
  });
});
