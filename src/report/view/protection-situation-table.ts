import type { ProtectionMix, SituationProtection } from '../../pressure/protection/protection-result.ts';
import { percent } from '../words/percent.ts';
import { situationLabel } from '../words/situation-label.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** How they are expected to protect in each situation, with the passes of it on which that was charted. */
export function protectionSituationTable(mix: ProtectionMix): TableView {
  return {
    id: 'protection-situations-table',
    caption: 'Protection expected in each situation',
    columns: [
      words('Situation'),
      numbers('Five'),
      numbers('Six'),
      numbers('Seven or more'),
      numbers("Slide to the back's side"),
      numbers('Back out wide'),
      words('Charted there (protectors, slide, back)'),
    ],
    rows: (mix.situations ?? []).map(situationRow),
    empty: 'not told apart: the one mix stands for every situation',
  };
}

function situationRow({ situation, protectors, slideToBack, backWide, charted }: SituationProtection): Row {
  const [five = 0, six = 0, seven = 0, eight = 0] = protectors;
  const shares = [five, six, seven + eight, slideToBack, backWide];
  const counts = [charted.protectors, charted.slide, charted.back];
  return {
    name: situationLabel(situation),
    situation,
    cells: [...shares.map((share) => numberCell(percent(share), share)), textCell(counts.join(', '))],
    ...(Math.max(...counts) < THIN && { thin: true as const }),
  };
}

/** Below this many passes a situation's protection rests on their other situations; as everywhere on the page. */
const THIN = 20;
