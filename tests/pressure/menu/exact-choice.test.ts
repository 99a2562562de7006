import { describe, expect, it } from 'vitest';
import { bigWeek } from '../../../bench/menu-week.ts';
import { chooseMenu } from '../../../src/pressure/menu/choice.ts';
import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import type { MenuProblem } from '../../../src/pressure/menu/model.ts';
import { carriedIn, wholeProgram } from '../../../src/pressure/menu/whole-program.ts';
import { loadExactSolver } from '../../../src/stats/exact-solver.ts';

// HiGHS (the highs package) is the second opinion here: it shares no code with the search over sets of calls.
const exact = await loadExactSolver();
const problemOf = (calls: number, seed: number) => compileMenu(bigWeek(calls, seed)).problem;
const chosen = (problem: MenuProblem, mostParts: number, solver?: typeof exact) =>
  chooseMenu({ problem, wanted: 2, mostParts, exact: solver });

describe('the whole choice as one program', () => {
  it.each([1, 2])('has the optimum that the search proves, on an invented library of twenty calls (%i)', (seed) => {
    const problem = problemOf(20, seed);
    const searched = chosen(problem, 6000);
    const { program, offset } = wholeProgram(problem);
    const solved = exact(program);
    if (solved?.status !== 'optimal' || searched === null) throw new Error('both choose a menu');
    expect(searched.end.finished).toBe(true);
    expect(solved.value + offset).toBeCloseTo(searched.book.best[0]?.objective ?? Number.NaN, 5);
    expect(carriedIn(problem, solved.solution)).toEqual(searched.book.best[0]?.set);
  });
});

describe('a search that was stopped', () => {
  it('is finished by the exact solver, which says that the best alone is proved', () => {
    const problem = problemOf(20, 2);
    const whole = chosen(problem, 6000);
    const stopped = chosen(problem, 1);
    const finished = chosen(problem, 1, exact);
    expect(stopped?.end.finished).toBe(false);
    expect(finished?.end).toMatchObject({ finished: true, bestOnly: true });
    expect(finished?.book.best[0]?.objective).toBeCloseTo(whole?.book.best[0]?.objective ?? Number.NaN, 6);
  });

  it('keeps its own end where the exact solver was stopped too', () => {
    const problem = problemOf(20, 2);
    expect(chosen(problem, 1, () => null)?.end).toEqual(chosen(problem, 1)?.end);
  });
});
