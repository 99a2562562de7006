import type { RowProblem } from './row-problem.ts';
import type { SheetPlan } from './sheet-plan.ts';

/**
 * The warning for a row of a foreign sheet that charts none of the cells every snap needs, or holds one cell only: a
 * title, a total or a note between the snaps. Undefined for a snap, and where fewer than two of those columns are read
 * from cells.
 */
export function noSnapProblem(
  plan: SheetPlan | undefined,
  cells: readonly string[],
  place: Pick<RowProblem, 'file' | 'row'>,
): RowProblem | undefined {
  const needed = plan?.needed ?? [];
  if (needed.length < 2) return undefined;
  const filled = cells.filter((cell) => cell.trim() !== '');
  if (filled.length === 1) {
    const rule = 'is all that the row holds, which was left out as no snap';
    return { ...place, severity: 'warning', found: filled[0]?.trim() ?? '', rule };
  }
  if (needed.some(({ index }) => (cells[index] ?? '').trim() !== '')) return undefined;
  const names = needed.map(({ header }) => `"${header.trim()}"`).join(', ');
  return { ...place, severity: 'warning', found: '', rule: `charts none of ${names}, and was left out as no snap` };
}
