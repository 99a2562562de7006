import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

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

/** Whether this machine has a Python that can open a pseudo terminal. */
export const hasTerminal = spawnSync('python3', ['-c', 'import pty, os; os.waitstatus_to_exitcode']).status === 0;

/** How a command is run at a terminal: what is typed, one reply for each prompt, and what its environment has besides. */
interface Sitting {
  readonly replies?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs the built program at a pseudo terminal; `shown` is all that appeared on it. */
export function atTerminal(
  args: readonly string[],
  { replies = '', env = {} }: Sitting = {},
): { readonly code: number | null; readonly shown: string } {
  const { NO_COLOR: _, ...plain } = process.env;
  const program = [process.execPath, resolve('dist/cli.js'), ...args];
  const ended = spawnSync('python3', ['-c', TYPIST, replies, ...program], {
    encoding: 'utf8',
    env: { ...plain, ...env },
  });
  return { code: ended.status, shown: ended.stdout };
}
