import type { TheoryName } from '../../game/families.ts';
import { plainName } from '../../game/plain-name.ts';
import type { MenuSettings } from './input.ts';

/** The limits of a menu, so that each can be named in a clash and lifted to see what it costs. */
export const RULE_KINDS = [
  'size',
  'new_calls',
  'reps',
  'theory',
  'must',
  'ban',
  'pairing',
  'path',
  'add_on',
  'explosives',
  'use',
] as const;
/** One word of {@link RULE_KINDS}. */
export type RuleKind = (typeof RULE_KINDS)[number];

/** One limit of the week: `of` names the theory or the call, `limit` is its number where it has one. */
export interface MenuRule {
  readonly kind: RuleKind;
  readonly of?: string;
  readonly limit?: number;
}

/** A carried call is expected at least this often a game, or it is not worth its reps. Judgment. */
export const LEAST_CALLS = 1;

/** Every limit that week.yaml and common practice put on the menu. */
export function menuRules(menu: MenuSettings, theories: readonly TheoryName[]): MenuRule[] {
  return [
    { kind: 'size', limit: menu.size },
    { kind: 'new_calls', limit: menu.new_calls },
    { kind: 'reps', limit: menu.reps },
    ...theories.map((theory): MenuRule => ({ kind: 'theory', of: theory })),
    ...menu.must.map((of): MenuRule => ({ kind: 'must', of })),
    ...menu.ban.map((of): MenuRule => ({ kind: 'ban', of })),
    ...(menu.pairing_cap < 1 ? [{ kind: 'pairing', limit: menu.pairing_cap } as const] : []),
    ...(menu.path_share < 1 ? [{ kind: 'path', limit: menu.path_share } as const] : []),
    { kind: 'add_on', limit: menu.add_on_share },
    ...(menu.explosives === undefined ? [] : [{ kind: 'explosives', limit: menu.explosives } as const]),
    { kind: 'use', limit: LEAST_CALLS },
  ];
}

/** The rule's name, the same for the same limit. */
export function ruleKey({ kind, of }: Pick<MenuRule, 'kind' | 'of'>): string {
  return of === undefined ? kind : `${kind} ${plainName(of)}`;
}
