import { lookKindLabel } from './look-card-kind.ts';
import type { PracticeScript } from './script-result.ts';

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
    cards.find(({ number }) => number === rep.card)?.words ?? '',
    rep.reasons.join(' '),
    rep.watch,
  ]);
  return [SCRIPT_HEADER, ...rows];
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
