import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { differentWords } from '../words/different-words.ts';
import { sureWord } from '../words/sure-words.ts';
import { type TableView, textCell, words } from './table-view.ts';

/** Everything that makes them different, with how sure. */
export function differentTable(plan: WeekPlan): TableView {
  return {
    id: 'different-table',
    caption: 'Everything that makes them different',
    columns: [words('What'), words('How sure')],
    rows: plan.different.lines.map((line) => ({
      name: differentWords(line),
      cells: [textCell(sureWord(line.sure, line.film))],
    })),
    empty: 'nothing stands out',
  };
}
