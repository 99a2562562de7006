import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { ProtectionChapter, SoundnessFault } from '../../pressure/protection/protection-result.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { protectionChart } from '../view/protection-chart.ts';
import { protectionSituationTable } from '../view/protection-situation-table.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { pictureLabel } from '../words/label.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

/** How they protect: protectors, slide, the back's job, the pictures expected, and what our own calls fail against. */
export function howTheyProtectChapter(plan: WeekPlan): Chapter {
  const { mix, soundness } = plan.protection;
  return {
    id: 'how-they-protect',
    title: 'How they protect',
    short: 'Protection',
    blocks: [
      { kind: 'prose', html: html`<p><b>${SOURCE_WORDS[mix.source]}</b> ${mix.note}</p>\n` },
      { kind: 'chart', chart: protectionChart(mix) },
      { kind: 'table', table: picturesTable(mix) },
      ...(mix.situations === undefined
        ? []
        : [{ kind: 'folded' as const, summary: 'By situation', table: protectionSituationTable(mix) }]),
      { kind: 'heading', id: 'soundness', text: 'Are our own calls sound?' },
      ...soundnessBlocks(soundness),
    ],
  };
}

const SOURCE_WORDS: Readonly<Record<ProtectionChapter['mix']['source'], string>> = {
  charted: 'Charted.',
  assumed: 'Assumed, not charted.',
  'partly charted': 'Partly charted.',
};

function picturesTable(mix: ProtectionChapter['mix']): TableView {
  const pictures = [...mix.pictures].sort((a, b) => b.share - a.share);
  return {
    id: 'pictures-table',
    caption: 'Protections to expect on their passes',
    columns: [words('Protection'), numbers('Share of passes')],
    rows: pictures.map(({ picture, share }) => ({
      name: pictureLabel(picture),
      cells: [numberCell(percent(share), share)],
    })),
    empty: 'no protection was expected',
  };
}

/** What nobody declared stands open on the page; what was declared on purpose is folded away. */
function soundnessBlocks(faults: readonly SoundnessFault[]): readonly Block[] {
  const open = faults.filter(({ declared }) => !declared);
  const declared = faults.filter((fault) => fault.declared);
  const table: Block = { kind: 'table', table: soundnessTable('soundness-table', open) };
  if (declared.length === 0) return [table];
  const summary = `Left open on purpose, as declared in defense.yaml (${counted(declared.length, 'place', 'places')})`;
  return [table, { kind: 'folded', summary, table: soundnessTable('declared-table', declared) }];
}

function soundnessTable(id: 'soundness-table' | 'declared-table', faults: readonly SoundnessFault[]): TableView {
  return {
    id,
    caption: id === 'soundness-table' ? 'Left open and not declared: fix it or declare it' : 'Declared in defense.yaml',
    columns: [words('Call'), words('Rule'), words('What is open')],
    rows: faults.map((fault) => ({ name: fault.call, cells: [textCell(fault.rule), textCell(fault.words)] })),
    empty: 'nothing; every call keeps its rules or says what it gives up, or no call library was given',
  };
}
