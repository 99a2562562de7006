import { expect, it } from 'vitest';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { menuRules } from '../../../src/pressure/menu/rule.ts';

const rulesOf = (menu: Record<string, unknown>) =>
  menuRules(weekSettingsSchema.parse({ opponent: 'Harrow Creek', menu }).menu, ['three_deep']);
const kindsOf = (menu: Record<string, unknown>) => rulesOf(menu).map(({ kind }) => kind);

it('a cap of every call is no limit: the page lists none that could not bind', () => {
  expect(kindsOf({ pairing_cap: 1, path_share: 1 })).not.toContain('pairing');
  expect(kindsOf({ pairing_cap: 1, path_share: 1 })).not.toContain('path');
  expect(rulesOf({ pairing_cap: 0.7, path_share: 0.4 })).toEqual(
    expect.arrayContaining([
      { kind: 'pairing', limit: 0.7 },
      { kind: 'path', limit: 0.4 },
    ]),
  );
});

it('lists big plays only where the staff set a limit to them', () => {
  expect(kindsOf({})).not.toContain('explosives');
  expect(rulesOf({ explosives: 3 })).toContainEqual({ kind: 'explosives', limit: 3 });
});

it('names each must and each ban by its call', () => {
  expect(rulesOf({ must: ['Roof'], ban: ['Lock'] })).toEqual(
    expect.arrayContaining([
      { kind: 'must', of: 'Roof' },
      { kind: 'ban', of: 'Lock' },
    ]),
  );
});
