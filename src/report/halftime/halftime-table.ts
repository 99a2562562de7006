import type { HalftimeCall, HalftimeUpdate } from '../../pressure/halftime/halftime.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { answerLabel, familyLabel } from '../words/label.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

/** Calls one screen has room for. */
const CALLS_SHOWN = 10;
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
    rows: (all?.classes ?? []).map(({ name, before, share, tonight }) => ({
      name: answerLabel(name),
      cells: [
        numberCell(percent(before), before),
        numberCell(`${tonight.count} of ${tonight.trials}`, tonight.estimate ?? -1),
        numberCell(percent(share), share),
      ],
    })),
    empty: 'no forecast',
  };
}

/** The carried calls, best first, with what was used of them. */
export function callsTable({ calls, tonight }: HalftimeUpdate): TableView {
  return {
    id: 'calls',
    caption: 'Carried calls, best first',
    columns: [words('Call'), numbers('Sunday'), numbers('Now'), numbers('Used'), numbers('Held')],
    rows: calls.slice(0, CALLS_SHOWN).map((call, i) => {
      const seen = tonight.calls.find((entry) => entry.call === call.call);
      return {
        name: `${i + 1} ${call.call}${moveMark(call, i + 1)}`,
        cells: [
          numberCell(signed(call.before), call.before),
          numberCell(signed(call.now), call.now),
          textCell(`${call.used} of ${Math.round(call.planned)}`),
          textCell(seen && seen.held.trials > 0 ? `${seen.held.count} of ${seen.held.trials}` : ''),
        ],
      };
    }),
    empty: 'Sunday’s plan carries no menu',
  };
}

/** The families, best first. */
export function familiesTable({ families }: HalftimeUpdate): TableView {
  return {
    id: 'families',
    caption: 'Families, best first',
    columns: [words('Family'), numbers('Sunday'), numbers('Now')],
    rows: families.map((family, i) => ({
      name: `${i + 1} ${familyLabel(family.family)}${moveMark(family, i + 1)}`,
      cells: [numberCell(signed(family.before), family.before), numberCell(signed(family.now), family.now)],
    })),
    empty: 'no family to show',
  };
}

/** The best calls by situation. */
export function situationsTable({ situations, calls }: HalftimeUpdate): TableView {
  const common = situations.filter(({ id }) => id !== 'all').sort((a, b) => b.expectedSnaps - a.expectedSnaps);
  return {
    id: 'situations',
    caption: 'Sunday’s calls by situation, tonight’s order',
    columns: [words('Situation'), words('Call now')],
    rows: common.slice(0, SITUATIONS_SHOWN).map(({ id, label }) => ({
      name: label,
      cells: [textCell(bestIn(id, calls))],
    })),
    empty: 'no situation to show',
  };
}

/** Share from which on Sunday's sheet calls a call in a situation. */
const ON_SHEET = 0.005;

/** Sunday's calls for the situation in tonight's order: nothing is recommended that the sheet never calls there. */
function bestIn(situation: string, calls: readonly HalftimeCall[]): string {
  const onSheet = calls.filter(({ mix }) => mix.some((part) => part.situation === situation && part.share > ON_SHEET));
  const scored = onSheet.flatMap((call) => {
    const here = call.bySituation.find((entry) => entry.situation === situation);
    return here ? [{ call: call.call, now: here.now }] : [];
  });
  const best = scored.sort((a, b) => b.now - a.now).slice(0, CALLS_NAMED);
  return best.length === 0 ? 'base' : best.map(({ call, now }) => `${call} ${signed(now)}`).join(', ');
}

function moveMark({ rankBefore }: { readonly rankBefore: number }, rank: number): string {
  if (rankBefore === rank) return '';
  return rankBefore > rank ? ` ↑${rankBefore}` : ` ↓${rankBefore}`;
}
