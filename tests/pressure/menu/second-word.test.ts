import { describe, expect, it } from 'vitest';
import type { CallLibrary, GivenUp } from '../../../src/game/call-library.ts';
import type { MenuInput } from '../../../src/pressure/menu/input.ts';
import { secondWords } from '../../../src/pressure/menu/second-word.ts';
import { checkCall } from '../../../src/pressure/soundness/soundness.ts';
import { demoDefense } from '../demo-defense.ts';
import { inputOf } from './invented-menu-week.ts';

const week = inputOf({ calls: [], snaps: { first: 30 }, net: () => 0 });

/** The demo's calls without some of them, against an offense that meets these holes on two snaps of ten. */
function inputWithout(names: readonly string[], met: readonly GivenUp[] = []): MenuInput {
  const library: CallLibrary = { ...demoDefense, calls: demoDefense.calls.filter(({ name }) => !names.includes(name)) };
  const families = [...new Set(library.calls.map(({ family }) => family))].map((family) => ({
    family,
    situation: 'all',
    net: { mean: 0, low: 0, high: 0 },
  }));
  const holes = met.map((hole) => ({ hole, share: 0.2, situations: [{ situation: 'first', share: 0.2 }] }));
  return { ...week, library, fit: { ...week.fit, families, holes } as unknown as MenuInput['fit'] };
}

const menOf = (cover: readonly { readonly role: string; readonly job: string }[]) =>
  cover.map(({ role, job }) => `${job} ${role}`).sort();

describe('a second word behind a path', () => {
  it('is the one a staff wrote by hand behind the lantern', () => {
    const written = demoDefense.calls.find(({ name }) => name === 'Lantern Roof')!;
    const found = secondWords(inputWithout(['Lantern Roof', 'Lantern Lock']), 'lantern');
    const same = found.find(({ coverage }) => coverage === written.coverage);
    expect(menOf(same?.men ?? [])).toEqual(menOf(written.cover));
  });

  it('gives every job of the coverage to one man who does not rush', () => {
    const written = demoDefense.calls.find(({ name }) => name === 'Funnel Roof')!;
    const found = secondWords(inputWithout(['Funnel Roof', 'Funnel Lock']), 'funnel');
    const men = found.find(({ coverage }) => coverage === 'three deep')?.men ?? [];
    expect(men.map(({ job }) => job).sort()).toEqual(written.cover.map(({ job }) => job).sort());
    expect(men.map(({ role }) => role).sort()).toEqual(written.cover.map(({ role }) => role).sort());
    expect(menOf(men)).toEqual(expect.arrayContaining(['seam_near nickel', 'deep_third_near corner_field']));
  });

  it('is sound, new behind the path, and at most two are named', () => {
    for (const path of new Set(demoDefense.calls.map((call) => call.path))) {
      const taught = demoDefense.calls.filter((call) => call.path === path).map(({ coverage }) => coverage);
      const rush = demoDefense.calls.find((call) => call.path === path)!.rush;
      const found = secondWords(inputWithout([]), path);
      expect(found.length).toBeLessThanOrEqual(2);
      for (const { coverage, family, men } of found) {
        expect(taught).not.toContain(coverage);
        const donor = demoDefense.calls.find((call) => call.coverage === coverage)!;
        const cover = donor.cover.map((man, i) => ({ ...man, ...men[i]! }));
        const call = { ...donor, family, rush: rush.map((man) => ({ ...man, peels: false })), cover };
        expect(checkCall(call, demoDefense).filter(({ declared }) => !declared)).toEqual([]);
      }
    }
  });

  it('is never one they would find open', () => {
    const open = secondWords(inputWithout(['Funnel Lock']), 'funnel').map(({ coverage }) => coverage);
    const runs = secondWords(inputWithout(['Funnel Lock'], ['quarterback_run']), 'funnel');
    expect(open).toContain('lock free');
    expect(runs.map(({ coverage }) => coverage)).not.toContain('lock free');
  });

  it('is nobody’s business where the path is not in the library', () => {
    expect(secondWords(inputWithout([]), 'no such path')).toEqual([]);
  });
});
