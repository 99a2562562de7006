import { plainName } from '../../game/plain-name.ts';
import { choose } from './chosen.ts';
import { type CompiledMenu, compileMenu } from './compile.ts';
import type { MenuInput } from './input.ts';
import type { ImpossibleMust } from './result.ts';
import { type MenuRule, RULE_KINDS } from './rule.ts';

/**
 * A smallest set of limits that cannot hold together: each limit is lifted in turn and stays lifted when the rest still
 * clash (deletion filter). With one more limit lifted there would be a menu.
 *
 * @see Chinneck and Dravnieks 1991, ORSA Journal on Computing 3:157
 */
export function clashingLimits(input: MenuInput, { rules, offer }: CompiledMenu): (MenuRule | ImpossibleMust)[] {
  const impossible = impossibleMusts(input, offer.out);
  if (impossible.length > 0) return impossible;
  let lifted: readonly MenuRule[] = [];
  for (const rule of [...rules].sort((a, b) => RULE_KINDS.indexOf(a.kind) - RULE_KINDS.indexOf(b.kind))) {
    const more = [...lifted, rule];
    if (!hasMenu(input, more)) lifted = more;
  }
  return rules.filter((rule) => !lifted.includes(rule));
}

function hasMenu(input: MenuInput, lifted: readonly MenuRule[]): boolean {
  const { problem } = compileMenu(input, lifted);
  return choose({ problem, aim: { kind: 'points' } }, input.exact) !== null;
}

/** Calls that must be carried and cannot be, with the reason. Base calls are carried anyway. */
export function impossibleMusts({ library, settings }: MenuInput, out: CompiledMenu['offer']['out']): ImpossibleMust[] {
  return settings.menu.must.flatMap((of): ImpossibleMust[] => {
    if (!library.calls.some(({ name }) => plainName(name) === plainName(of)))
      return [{ kind: 'impossible_must', of, why: null }];
    const left = out.find(({ call }) => plainName(call) === plainName(of));
    return left ? [{ kind: 'impossible_must', of, why: left.why }] : [];
  });
}
