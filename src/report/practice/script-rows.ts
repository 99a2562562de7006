import { lookKindLabel } from '../../game/look-kinds.ts';
import type { PracticeScript } from '../../pressure/practice/script-result.ts';
import { cardWords } from './card-words.ts';
import { repWatch } from './rep-watch.ts';

/** The script as rows of a sheet, header first. */
export function scriptRows({ reps, cards }: PracticeScript): readonly (readonly (string | number)[])[] {
  const rows = reps.map((rep) => [
    rep.number,
    rep.day,
    rep.period,
    rep.contact,
    rep.situation,
    rep.hash,
    rep.call,
    rep.isNew ? 'yes' : 'no',
    rep.path,
    rep.family,
    rep.coverage,
    rep.sentFrom,
    rep.card,
    lookKindLabel(rep.look),
    cardText(cards, rep.card),
    rep.reasons.join(' '),
    repWatch(rep.family, rep.look),
  ]);
  return [SCRIPT_HEADER, ...rows];
}

function cardText(cards: PracticeScript['cards'], wanted: number): string {
  const card = cards.find(({ number }) => number === wanted);
  return card === undefined ? '' : cardWords(card);
}

const SCRIPT_HEADER: readonly string[] = [
  'rep',
  'day',
  'period',
  'contact',
  'situation',
  'hash',
  'call',
  'new',
  'path',
  'family',
  'coverage',
  'sent_from',
  'card',
  'look',
  'look_in_words',
  'why',
  'watch',
];
