import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from './program.ts';

const root = mkdtempSync(join(tmpdir(), 'path-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** Invented: a staff's own headers, forty snaps. */
const SHEET = [
  'Dn,Dist,Spot,R/P,Gain',
  ...Array.from({ length: 40 }, (_, i) => `${1 + (i % 3)},10,${70 - i},${i % 2 === 0 ? 'R' : 'P'},${i % 7}`),
].join('\n');
const OURS = ['game,down,to_go,ball_on,play_kind', 'w1,1,10,own 30,run', 'w1,2,6,own 34,pass'].join('\n');

/** A new season with its first week, and what lies in it. */
function season(name: string, files: Readonly<Record<string, string>> = {}): string {
  const folder = join(root, name);
  expect(run(['new', folder]).code).toBe(0);
  for (const [file, text] of Object.entries(files)) writeFileSync(join(folder, 'week-01', file), `${text}\n`);
  return folder;
}

describe('after adopt', () => {
  it('the template beside the sheet says one thing, and live.csv is read through the same profile or by our headers', () => {
    const folder = season('adopted', { 'opponent-scout.csv': SHEET });
    const week = join(folder, 'week-01');
    expect(run(['adopt', join(week, 'opponent-scout.csv')]).code).toBe(0);
    const check = run(['check', week]).out;
    expect(check.split('\n').filter((line) => line.includes(join('week-01', 'opponent.csv')))).toHaveLength(1);
    expect(check).toContain(`(through ${join(week, 'profile.yaml')})`);
    for (const text of [SHEET, 'down,to_go,play_kind\n1,10,run\n2,5,pass']) {
      writeFileSync(join(week, 'live.csv'), `${text}\n`);
      const halftime = run(['halftime', week]);
      expect([halftime.code, halftime.out]).toEqual([0, expect.stringMatching(/^(40|2) snaps tonight/)]);
    }
  });

  it('a profile in the season folder is read for every week, and check says through which it read', () => {
    const folder = season('shared', { 'opponent.csv': SHEET, 'live.csv': SHEET });
    const week = join(folder, 'week-01');
    run(['adopt', join(week, 'opponent.csv')]);
    renameSync(join(week, 'profile.yaml'), join(folder, 'profile.yaml'));
    const check = run(['check', week]);
    expect([check.code, check.out]).toEqual([
      0,
      expect.stringContaining(`(through ${join(week, '..', 'profile.yaml')})`),
    ]);
    expect(run(['halftime', week]).out).toMatch(/^40 snaps tonight/);
  });

  it('the next week keeps profile, practice days and cut-offs, and not the opponent', () => {
    const folder = season('second', { 'opponent-scout.csv': SHEET });
    const week = join(folder, 'week-01');
    run(['adopt', join(week, 'opponent-scout.csv')]);
    writeFileSync(
      join(week, 'week.yaml'),
      'opponent: Cinder Vale\nsituations: { deep_yards: 15 }\nmenu: { must: [X] }\npractice: { days: [{ day: Tue, periods: [{ name: Inside, minutes: 12, reps: 8 }] }] }\n',
    );
    expect(run(['new', folder, '--week', '2']).code).toBe(0);
    const next = join(folder, 'week-02');
    expect(readdirSync(next).sort()).toEqual(['opponent.csv', 'profile.yaml', 'week.yaml']);
    expect(readFileSync(join(next, 'profile.yaml'))).toEqual(readFileSync(join(week, 'profile.yaml')));
    const text = readFileSync(join(next, 'week.yaml'), 'utf8');
    expect(text).toContain('Inside');
    expect(text).toMatch(/deep_yards: 15/);
    expect(text).not.toMatch(/Cinder Vale|\bX\b/);
  });
});

describe('names', () => {
  it('an untouched week.yaml says so, and its placeholder is no opponent', () => {
    const week = join(season('untouched', { 'opponent.csv': OURS }), 'week-01');
    const check = run(['check', week]);
    expect(check.out).toContain('still names the opponent "Name of the opponent"; type their name');
    expect(check.out).toContain('the opponent snaps read: 2');
    expect(run(['tendency', week, '--of', 'pass', '--by', 'down']).code).toBe(0);
  });

  it('sheets of other names are named, and a season in place of a week', () => {
    const folder = season('others', { 'opponent.csv': OURS, 'scout wk8.csv': OURS, 'pine hollow.xlsx': 'x' });
    const check = run(['check', join(folder, 'week-01')]).out;
    for (const name of ['scout wk8.csv', 'pine hollow.xlsx']) {
      expect(check).toContain(`${name} is not read: call it opponent….csv if it is film of them`);
    }
    const report = run(['report', folder]);
    expect(report.code).toBe(1);
    expect(report.note).toContain(`Did you mean ${join(folder, 'week-01')}?`);
    expect(report.note).not.toContain('is not read');
    const week = run(['check', join(folder, 'week 1')]);
    expect([week.code, week.note]).toEqual([2, expect.stringContaining(`Did you mean ${join(folder, 'week-01')}?`)]);
    expect(run(['check', join(folder, 'week-7')]).note).toContain('Give the folder of one week, such as');
    expect(run(['check', join(root, 'nowhere', 'week-1')]).note).toContain('Give the folder of one week, such as');
  });

  it('calls of week.yaml that cannot be what it says are faults in check and report', () => {
    const folder = season('menu', { 'opponent.csv': OURS });
    const week = join(folder, 'week-01');
    const name =
      /^ *- \{ name: (.+?),.* coverage: hot \}/m.exec(readFileSync(join(folder, 'defense.yaml'), 'utf8'))?.[1] ?? '';
    expect(name).not.toBe('');
    writeFileSync(
      join(week, 'week.yaml'),
      `opponent: Cinder Vale\nmenu: { must: [${name.toUpperCase()}, ${name}x], ban: [Nonesuch] }\n`,
    );
    for (const command of ['check', 'report']) {
      const said = run([command, week]);
      expect(said.code).toBe(1);
      const text = said.out + said.note;
      expect(text).toContain(`week.yaml, menu.must: "${name}x" is no call of defense.yaml. Did you mean "${name}"?`);
      expect(text).toContain('week.yaml, menu.ban: "Nonesuch" is no call of defense.yaml.');
      expect(text).not.toContain(`"${name.toUpperCase()}"`);
    }
    rmSync(join(folder, 'defense.yaml'));
    const said = run(['check', week]);
    expect([said.code, said.out]).toEqual([1, expect.stringContaining('there is no defense.yaml that could have it')]);
  });
});

it('a call that must be carried and is unsound is named with its reason by check and report, which end with 1', () => {
  const folder = season('unsound', { 'opponent.csv': OURS });
  const file = join(folder, 'defense.yaml');
  const sound = readFileSync(file, 'utf8');
  const name = /^ *- \{ name: (.+?), path: field five/m.exec(sound)?.[1] ?? '';
  const week = join(folder, 'week-01');
  writeFileSync(join(week, 'week.yaml'), `opponent: Cinder Vale\nmenu: { must: [${name}] }\n`);
  expect(run(['check', week]).code).toBe(0);
  const path = 'send: [nickel, mike] }';
  expect(sound).toContain(path);
  writeFileSync(file, sound.replace(path, 'send: [nickel] }'));
  for (const command of ['check', 'report']) {
    const said = run([command, week]);
    expect([said.code, said.out + said.note]).toEqual([
      1,
      expect.stringMatching(new RegExp(`menu\\.must: "${name}" is unsound and cannot be carried: \\w.{10,}`)),
    ]);
  }
});

describe('check', () => {
  it('ends with its verdict, and gives what is given on purpose one line', () => {
    const demo = 'data/demo/season/week-09';
    const lines = run(['check', demo]).out.trimEnd().split('\n');
    expect(lines.at(-1)).toMatch(/^Ready for the report: no faults, /);
    expect(lines.filter((line) => /on purpose/.test(line))).toHaveLength(1);
    const week = join(season('verdict', { 'opponent.csv': `${OURS}\nw1,9,10,own 30,run` }), 'week-01');
    expect(run(['check', week]).out.trimEnd().split('\n').at(-1)).toMatch(/^Mend first: 1 row is out of the numbers/);
  });

  it('names passes where passes are counted', () => {
    expect(run(['check', 'data/demo/season/week-09']).out).toMatch(/^slide +\d+ of \d+ passes/m);
  });
});

it('a first week with the starter, no film of our own and no archive has a menu without a number that is none', () => {
  const film = Array.from({ length: 60 }, (_, i) => {
    const kind = ['run', 'quick', 'dropback', 'screen'][i % 4];
    return `w1,${i + 1},${1 + (i % 3)},10,own ${20 + (i % 20)},${kind}`;
  });
  const folder = season('first', { 'opponent.csv': ['game,snap,down,to_go,ball_on,play_kind', ...film].join('\n') });
  const week = join(folder, 'week-01');
  expect(run(['report', week]).code).toBe(0);
  const plan = JSON.parse(readFileSync(join(week, 'out', 'report.json'), 'utf8'));
  expect([plan.menu.kind, plan.menu.proof]).toEqual(['menu', { proved: true }]);
  for (const page of ['report.html', 'call-sheet.html', 'tip-sheet.html', 'wristband.html'])
    expect(readFileSync(join(week, 'out', page), 'utf8')).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b/);
  expect(readFileSync(join(week, 'out', 'report.html'), 'utf8')).not.toContain('The search stopped early');
});

it('the shell completes every command, and -v is the version', () => {
  const bash = run(['completion', 'bash']);
  expect([bash.code, run(['completion', 'cmd']).code]).toEqual([0, 2]);
  for (const name of ['new', 'check', 'tendency', 'report', 'adopt'])
    expect(bash.out).toContain(`    ${name}) words="`);
  expect(run(['-v']).out).toBe(run(['--version']).out);
  const ask = (...words: readonly string[]) =>
    `COMP_WORDS=(pressure-plan ${words.join(' ')}); COMP_CWORD=${words.length}; _pressure_plan; echo "\${COMPREPLY[@]}"\n`;
  const shell = spawnSync('bash', [], { input: `${bash.out}${ask('ten')}${ask('tendency', '--b')}`, encoding: 'utf8' });
  expect(shell.stdout).toBe('tendency\n--by\n');
});
