import type { SituationCalls } from '../../pressure/halftime/best-calls.ts';
import type { HalftimeUpdate } from '../../pressure/halftime/halftime.ts';
import type { RushGroup } from '../../pressure/snap/rush-group.ts';
import { type Cell, numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { answerInSentence, answerLabel, familyLabel } from '../words/label.ts';
import { counted, ordinal, signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { countWords } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';
import { overtakingWords } from './halftime-words.ts';

/** Calls one screen has room for. */
export const CALLS_SHOWN = 8;
/** Situations one screen has room for, the most frequent first. */
const SITUATIONS_SHOWN = 6;
/** Calls named for a situation. */
const CALLS_NAMED = 2;

/** What they answer: Sunday, tonight, now. */
export function answersTable({ forecasts }: HalftimeUpdate): TableView {
  const all = forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
  return {
    id: 'answers',
    caption: 'What they do with the ball',
    columns: [words('All snaps'), numbers('Sunday'), numbers('Tonight'), numbers('Now')],
    rows: (all?.classes ?? []).map(({ name, before, share, firstHalf }) => ({
      name: answerLabel(name),
      cells: [
        numberCell(percent(before), before),
        numberCell(countWords(firstHalf), firstHalf.estimate ?? -1),
        numberCell(percent(share), share),
      ],
    })),
    empty: 'no forecast',
  };
}

/** The carried calls, best fit first, with what was used of them. */
export function callsTable({ calls, ours }: HalftimeUpdate): TableView {
  return {
    id: 'calls',
    caption: 'Carried calls, best first',
    columns: [words('Call'), ...['Sunday', 'Now', 'Points', 'Called', 'Plan', 'Held'].map((head) => numbers(head))],
    rows: calls.slice(0, CALLS_SHOWN).map((call, i) => {
      const seen = ours.calls.find((entry) => entry.call === call.call);
      return {
        // No place in front: a number before a call is the wristband's.
        name: `${call.call}${moveMark(call, i + 1)}`,
        cells: [
          fitCell(call.fit?.before),
          fitCell(call.fit?.now),
          numberCell(signed(call.now), call.now),
          ours.charted.count === 0 ? textCell('') : numberCell(String(call.used), call.used),
          numberCell(String(Math.round(call.planned)), call.planned),
          textCell(seen && seen.held.trials > 0 ? countWords(seen.held) : ''),
        ],
      };
    }),
    empty: 'Sunday’s plan carries no menu',
  };
}

/** Right less wrong, of ten snaps. */
function fitCell(net: number | undefined): Cell {
  return net === undefined ? textCell('') : numberCell(signed(10 * net), net);
}

/** Kinds of pass named against one rush. */
const PASSES_NAMED = 3;

const SENT: Readonly<Record<RushGroup, string>> = {
  three_or_fewer: 'Three or fewer',
  four: 'Four',
  five: 'Five',
  six_or_more: 'Six or more',
};

/** What they did tonight against four, five and six. */
export function rushTable({ byRush }: HalftimeUpdate): TableView {
  return {
    id: 'by-rush',
    caption: 'Their answer tonight, by how many we sent',
    columns: [words('Sent'), numbers('Run'), words('Passes'), numbers('Held')],
    rows: byRush.map(({ group, snaps, runs, passes, held }) => ({
      name: `${SENT[group]}, ${counted(snaps, 'snap', 'snaps')}`,
      cells: [
        textCell(runs.trials === 0 ? '' : countWords(runs)),
        textCell(
          passes
            .slice(0, PASSES_NAMED)
            .map(({ answer, count }) => `${answerInSentence(answer)} ${count}`)
            .join(', '),
        ),
        textCell(held.trials === 0 ? '' : countWords(held)),
      ],
    })),
    empty: 'chart our call beside the snap, or how many rushed',
  };
}

/** The families, best first. */
export function familiesTable({ families }: HalftimeUpdate): TableView {
  return {
    id: 'families',
    caption: 'Families, best first',
    columns: [words('Family'), numbers('Sunday'), numbers('Now')],
    rows: families.map((family, i) => ({
      name: `${familyLabel(family.family)}${moveMark(family, i + 1)}`,
      cells: [numberCell(signed(family.before), family.before), numberCell(signed(family.now), family.now)],
    })),
    empty: 'no family to show',
  };
}

/** Sunday's calls by situation in tonight's order; a call that moved up says over whom, and which snaps did it. */
export function situationsTable({ situations }: HalftimeUpdate): TableView {
  const common = [...situations].sort((a, b) => b.expectedSnaps - a.expectedSnaps);
  return {
    id: 'situations',
    caption: 'Sunday’s calls by situation, tonight’s order',
    columns: [words('Situation'), words('Call now')],
    rows: common.slice(0, SITUATIONS_SHOWN).map((entry) => ({
      name: situationLabel(entry.situation),
      cells: [textCell([callsWords(entry), ...entry.overtakings.map(overtakingWords)].join('. '))],
    })),
    empty: 'Sunday’s plan carries no menu',
  };
}

function callsWords({ calls }: SituationCalls): string {
  if (calls.length === 0) return 'base';
  return calls
    .slice(0, CALLS_NAMED)
    .map(({ call }) => call)
    .join(', ');
}

function moveMark({ rankBefore }: { readonly rankBefore: number }, rank: number): string {
  if (rankBefore === rank) return '';
  return ` ${rankBefore > rank ? '↑' : '↓'} from ${ordinal(rankBefore)}`;
}
