import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { INVENTED_COLUMNS, type InventedColumn, inventSnaps, sheetOf } from '../ingest/adopt/invented-sheet.ts';
import { makeWorkbook, type WorkbookCell } from '../ingest/make-workbook.ts';
import { run } from './program.ts';

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

const SNAPS = inventSnaps({ games: 3 });
const SHEET = sheetOf(SNAPS);

function weekWith(name: string, sheet: string | Uint8Array): string {
  const season = mkdtempSync(join(tmpdir(), 'adopt-'));
  made.push(season);
  const week = join(season, 'week-01');
  mkdirSync(week);
  writeFileSync(join(week, name), sheet);
  return week;
}

describe('adopting a sheet with headers of its own', () => {
  it('leads from the sheet to a checked week and a report, and leaves the sheet alone', () => {
    const week = weekWith('opponent.csv', SHEET);
    const adopted = run(['adopt', join(week, 'opponent.csv')]);
    expect(adopted.code, adopted.note).toBe(0);
    expect(adopted.out).toMatch(/180 snaps, 0 rows with faults/);
    expect(adopted.out).toMatch(/No questions are left/);
    expect(readFileSync(join(week, 'opponent.csv'), 'utf8')).toBe(SHEET);
    const checked = run(['check', week]);
    expect(checked.code, checked.out).toBe(0);
    expect(checked.out).toMatch(/snaps read: 180; rows kept out of the numbers: 0/);
    const reported = run(['report', week]);
    expect(reported.code, reported.note).toBe(0);
    expect(readdirSync(join(week, 'out'))).toContain('report.html');
  });

  it('never replaces a profile, and says so', () => {
    const week = weekWith('opponent.csv', SHEET);
    writeFileSync(join(week, 'profile.yaml'), 'columns: {}\n');
    const refused = run(['adopt', join(week, 'opponent.csv')]);
    expect(refused.code).toBe(2);
    expect(refused.note).toMatch(/profile\.yaml is there already and stays as it is/);
    expect(readFileSync(join(week, 'profile.yaml'), 'utf8')).toBe('columns: {}\n');
    expect(run(['adopt', join(week, 'opponent.csv'), '-o', join(week, 'other.yaml')]).code).toBe(0);
    expect(readdirSync(week).sort()).toEqual(['opponent.csv', 'other.yaml', 'profile.yaml']);
  });

  it('drafts again with answers over a draft nobody touched, and over no other', () => {
    const week = weekWith('opponent.csv', SHEET);
    const [sheet, profile] = [join(week, 'opponent.csv'), join(week, 'profile.yaml')];
    expect(run(['adopt', sheet]).code).toBe(0);
    const plain = readFileSync(profile, 'utf8');
    expect(run(['adopt', sheet, '--answer', 'Form=not read']).code).toBe(0);
    const answered = readFileSync(profile, 'utf8');
    expect(answered).not.toBe(plain);
    for (const kept of [answered, `${plain}# ours\n`]) {
      writeFileSync(profile, kept);
      const refused = run(['adopt', sheet]);
      expect([refused.code, refused.note]).toEqual([2, expect.stringContaining('To draft it again, delete it first')]);
      expect(readFileSync(profile, 'utf8')).toBe(kept);
    }
  });

  it('says that a sheet must be renamed that no command reads', () => {
    const week = weekWith('cinder vale.csv', SHEET);
    const said = run(['adopt', join(week, 'cinder vale.csv')]);
    expect([said.code, said.note]).toEqual([0, expect.stringContaining('call it "opponent cinder vale.csv"')]);
    expect(run(['adopt', join(weekWith('opponent.csv', SHEET), 'opponent.csv')]).note).not.toContain('under this name');
  });

  it('takes answers from a file and from the command line, and writes open questions into the profile', () => {
    const columns = INVENTED_COLUMNS.map(
      ([header, cell]): InventedColumn =>
        header === 'R/P' ? [header, (snap) => ({ slip: 'Z', kite: 'W' })[snap.concept] ?? snap.kind] : [header, cell],
    );
    const week = weekWith('opponent.csv', sheetOf(SNAPS, columns));
    const sheet = join(week, 'opponent.csv');
    writeFileSync(join(week, 'answers.yaml'), 'play_kind/Z: screen\n');
    const open = run(['adopt', sheet, '--answers', join(week, 'answers.yaml'), '-o', join(week, 'open.yaml')]);
    expect(open.out).toMatch(/1 question is left/);
    expect(readFileSync(join(week, 'open.yaml'), 'utf8')).toMatch(/# +Answer with: --answer "play_kind\/W=/);
    const settled = run([
      'adopt',
      sheet,
      '--answers',
      join(week, 'answers.yaml'),
      '--answer',
      'play_kind/W=quick',
      '--json',
    ]);
    expect(JSON.parse(settled.out)).toMatchObject({ snaps: 180, rejected: 0, questions: [] });
    expect(run(['adopt', sheet, '--answer', 'nothing', '-o', join(week, 'x.yaml')]).code).toBe(2);
  });

  it('keeps pasted text beside its profile, so that the week can be checked', () => {
    const week = weekWith('notes.md', '');
    const pasted = run(['adopt', '-', '-o', week], { input: sheetOf(SNAPS, INVENTED_COLUMNS, '\t') });
    expect(pasted.code, pasted.note).toBe(0);
    expect(readdirSync(week).sort()).toEqual(['notes.md', 'opponent-pasted.csv', 'profile.yaml']);
    expect(run(['check', week]).out).toMatch(/snaps read: 180/);
    expect(run(['adopt', '-'], { input: SHEET }).code).toBe(2);
  });

  it('reads a workbook, and the season folder reads it too', () => {
    const rows = SHEET.trimEnd()
      .split('\n')
      .map((line) => line.split(','));
    const cells = rows.map((row, i): WorkbookCell[] =>
      row.map((text) => (i > 0 && /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text)),
    );
    const week = weekWith('opponent.xlsx', makeWorkbook([[['Scouting, invented'], [], ...cells]]));
    const adopted = run(['adopt', join(week, 'opponent.xlsx')]);
    expect(adopted.code, adopted.note).toBe(0);
    expect(run(['check', week]).out).toMatch(/snaps read: 180; rows kept out of the numbers: 0/);
  });

  it('lists formation names, and fills structure from a formation book', () => {
    const week = weekWith('opponent.csv', SHEET);
    run(['adopt', join(week, 'opponent.csv')]);
    expect(run(['check', week]).out).toMatch(/Formation names that formations\.yaml does not have[\s\S]*Anvil +\d+/);
    const book =
      'formations:\n  Anvil: { receivers: 2x1 }\n  Table: { receivers: 2x2 }\n  Kettle: { receivers: 3x2, backs: 0 }\n  Ladder: { receivers: 3x1 }\n';
    writeFileSync(join(week, '..', 'formations.yaml'), book);
    const checked = run(['check', week]).out;
    expect(checked).toMatch(/receivers +180 of 180/);
    expect(checked).not.toMatch(/Formation names/);
  });

  it('says so when a sheet holds no snaps', () => {
    const week = weekWith('opponent.csv', 'only a title\n');
    const ended = run(['adopt', join(week, 'opponent.csv')]);
    expect(ended.code).toBe(1);
    expect(readdirSync(week)).toEqual(['opponent.csv']);
  });

  it('says in plain words that there is no such file, or that it is a folder', () => {
    const week = weekWith('opponent.csv', SHEET);
    const missing = run(['adopt', join(week, 'other.csv')]);
    expect([missing.code, missing.note]).toEqual([2, expect.stringContaining('there is no file')]);
    const folder = run(['adopt', week]);
    expect([folder.code, folder.note]).toEqual([2, expect.stringContaining('a sheet is wanted, not a folder')]);
  });
});
