import type { Role } from '../../game/call-library.ts';
import { cleanText } from '../words/clean-text.ts';

/**
 * One or two letters for each role, all different: initials where the title has two words, else the first letter, or
 * the first two when that letter is taken.
 *
 * @returns letters by role id
 */
export function roleLetters(roles: readonly Pick<Role, 'id' | 'title'>[]): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  const taken = new Set<string>();
  for (const role of roles) {
    const free = candidates(cleanText(role.title)).find((candidate) => !taken.has(candidate)) ?? String(taken.size + 1);
    letters.set(role.id, free);
    taken.add(free);
  }
  return letters;
}

function candidates(title: string): readonly string[] {
  const [first = ['?'], second] = title.split(' ').map((word) => [...word]);
  const head = (first[0] ?? '?').toUpperCase();
  if (second !== undefined) return [head + (second[0] ?? '').toUpperCase(), head + (second[1] ?? ''), head];
  return [head, ...first.slice(1).map((letter) => head + letter)];
}
