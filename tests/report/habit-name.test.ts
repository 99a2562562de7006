import { expect, it } from 'vitest';
import { TARGET_DEFINITIONS } from '../../src/pressure/forecast/target.ts';
import { habitName } from '../../src/report/words/habit-name.ts';

it.each([
  ['run_or_pass', 'run', 'Any run'],
  ['back_job', 'releases_wide', 'Back: releases wide'],
  ['answer', 'quarterback_run', 'QB run'],
  ['protectors', 'seven_or_more', 'Seven or more protect'],
] as const)('%s, %s is said as "%s"', (target, name, said) => {
  expect(habitName(target, name)).toBe(said);
});

it('no two habits of different questions bear one name', () => {
  const names = TARGET_DEFINITIONS.flatMap(({ target, classes }) => {
    const counted = classes.length === 2 ? classes.slice(0, 1) : classes;
    return counted.map((name) => habitName(target, name)).filter((name) => target !== 'answer' || name !== 'Screen');
  });
  expect(new Set(names).size).toBe(names.length);
});
