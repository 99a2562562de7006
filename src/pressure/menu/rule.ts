import type { WeekSettings } from '../../game/week-settings.ts';
import { THEORIES } from './theory.ts';

/** A limit of the menu by name, so that it can be named in a clash and lifted to see what it costs. */
export interface MenuRule {
  readonly kind: 'size' | 'reps' | 'theory' | 'must' | 'ban' | 'pairing' | 'least' | 'most' | 'explosives' | 'use';
  /** The theory's index or the call's name, where the kind has several. */
  readonly of?: string;
  readonly words: string;
}

/** A carried call is expected at least this often a game, or it is not worth its repetitions. Judgement. */
export const LEAST_CALLS = 1;

/**
 * Every limit that week.yaml and common practice put on the menu.
 *
 * @param theories - indices of the theories the library teaches
 */
export function menuRules(menu: WeekSettings['menu'], theories: readonly number[]): MenuRule[] {
  return [
    { kind: 'size', words: `at most ${menu.size} calls carried` },
    { kind: 'reps', words: `at most ${menu.reps} practice repetitions` },
    ...theories.map((theory) => theoryRule(theory)),
    ...menu.must.map((of): MenuRule => ({ kind: 'must', of, words: `${of} must be carried` })),
    ...menu.ban.map((of): MenuRule => ({ kind: 'ban', of, words: `${of} may not be carried` })),
    ...mixRules(menu),
    { kind: 'use', words: `each carried call at least ${LEAST_CALLS === 1 ? 'once' : `${LEAST_CALLS} times`} a game` },
  ];
}

/** The rule's name, the same for the same limit however it is worded. */
export function ruleKey({ kind, of }: Pick<MenuRule, 'kind' | 'of'>): string {
  return of === undefined ? kind : `${kind} ${of.toLowerCase()}`;
}

function theoryRule(theory: number): MenuRule {
  return { kind: 'theory', of: String(theory), words: `one call of ${THEORIES[theory]?.words ?? ''}` };
}

function mixRules({ pairing_cap: cap, pressure_rate: rate, explosives }: WeekSettings['menu']): MenuRule[] {
  const percent = (share: number) => `${Math.round(100 * share)}%`;
  const rules: (MenuRule | null)[] = [
    cap < 1
      ? { kind: 'pairing', words: `no path followed by one coverage on more than ${percent(cap)} of its calls` }
      : null,
    rate.least > 0
      ? { kind: 'least', words: `pressure on at least ${percent(rate.least)} of each situation's snaps` }
      : null,
    rate.most < 1
      ? { kind: 'most', words: `pressure on at most ${percent(rate.most)} of each situation's snaps` }
      : null,
    explosives === undefined ? null : { kind: 'explosives', words: `at most ${explosives} explosive plays a game` },
  ];
  return rules.filter((rule) => rule !== null);
}
