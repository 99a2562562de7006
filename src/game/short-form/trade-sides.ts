import type { WrittenCall } from './written-defense.ts';

/** The parts of a path, coverage or call that name men. */
export type NamedMen = Pick<WrittenCall, 'send' | 'drop' | 'rush' | 'cover' | 'late'>;

/**
 * The same with every man's partner in his place: near and far stay, the field's men and the boundary's trade. The first
 * word of a man's entry is his role.
 *
 * @param trade - pairs of role ids
 */
export function tradeSides(men: NamedMen, trade: readonly (readonly string[])[]): NamedMen {
  const partner = new Map(trade.flatMap(([a = '', b = '']) => [[a, b] as const, [b, a] as const]));
  const word = (text: string) => text.trim().replace(/^\S+/, (role) => partner.get(role) ?? role);
  const man = <Man extends { readonly role: string }>(one: Man) => ({ ...one, role: word(one.role) });
  const { send, drop, rush, cover, late } = men;
  return {
    ...(send && { send: send.map(word) }),
    ...(drop && { drop: drop.map(word) }),
    ...(rush && { rush: rush.map((one) => (typeof one === 'string' ? word(one) : man(one))) }),
    ...(cover && { cover: Array.isArray(cover) ? cover.map(man) : tradeJobs(cover, word) }),
    ...(late !== undefined && { late: word(late) }),
  };
}

type Jobs = Exclude<NonNullable<NamedMen['cover']>, readonly unknown[]>;

function tradeJobs(jobs: Jobs, word: (text: string) => string): Jobs {
  const entries = Object.entries(jobs) as [keyof Jobs, string | string[]][];
  return Object.fromEntries(entries.map(([job, men]) => [job, Array.isArray(men) ? men.map(word) : word(men)]));
}
