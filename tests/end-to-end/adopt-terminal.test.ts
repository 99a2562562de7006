import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { INVENTED_COLUMNS, type InventedColumn, inventSnaps, sheetOf } from '../ingest/adopt/invented-sheet.ts';
import { run } from './program.ts';

/** Types one reply for each prompt at a pseudo terminal, prints what was shown, and ends as the program ended. */
const TYPIST = `
import os, pty, sys
replies = sys.argv[1].split('|')
pid, terminal = pty.fork()
if pid == 0:
    os.execvp(sys.argv[2], sys.argv[2:])
shown = b''
seen = 0
while True:
    try:
        piece = os.read(terminal, 4096)
    except OSError:
        break
    if not piece:
        break
    shown += piece
    while replies and shown.count(b') > ') > seen:
        seen += 1
        reply = replies.pop(0)
        os.write(terminal, {'^D': b'\\x04', '^C': b'\\x03'}.get(reply, reply.encode() + b'\\r'))
sys.stdout.buffer.write(shown)
sys.exit(os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]))
`;

const python = spawnSync('python3', ['-c', 'import pty, os; os.waitstatus_to_exitcode']).status === 0;

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

const COLUMNS = INVENTED_COLUMNS.map(
  ([header, cell]): InventedColumn =>
    header === 'R/P' ? [header, (snap) => ({ slip: 'Z', kite: 'W' })[snap.concept] ?? snap.kind] : [header, cell],
);

/** A week whose sheet has two codes that nothing tells, adopted by somebody who types these replies. */
function adopted(replies: string) {
  const season = mkdtempSync(join(tmpdir(), 'adopt-terminal-'));
  made.push(season);
  const week = join(season, 'week-01');
  mkdirSync(week);
  writeFileSync(join(week, 'opponent.csv'), sheetOf(inventSnaps({ games: 3 }), COLUMNS));
  const program = [process.execPath, resolve('dist/cli.js'), 'adopt', join(week, 'opponent.csv')];
  const ended = spawnSync('python3', ['-c', TYPIST, replies, ...program], { encoding: 'utf8' });
  return { week, code: ended.status, shown: ended.stdout };
}

describe.skipIf(!python)('adopting at a terminal', () => {
  it('asks there, and the answers lead to a week that checks without a fault', () => {
    const { week, code, shown } = adopted('screen|quick');
    expect(code, shown).toBe(0);
    expect(shown).toContain('2 questions');
    expect(shown).toContain('No questions are left');
    const profile = readFileSync(join(week, 'profile.yaml'), 'utf8');
    expect(profile).toMatch(/Z: screen[\s\S]*W: quick|W: quick[\s\S]*Z: screen/);
    expect(run(['check', week]).out).toMatch(/snaps read: 180; rows kept out of the numbers: 0/);
  });

  it('leaves open what was not answered when the input ends', () => {
    const { week, code, shown } = adopted('screen|^D');
    expect(code, shown).toBe(0);
    expect(readFileSync(join(week, 'profile.yaml'), 'utf8')).toMatch(/# +Answer with: --answer "play_kind\/W=/);
  });

  it('writes nothing when somebody breaks off', () => {
    const { week, code, shown } = adopted('screen|^C');
    expect(code, shown).toBe(2);
    expect(shown).toContain('broken off; nothing was written');
    expect(readdirSync(week)).toEqual(['opponent.csv']);
  });
});
