import { expect, it } from 'vitest';
import { formationText } from '../../src/commands/formation-text.ts';

const named = (count: number, open: number) =>
  Array.from({ length: count }, (_, i) => ({ name: `Quilt ${i + 1}`, snaps: 10 - open, open, guesses: [] }));

it('lists fifteen formations the book does not have, and counts the rest, be it one', () => {
  expect(formationText(named(15, 4))).toMatch(/Quilt 15/);
  expect(formationText(named(15, 4))).not.toContain('more');
  const text = formationText(named(16, 4));
  expect(text).not.toContain('Quilt 16');
  expect(text).toMatch(/… and 1 more\n$/);
});

it('says nothing of formations without a blank to fill', () => {
  expect(formationText(named(3, 0))).toBe('');
  expect(formationText([])).toBe('');
});

it('says what was charted with a name, or that nothing was', () => {
  const guesses = [{ column: 'receivers', word: '3x1', count: 5, charted: 6 }] as const;
  const [bare] = named(1, 4);
  if (bare === undefined) throw new Error('one was asked for');
  expect(formationText([{ ...bare, guesses }])).toContain('receivers 3x1 (5 of 6)');
  expect(formationText([bare])).toContain('nothing charted');
});
