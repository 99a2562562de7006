import { fstatSync, writeSync } from 'node:fs';
import { UserProblem } from '../season/user-problem.ts';

/** Standard output by its number. */
const STANDARD_OUT = 1;

/** Writes a part of the bytes and says how many; the file system may take fewer than it is given. */
export type WritePart = (bytes: Uint8Array, from: number) => number;

/**
 * Writes all bytes or fails: a nearly full disk takes a part without a complaint and complains only when asked again.
 *
 * @throws Error of the file system, when it takes no more
 */
export function writeAll(bytes: Uint8Array, writePart: WritePart): void {
  for (let from = 0; from < bytes.length; ) {
    const taken = writePart(bytes, from);
    if (taken <= 0) throw Object.assign(new Error('nothing more is taken'), { code: 'ENOSPC' });
    from += taken;
  }
}

/**
 * A result on standard output. Into a file it is written to the end before anything else happens; a terminal or a pipe is
 * written as it takes it, and its faults come as events of the stream.
 *
 * @throws UserProblem when the file takes no more
 */
export function writeOut(text: string): void {
  if (!isFile()) {
    process.stdout.write(text);
    return;
  }
  try {
    writeAll(new TextEncoder().encode(text), (bytes, from) => writeSync(STANDARD_OUT, bytes, from));
  } catch (error) {
    throw new UserProblem('faults', `${cannotWrite(error)}; what was written is not whole`, { cause: error });
  }
}

/** Why the result could not be written. */
export function cannotWrite(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return `cannot write the result: ${REASONS[code ?? ''] ?? message}`;
}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'the file would be larger than this account may write',
};

function isFile(): boolean {
  try {
    return fstatSync(STANDARD_OUT).isFile();
  } catch {
    return false;
  }
}
