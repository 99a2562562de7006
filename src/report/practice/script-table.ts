import { lookKindLabel } from '../../game/look-kinds.ts';
import type { ContactLoad } from '../../pressure/practice/contact.ts';
import type { RepReason } from '../../pressure/practice/rep-look.ts';
import type { PracticeScript, ScriptRep } from '../../pressure/practice/script-result.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { familyLabel } from '../words/label.ts';
import { situationName } from '../words/situation-label.ts';
import { repWatch } from './rep-watch.ts';

/** The repetitions of one period as a table. */
export function periodTable(
  reps: readonly ScriptRep[],
  place: { readonly id: string; readonly caption: string },
): TableView {
  return {
    id: place.id,
    caption: place.caption,
    columns: ['Rep', 'Situation', 'Hash', 'Call', 'Sent', 'Card', 'Why', 'Watch'].map((head) => words(head)),
    rows: reps.map((rep) => ({
      name: String(rep.number),
      cells: [
        textCell(situationName(rep.situation)),
        textCell(rep.hash),
        textCell(rep.isNew ? `${rep.call} (NEW)` : rep.call),
        textCell(sentWords(rep.sentFrom)),
        textCell(`${rep.card} ${lookKindLabel(rep.look)}`),
        textCell(reasonWords(rep.reasons)),
        textCell(repWatch(rep.family, rep.look)),
      ],
    })),
    empty: 'no reps',
  };
}

/**
 * Why a look is repped; a look that is only expected has no words.
 *
 * @example "worst, make or break"
 */
export function reasonWords(reasons: readonly RepReason[]): string {
  return reasons
    .filter((reason) => reason !== 'forecast')
    .map((reason) => reason.replaceAll('_', ' '))
    .join(', ');
}

/** How often every call is repped, against what. */
export function countTable({ calls }: PracticeScript): TableView {
  return {
    id: 'counts',
    caption: 'Reps by call',
    columns: [words('Call'), words('Family'), numbers('Reps'), numbers('Asked by the menu'), words('Against')],
    rows: calls.map((call) => ({
      name: call.isNew ? `${call.call} (NEW)` : call.call,
      cells: [
        textCell(familyLabel(call.family)),
        numberCell(String(call.reps), call.reps),
        numberCell(call.family === 'base' ? '' : String(call.asked), call.asked),
        textCell(call.looks.map(({ look, reps }) => `${lookKindLabel(look)} ${reps}`).join('; ')),
      ],
    })),
    empty: 'no call is carried',
  };
}

/** Full contact by day against the limits. */
export function contactTable(load: ContactLoad): TableView {
  return {
    id: 'contact',
    caption: `Full contact (thud and live): ${load.weekMinutes} minutes on ${load.contactDays} ${load.contactDays === 1 ? 'day' : 'days'}`,
    columns: [words('Day'), numbers('Minutes in this plan'), numbers('Full contact')],
    rows: load.days.map(({ day, minutes, fullContact }) => ({
      name: day,
      cells: [numberCell(String(minutes), minutes), numberCell(String(fullContact), fullContact)],
    })),
    empty: 'week.yaml plans no practice days',
  };
}

function sentWords(from: string): string {
  return from === 'either' ? 'either' : from.replaceAll('_', ' ');
}
