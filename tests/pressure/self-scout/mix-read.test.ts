import { describe, expect, it } from 'vitest';
import { filmOf, STYLES } from '../fit/styles.ts';
import { menuAgainst, planAgainst } from '../menu/style-menus.ts';
import { chapterOf } from './own-log.ts';
import { type PlayedMenu, playedPlan } from './played-plan.ts';

const LOGS = 20;

/** Of twenty films of four games called by the menu's mix, on how many our own self-scout says the path gives us away. */
function filmsRead(menu: PlayedMenu): number {
  const films = Array.from({ length: LOGS }, (_, seed) => chapterOf(playedPlan(menu, 4, seed)));
  return films.filter(({ remedy }) => remedy.givesAway).length;
}

// Styles against which two coverages behind a path are both worth calling.
const offenses = ['air raid', 'running quarterback', 'screen team'].map((style) => ({
  style,
  offense: STYLES.find((one) => one.style === style) ?? STYLES[0]!,
}));

describe('four games called by the planned mix, before our own self-scout', () => {
  it.each(offenses)('do not give the coverage away by the path against a $style', ({ offense }) => {
    const menu = menuAgainst(planAgainst(filmOf(offense)));
    expect(new Set(menu.calls.map(({ coverage }) => coverage)).size).toBeGreaterThan(2);
    // The 99.9% point of the films read by chance when one in ten is: binomial, 20 trials.
    expect(filmsRead(menu)).toBeLessThanOrEqual(7);
  });

  it('would give it away if each path always came with its usual coverage', () => {
    const [{ offense }] = offenses as [(typeof offenses)[number]];
    const menu = menuAgainst(planAgainst(filmOf(offense)));
    const firsts = menu.calls.map((call) => menu.calls.find(({ path }) => path === call.path) ?? call);
    const calls = menu.calls.map((call, i) => ({ ...call, coverage: firsts[i]!.coverage }));
    expect(filmsRead({ ...menu, calls })).toBe(LOGS);
  });
});
