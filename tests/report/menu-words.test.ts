import { expect, it } from 'vitest';
import { proofWords } from '../../src/report/words/menu-words.ts';
import { inventedPlan } from './invented-plan.ts';

const { menu } = inventedPlan();
if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');

it('a proved menu is said to be proved, and only an unproved one that the search stopped', () => {
  const proved = proofWords({ ...menu, proof: { proved: true } });
  expect(proved).toMatch(/^No other menu within the limits is better; that is proved\./);
  expect(proved).not.toContain('stopped');
  const open = proofWords({ ...menu, proof: { proved: false, gap: 0.251 } });
  expect(open).toMatch(/^The search stopped early: another menu could be better by at most 0\.25 snaps a game\./);
  expect(open).not.toMatch(/that is proved/);
});
