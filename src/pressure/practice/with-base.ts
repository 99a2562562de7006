import type { CallLibrary } from '../../game/call-library.ts';
import type { MenuCall } from '../menu/result.ts';
import type { ChosenMenu } from './script-input.ts';

/**
 * The menu with the library's base calls, which are repped too: the base's share of every situation, in equal parts,
 * since nothing tells the base calls apart. The menu asks for no base reps. A menu that has a base call is left as
 * it is.
 */
export function withBase(menu: ChosenMenu, library: CallLibrary): ChosenMenu {
  const base = library.calls.filter(({ family }) => family === 'base');
  if (base.length === 0 || menu.calls.some(({ family }) => family === 'base')) return menu;
  const mix = menu.situations.map(({ id, baseShare }) => ({ situation: id, share: baseShare / base.length }));
  const expectedCalls = menu.situations.reduce(
    (sum, { expectedSnaps, baseShare }) => sum + (expectedSnaps * baseShare) / base.length,
    0,
  );
  const calls = base.map(
    ({ name, path, coverage, installed }): MenuCall => ({
      call: name,
      family: 'base',
      path,
      coverage,
      mix,
      expectedCalls,
      reps: 0,
      isNew: !installed,
      right: 0,
      wrong: 0,
    }),
  );
  return { ...menu, calls: [...menu.calls, ...calls] };
}
