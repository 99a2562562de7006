import { expect, it } from 'vitest';
import { saysOf } from '../../../src/pressure/pressured/pressured-question.ts';

/** Snaps by game and group, run and pass alike; groups met in no game are zeros. */
function saysIn(games: readonly (readonly number[])[]): number[] {
  const counts = games.map((groups) => Float64Array.from(groups.flatMap((snaps) => [snaps / 2, snaps / 2])));
  const classes = 2;
  const came = new Float64Array((games[0]?.length ?? 0) * classes);
  const crossed = counts.map((cells) => ({ counts: cells }));
  return saysOf({ games: crossed, due: { came, classes } } as unknown as Parameters<typeof saysOf>[0], 'run_or_pass');
}

// Kish 1965, Survey Sampling: n snaps in clusters of m, of which any two are alike by rho, count for n / (1 + (m - 1) rho).
// A game is worth 36 snaps of run or pass, so rho is 1/37.
it.each([
  { games: [[30]], part: 1 / (1 + 29 / 37), of: 'thirty snaps of one game' },
  { games: [[15], [15]], part: 1 / (1 + 14 / 37), of: 'fifteen in each of two games' },
  { games: [[2], [2], [2]], part: 1 / (1 + 1 / 37), of: 'two in each of three games' },
])('$of count in part, since those of one game are alike', ({ games, part }) => {
  expect(saysIn(games)[0]).toBeCloseTo(part, 12);
});

it('counts each group by its own games, and nothing where it was never met', () => {
  const [often, once, never] = saysIn([
    [30, 2, 0],
    [0, 0, 0],
  ]);
  expect(often).toBeCloseTo(1 / (1 + 29 / 37), 12);
  expect(once).toBeCloseTo(1 / (1 + 1 / 37), 12);
  expect(never).toBe(0);
});
