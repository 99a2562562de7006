import type { ProtectionMix } from '../../pressure/protection/protection-result.ts';
import type { Share } from '../../stats/share.ts';
import { shareRow } from '../chart/share-row.ts';
import { capital, plainWords } from '../words/label.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { BACK_JOBS } from '../words/why-words.ts';
import type { ChartView } from './block.ts';
import { numbers, shareCell, type TableView, textCell, thinMark, words } from './table-view.ts';

/** One charted habit of their protection. */
export interface ProtectionHabit {
  readonly group: string;
  readonly name: string;
  readonly share: Share;
}

/** Protectors, slide and the back's job as shares with intervals. */
export function protectionChart(mix: ProtectionMix): ChartView {
  const habits = protectionHabits(mix);
  return {
    id: 'protection-habits',
    title: habitTitle(mix),
    caption:
      'Dot: on film; the bar is the range of the long run. Open dot and dashed bar: under 20 snaps. Hatched: not charted.',
    drawing: habits.some((habit) => habit.share.trials > 0)
      ? { kind: 'strips', rows: habits.map(habitRow), axis: AXIS }
      : null,
    empty: 'Protection is not charted, so nothing is drawn.',
    table: habitTable(habits),
  };
}

/** All charted habits in the order a coach asks for them. */
export function protectionHabits(mix: ProtectionMix): readonly ProtectionHabit[] {
  return [
    ...mix.protectors.map(({ count, share }) => ({ group: 'Protectors', name: `${count} protect`, share })),
    { group: 'Slide', name: 'Slide to the back', share: mix.slideToBack },
    { group: 'Slide', name: 'Slide to the field', share: mix.slideToField },
    { group: 'Slide', name: 'Slide to the strength', share: mix.slideToStrength },
    ...mix.backJobs.map(({ job, share }) => ({
      group: 'Back',
      name: capital(BACK_JOBS[job] ?? plainWords(job)),
      share,
    })),
  ];
}

const AXIS = {
  title: 'of passes on which it was charted',
  domain: [0, 1],
  format: 'percent',
  reference: null,
} as const;

function habitRow({ name, share }: ProtectionHabit) {
  return shareRow(name, name, share);
}

function habitTitle({ backJobs }: ProtectionMix): string {
  const blocks = backJobs.find((entry) => entry.job === 'blocks')?.share;
  if (blocks === undefined || blocks.estimate === null) return 'What the back does on a pass is not charted';
  return `The back stays in to block on ${shareWords(blocks)} of their charted passes`;
}

function habitTable(habits: readonly ProtectionHabit[]): TableView {
  return {
    id: 'protection-habits-table',
    caption: 'Their protection habits on film',
    columns: [words('Habit'), words('About'), numbers('On film')],
    rows: habits.map((habit) => ({
      name: habit.name,
      ...thinMark(isThin(habit.share)),
      cells: [textCell(habit.group), shareCell(habit.share)],
    })),
    empty: 'not charted',
  };
}
