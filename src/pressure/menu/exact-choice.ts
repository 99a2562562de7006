import type { ExactSolver } from '../../stats/exact-solver.ts';
import { type MenuBook, workOut } from './book.ts';
import type { SearchEnd } from './search.ts';
import { carriedIn, wholeProgram } from './whole-program.ts';

/**
 * Finishes a search that was stopped (a finished one stays as it is): the whole choice is solved as one program, its set joins the book, and the end says
 * that the best menu is proved. The search's own end stands where the program was stopped too.
 */
export function finishExactly(book: MenuBook, end: SearchEnd, exact: ExactSolver): SearchEnd {
  if (end.finished) return end;
  const { program, offset } = wholeProgram(book.problem);
  const solved = exact(program);
  if (solved?.status !== 'optimal') return end;
  workOut(book, carriedIn(book.problem, solved.solution));
  const best = book.best[0]?.objective ?? Number.NEGATIVE_INFINITY;
  const proved = solved.value + offset - best <= ROUNDING;
  return { ...end, ceiling: Math.min(end.ceiling, solved.value + offset), finished: proved, bestOnly: proved };
}

/** The two solvers round differently; far below a printed digit. */
const ROUNDING = 1e-4;
