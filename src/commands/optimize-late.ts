import { setFlagsFromString } from 'node:v8';

/** The engine's option for how much of a function runs before it is thought worth optimizing. */
export const LATE_OPTION = '--interrupt-budget';

/**
 * Bytes of bytecode, about fifteen times the default of Node 20. By measurement: at the default a third of a check's
 * processor time goes into optimizing functions that then hardly run; beyond a million little more is won.
 */
const LATE_BUDGET = 1_000_000;

/** The Node releases whose engine knows the option; 22 and 24 were tried and complain of it on standard error. */
const KNOWING_RELEASES: readonly string[] = ['20'];

/**
 * Makes the engine wait longer before it optimizes a function: a command runs for a second or a few, not for hours. What
 * is computed stays the same. Does nothing on a Node release without the option.
 *
 * @param release version of Node, such as `20.11.1`
 * @returns whether the option was set
 * @see https://nodejs.org/api/v8.html#v8setflagsfromstringflags
 */
export function optimizeLate(release: string): boolean {
  const [major = ''] = release.split('.');
  if (!KNOWING_RELEASES.includes(major)) return false;
  setFlagsFromString(`${LATE_OPTION}=${LATE_BUDGET}`);
  return true;
}
