import { plain } from './candidates.ts';
import { hasMenu } from './choice.ts';
import { type CompiledMenu, compileMenu } from './compile.ts';
import type { MenuInput } from './input.ts';
import type { MenuRule } from './rule.ts';

/**
 * A smallest set of limits that cannot hold together, in words: each limit is lifted in turn and stays lifted when the
 * rest still clash (deletion filter). With one more limit lifted there would be a menu.
 *
 * @see Chinneck and Dravnieks 1991, ORSA Journal on Computing 3:157
 */
export function clashingLimits(input: MenuInput, { rules, offer }: CompiledMenu): string[] {
  const impossible = impossibleMusts(input, offer.out);
  if (impossible.length > 0) return impossible;
  let lifted: readonly MenuRule[] = [];
  for (const rule of rules) {
    const more = [...lifted, rule];
    if (!hasMenu(compileMenu(input, more).problem)) lifted = more;
  }
  return rules.filter((rule) => !lifted.includes(rule)).map(({ words }) => words);
}

/** Calls that must be carried and cannot be, with the reason. Base calls are carried anyway. */
export function impossibleMusts(
  { library, settings }: MenuInput,
  out: readonly { readonly call: string; readonly why: string }[],
): string[] {
  return settings.menu.must.flatMap((must) => {
    if (!library.calls.some(({ name }) => plain(name) === plain(must)))
      return [`${must} must be carried, but defense.yaml has no such call`];
    const left = out.find(({ call }) => plain(call) === plain(must));
    return left ? [`${must} must be carried, but is ${left.why}`] : [];
  });
}
