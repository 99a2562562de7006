import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { PressuredGroup, PressuredShare, PressuredSplit } from '../../pressure/pressured/pressured-result.ts';
import { answerLabel, capital, plainWords } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { rushGroupWords } from '../words/rush-words.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { sureWord } from '../words/sure-words.ts';
import { type Cell, numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';

/** What they do by what they faced, one row a number of rushers or a coverage; null where nobody charted it. */
export function pressuredTable({ pressured }: WeekPlan, by: PressuredSplit['by']): TableView | null {
  const split = pressured.splits.find((entry) => entry.by === by);
  if (split === undefined || split.groups.length === 0) return null;
  const passes = PASSES.filter((name) =>
    split.groups.some((group) => shareOf(group, 'pass_answer', name) !== undefined),
  );
  return {
    id: `pressured-by-${by}`,
    caption: `${by === 'rushers' ? 'By how many rush' : 'By the coverage'} (charted on ${split.charted} of ${split.snaps} snaps; which pass: of passes)`,
    columns: [
      words('They face'),
      numbers('Snaps'),
      ...(split.runsCharted ? [numbers('Run')] : []),
      ...passes.map((name) => numbers(answerLabel(name))),
      numbers('Ball out'),
      words('What changes'),
    ],
    rows: split.groups.map((group) => groupRow(group, split, passes)),
    empty: 'not charted',
    phone: 'cards',
  };
}

const PASSES = ['screen', 'quick', 'dropback'] as const;

function groupRow(group: PressuredGroup, split: PressuredSplit, passes: readonly string[]): Row {
  const { timed, mean } = group.release;
  return {
    name: capital(rushGroupWords(group.group)),
    ...thinMark(isThin({ trials: group.snaps })),
    cells: [
      numberCell(String(group.snaps), group.snaps),
      ...(split.runsCharted ? [filmCell(shareOf(group, 'run_or_pass', 'run'))] : []),
      ...passes.map((name) => filmCell(shareOf(group, 'pass_answer', name))),
      mean === null ? textCell('not timed') : numberCell(`${fixed(mean, 1)} s (${timed})`, mean),
      textCell(changeWords(group)),
    ],
  };
}

function shareOf(group: PressuredGroup, target: PressuredShare['target'], name: string): PressuredShare | undefined {
  return group.shares.find((share) => share.target === target && share.name === name);
}

function filmCell(share: PressuredShare | undefined): Cell {
  if (share === undefined || share.film.trials === 0) return textCell('not charted');
  return numberCell(shareWords(share.film), share.film.estimate ?? -1);
}

/** What stands out against it, with what to plan on; "no difference" is a finding. */
function changeWords({ shares }: PressuredGroup): string {
  const known = shares.filter(({ sure, target }) => sure !== 'none' && target !== 'result');
  const [first] = [...known].sort((a, b) => a.adjusted - b.adjusted);
  if (first === undefined) return 'no difference';
  const games = first.games.filter(({ trials }) => trials > 0).map(({ count, trials }) => `${count} of ${trials}`);
  return `${plainWords(first.name)}: plan on ${percent(first.planWith)}, else ${percent(first.expected)} (${sureWord(first.sure, first.film)}; by game ${games.join(', ')})`;
}
