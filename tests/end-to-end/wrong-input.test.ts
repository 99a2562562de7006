import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from './program.ts';

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

function weekWith(sheet: string | Uint8Array, name = 'opponent.csv'): string {
  const season = mkdtempSync(join(tmpdir(), 'wrong-'));
  made.push(season);
  const week = join(season, 'week-01');
  mkdirSync(week);
  writeFileSync(join(week, name), sheet);
  return week;
}

const header = 'game,down,to_go,ball_on,play_kind';
const snap = 'g1,1,10,own 35,run';
const utf16 = (text: string) => Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, 'utf16le')]);

describe('sheets that cannot be used', () => {
  it.each([
    ['an empty file', '', /empty/i],
    ['a header alone', `${header}\n`, /no (usable )?snap/i],
    ['unknown headers', 'one,two,three\n1,2,3\n', /play_kind/],
    ['a workbook', Buffer.from('504b0304140000000800', 'hex'), /save the sheet as CSV/],
    ['only faulty rows', `${header}\ng1,5,10,own 35,run\n`, /row 2, column B \("down"\): "5"/],
  ])('%s ends with 1 and says what to mend', (_, sheet, said) => {
    const week = weekWith(sheet);
    const ended = run(['report', week]);
    expect(ended.code, ended.note).toBe(1);
    expect(ended.note).toMatch(said);
    expect(readdirSync(week)).toEqual(['opponent.csv']);
  });
});

describe('sheets that can be used after a fashion', () => {
  it.each([
    ['one snap', `${header}\n${snap}\n`],
    ['CRLF and a byte-order mark', `\uFEFF${header}\r\n${snap}\r\n`],
    ['semicolons', `${header}\n${snap}\n`.replaceAll(',', ';')],
    ['UTF-16', utf16(`${header}\n${snap}\n`)],
    [
      'a formation that looks like markup or a formula',
      `${header},formation\n${snap},<script>alert(1)</script>\n${snap},=cmd()\n`,
    ],
  ])('%s gives a report', (_, sheet) => {
    const week = weekWith(sheet);
    const ended = run(['report', week]);
    expect(ended.code, ended.note).toBe(0);
    expect(readFileSync(join(week, 'out/report.html'), 'utf8')).not.toContain('<script>alert');
  });

  it('keeps a faulty row out of the numbers and in the rejects file', () => {
    const week = weekWith(`${header}\n${snap}\ng1,1O,10,own 35,run\n`);
    const ended = run(['report', week]);
    expect(ended.code).toBe(1);
    expect(ended.note).toMatch(/row 3, column B \("down"\): "1O"/);
    expect(readFileSync(join(week, 'out/rejected.csv'), 'utf8')).toContain('1O');
    expect(JSON.parse(readFileSync(join(week, 'out/report.json'), 'utf8')).film.snaps).toBe(1);
  });
});

describe('a snap listed in two files', () => {
  it('counts once; the other row is a fault and is kept with its reason', () => {
    const week = weekWith(`${header},snap\n${snap},1\ng1,2,7,own 38,pass,2\n`, 'opponent-a.csv');
    writeFileSync(join(week, 'opponent-b.csv'), `${header},snap\n${snap},1\ng1,3,1,own 44,run,3\n`);
    const ended = run(['report', week]);
    expect(ended.code).toBe(1);
    expect(ended.note).toMatch(/opponent-b.csv, row 2: .*listed already in .*opponent-a.csv, row 2/);
    const rejected = readFileSync(join(week, 'out/rejected.csv'), 'utf8');
    expect(rejected).toMatch(/opponent-b.csv,2,.*listed already.*,g1,1,10,own 35,run,1/);
    const { film } = JSON.parse(readFileSync(join(week, 'out/report.json'), 'utf8'));
    expect([film.snaps, film.faults]).toEqual([3, 1]);
  });
});

describe('a snap listed twice in the archive or in an earlier week', () => {
  it('counts once; the other row is named and kept with its reason', () => {
    const week = weekWith(`${header}\n${snap}\n`);
    const sheet = `${header},snap,offense\n${snap},1,Other\ng1,2,7,own 38,pass,2,Other\n`;
    const [archive, earlier] = [join(week, '../archive'), join(week, '../week-00')];
    for (const folder of [archive, earlier]) mkdirSync(folder);
    writeFileSync(join(archive, 'a.csv'), sheet);
    writeFileSync(join(archive, 'b.csv'), sheet);
    writeFileSync(join(earlier, 'game.csv'), `${header},snap,offense\n${snap},2,Other\n${snap},3,Other\n`);
    const ended = run(['report', week]);
    expect(ended.code, ended.note).toBe(1);
    const rejected = readFileSync(join(week, 'out/rejected.csv'), 'utf8');
    expect(rejected.match(/listed already in [^,]*a\.csv, row \d/g)).toEqual([
      expect.stringMatching(/row 2$/),
      expect.stringMatching(/row 3$/),
      expect.stringMatching(/row 3$/),
    ]);
    const { film, archive: others } = JSON.parse(readFileSync(join(week, 'out/report.json'), 'utf8'));
    expect([film.snaps, film.faults, others.snaps]).toEqual([1, 3, 3]);
  });
});

describe('wrong usage', () => {
  it.each([
    [['report', 'no/such/folder'], 2, /no folder no\/such\/folder/],
    [['report', 'package.json'], 2, /is a file/],
    [['raport'], 2, /Did you mean report/],
    [['report'], 2, /week/],
    [['report', 'data/demo/season/week-09', '--seed', 'x'], 2, /whole number, got "x"/],
    [['report', '.'], 1, /no sheet named opponent/],
    [['tendency', '.', '--by', 'down'], 2, /--of/],
  ])('%j ends with %i and says why', (args, code, said) => {
    const ended = run(args);
    expect(ended.code).toBe(code);
    expect(ended.note).toMatch(said);
    expect(ended.out).toBe('');
  });

  it('says in plain words that the out folder cannot be written', () => {
    const week = weekWith(`${header}\n${snap}\n`);
    writeFileSync(join(week, 'out'), 'a file in the way');
    const ended = run(['report', week]);
    expect(ended.code).toBe(1);
    expect(ended.note).toMatch(/cannot write into .*Nothing was written/s);
  });

  it.skipIf(process.getuid?.() === 0)('says that a read-only folder cannot be written', () => {
    const week = weekWith(`${header}\n${snap}\n`);
    chmodSync(week, 0o555);
    expect(run(['report', week]).note).toMatch(/may not write/);
  });
});

describe('a question with a slip of the pen', () => {
  it.each([
    [['--of', 'scren'], 'Did you mean "screen"? "scren" is none of'],
    [['--of', 'run', '--when', 'thrd_long'], 'Did you mean "third_long"?'],
    [['--of', 'run', '--when', 'slyde=left'], 'Did you mean "slide"?'],
    [['--of', 'run', '--when', 'down=3', '--by', 'dwn'], 'Did you mean "down"?'],
    [['--of', 'zebra'], '"zebra" is none of'],
  ])('%j names the word that was meant, or the words there are', (asked, said) => {
    const { code, note } = run(['tendency', weekWith(`${header},slide\n${snap},left\n`), ...asked]);
    expect(code).toBe(2);
    expect(note).toContain(said);
    expect(note.includes('Did you mean')).toBe(said.startsWith('Did'));
  });
});
