import { setFlagsFromString } from 'node:v8';

/**
 * Bytes of bytecode a function runs before the engine thinks it worth optimizing, some forty times the default of Node
 * 20. By measurement: at the default a third of a check's processor time goes into optimizing functions that then hardly
 * run; three millions take a twentieth off the report of one million, eight are no better than one.
 */
const LATE_BUDGET = 3_000_000;

/**
 * What a function of a compiled library may run before it is compiled a second time for speed. By measurement: the six
 * programs of a demo menu take half a second of processor time, to which the default adds one and a half.
 */
const LATE_TIERING = 1_000_000_000;

/** The engine's options: optimize late, and compile of a compiled library only the functions that are called. */
export const LATE_OPTIONS = [
  `--interrupt-budget=${LATE_BUDGET}`,
  '--wasm-lazy-compilation',
  `--wasm-tiering-budget=${LATE_TIERING}`,
] as const;

/** The Node releases with an engine that knows the options; 22 and 24 were tried and complain on standard error. */
const KNOWING_RELEASES: readonly string[] = ['20'];

/**
 * Makes the engine wait longer before it optimizes a function: a command runs for a second or a few, not for hours. What
 * is computed stays the same. Does nothing on a Node release without the options.
 *
 * @param release version of Node, such as `20.11.1`
 * @returns whether the options were set
 * @see https://nodejs.org/api/v8.html#v8setflagsfromstringflags
 */
export function optimizeLate(release: string): boolean {
  const [major = ''] = release.split('.');
  if (!KNOWING_RELEASES.includes(major)) return false;
  for (const option of LATE_OPTIONS) setFlagsFromString(option);
  return true;
}
