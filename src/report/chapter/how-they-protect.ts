import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { ProtectionChapter, SoundnessFault } from '../../pressure/protection/protection-result.ts';
import { html } from '../page/html.ts';
import type { Chapter } from '../view/block.ts';
import { protectionChart } from '../view/protection-chart.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { pictureLabel } from '../words/label.ts';
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
      { kind: 'heading', id: 'soundness', text: 'Are our own calls sound?' },
      { kind: 'table', table: soundnessTable(soundness) },
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

function soundnessTable(faults: readonly SoundnessFault[]): TableView {
  return {
    id: 'soundness-table',
    caption: 'What our calls leave open',
    columns: [words('Call'), words('Who'), words('Rule'), words('What is open'), words('On purpose?')],
    rows: faults.map((fault) => ({
      name: fault.call,
      cells: [
        textCell(fault.role ?? 'nobody in particular'),
        textCell(fault.rule),
        textCell(fault.words),
        textCell(fault.declared ? 'yes, declared' : 'no: fix it or declare it'),
      ],
    })),
    empty: 'every call keeps every rule, or there is no call library',
  };
}
