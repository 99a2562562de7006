import type { Film } from '../game/film.ts';
import { freeWordKey } from '../game/free-word.ts';
import { slipsBetween } from '../ingest/nearest-word.ts';

/** Shorter words differ by a letter and are other words: East and West. Judgment. */
const LEAST_LETTERS = 4;

/** Whether two names are one team's: case and spaces around do not count. */
export function sameTeam(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

/**
 * A known team that a name was most likely meant to be: the same but for spaces, or every word the same but for one
 * slip of the pen. Undefined when the name is known, or is like none.
 */
export function nearTeam(written: string, known: readonly string[]): string | undefined {
  if (written.trim() === '' || known.some((team) => sameTeam(team, written))) return undefined;
  return known.find((team) => freeWordKey(team) === freeWordKey(written) || isSlip(written, team));
}

function isSlip(one: string, other: string): boolean {
  const [words, others] = [wordsOf(one), wordsOf(other)];
  return words.length === others.length && words.every((word, i) => isSameWord(word, others[i] ?? ''));
}

function isSameWord(word: string, other: string): boolean {
  if (word === other) return true;
  return Math.max(word.length, other.length) >= LEAST_LETTERS && slipsBetween(word, other) === 1;
}

function wordsOf(name: string): string[] {
  return name.trim().toLowerCase().split(/\s+/);
}

/** Offenses on film that are written close to the opponent's name and do not count as the opponent, in words. */
export function teamSlips(films: readonly Film[], opponent: string): string[] {
  const snaps = new Map<string, number>();
  for (const film of films) for (const [team, count] of nearOffenses(film, opponent)) add(snaps, team, count);
  return [...snaps].map(([team, count]) => slipWords(team, count, opponent));
}

function add(snaps: Map<string, number>, team: string, count: number): void {
  snaps.set(team, (snaps.get(team) ?? 0) + count);
}

function nearOffenses({ columns: { offense }, size }: Film, opponent: string): [team: string, snaps: number][] {
  if (offense?.kind !== 'code') return [];
  const near = offense.values.flatMap((team, code) => (nearTeam(team, [opponent]) ? [[team, code] as const] : []));
  return near.map(([team, code]) => [team, countOf(offense.codes.subarray(0, size), code)]);
}

function countOf(codes: Uint16Array, code: number): number {
  return codes.reduce((count, each) => (each === code ? count + 1 : count), 0);
}

function slipWords(team: string, count: number, opponent: string): string {
  const snaps = count === 1 ? '1 snap' : `${count} snaps`;
  return `offense "${team}" on ${snaps} is close to "${opponent}" of week.yaml and does not count as them; if it is the same team, write it the same way`;
}
