/**
 * A name as names are compared: without spaces at its ends and with small letters.
 *
 * @example plainName(' Storm Zero') // "storm zero"
 */
export function plainName(name: string): string {
  return name.trim().toLowerCase();
}
