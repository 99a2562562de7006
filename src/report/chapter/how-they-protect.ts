import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { ProtectionChapter } from '../../pressure/protection/protection-result.ts';
import type { SoundnessFault } from '../../pressure/soundness/fault.ts';
import { html } from '../page/html.ts';
import { type Block, type Chapter, foldedTables } from '../view/block.ts';
import { isCarried } from '../view/carried-calls.ts';
import { fateTable } from '../view/fate-table.ts';
import { freeRusherTable } from '../view/free-rusher-table.ts';
import { protectionChart } from '../view/protection-chart.ts';
import { protectionSituationTable } from '../view/protection-situation-table.ts';
import { raceChart } from '../view/race-chart.ts';
import { raceCurveChart } from '../view/race-curve-chart.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { pictureLabel } from '../words/label.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { protectionMixWords } from '../words/protection-mix-words.ts';
import { failureWords, ruleOfFailure } from '../words/soundness-words.ts';

/** How they protect, which of our rushers comes free, and whether he is home in time. */
export function howTheyProtectChapter(plan: WeekPlan): Chapter {
  const { mix, soundness } = plan.protection;
  const roles = plan.library?.roles ?? [];
  const matched = plan.protection.calls.filter((entry) => isCarried(plan)(entry.call));
  return {
    id: 'how-they-protect',
    title: 'How they protect and who comes free',
    short: 'Protection',
    blocks: [
      ...sourceBlocks(mix),
      ...(mix.source === 'assumed' ? [] : [{ kind: 'chart', chart: protectionChart(mix) } as const]),
      ...freeRushers(mix, freeRusherTable(matched, roles)),
      ...openFaults(soundness),
      {
        kind: 'folded',
        summary: 'Who is home before the ball is out',
        blocks: [
          { kind: 'chart', chart: raceChart(plan) },
          { kind: 'chart', chart: raceCurveChart(plan) },
        ],
      },
      foldedTables(
        'Protections to expect, and every call against them',
        picturesTable(mix),
        ...(mix.situations === undefined ? [] : [protectionSituationTable(mix)]),
        fateTable(matched, roles),
      ),
      ...declaredFaults(soundness),
    ],
  };
}

/** Said only where something was assumed: charted protection needs no word. */
function sourceBlocks(mix: ProtectionChapter['mix']): readonly Block[] {
  return mix.source === 'charted' ? [] : [{ kind: 'prose', html: html`<p>${protectionMixWords(mix)}</p>\n` }];
}

/** Who comes free; folded away where it rests on usual protections and not on theirs. */
function freeRushers({ source }: ProtectionChapter['mix'], table: TableView): readonly Block[] {
  if (table.rows.length === 0) return [];
  return source === 'assumed'
    ? [foldedTables('Who would come free against usual protections', table)]
    : [{ kind: 'table', table }];
}

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
    empty: 'no protection is expected',
  };
}

/** What a call leaves open that nobody declared stands in sight. */
function openFaults(faults: readonly SoundnessFault[]): readonly Block[] {
  const open = faults.filter(({ declared }) => !declared);
  return open.length === 0 ? [] : [{ kind: 'table', table: soundnessTable('soundness-table', open) }];
}

function declaredFaults(faults: readonly SoundnessFault[]): readonly Block[] {
  const declared = faults.filter((fault) => fault.declared);
  if (declared.length === 0) return [];
  const summary = `Left open on purpose, as declared in defense.yaml (${counted(declared.length, 'place', 'places')})`;
  return [foldedTables(summary, soundnessTable('declared-table', declared))];
}

function soundnessTable(id: 'soundness-table' | 'declared-table', faults: readonly SoundnessFault[]): TableView {
  return {
    id,
    caption: id === 'soundness-table' ? 'Left open and not declared: fix it or declare it' : 'Declared in defense.yaml',
    columns: [words('Call'), words('Rule'), words('What is open')],
    rows: faults.map(({ call, failure }) => ({
      name: call,
      cells: [textCell(ruleOfFailure(failure)), textCell(failureWords(failure))],
    })),
    empty: 'nothing',
  };
}
