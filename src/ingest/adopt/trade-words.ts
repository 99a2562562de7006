import type { ColumnName } from '../../game/columns.ts';
import { slipsBetween } from '../nearest-word.ts';

/**
 * What coaches call our columns: trade words and plain ones, as phrases of lower-case words. Judgment; no list of any
 * program stands behind them.
 */
const HEADER_WORDS: Readonly<Record<ColumnName, readonly string[]>> = {
  offense: ['offense', 'offence', 'possession', 'team with the ball'],
  defense: ['defense', 'defence'],
  game: ['game', 'match', 'film'],
  week: ['week', 'wk'],
  snap: ['snap', 'play number', 'play no', 'snap number', 'play', 'no', 'number'],
  drive: ['drive', 'series', 'possession number'],
  quarter: ['quarter', 'qtr', 'q', 'period'],
  clock: ['clock', 'time', 'time left', 'game clock', 'time remaining'],
  score_margin: ['score margin', 'margin', 'score difference', 'score diff', 'lead', 'lead by'],
  down: ['down', 'dn', 'dwn'],
  to_go: ['to go', 'distance', 'yards to go', 'need', 'yards needed', 'dist', 'dst', 'togo', 'ydg'],
  ball_on: [
    'ball on',
    'yard line',
    'field position',
    'spot',
    'yards to goal',
    'line of scrimmage',
    'ball position',
    'ball',
    'los',
  ],
  hash: ['hash', 'hsh', 'h', 'hash mark', 'hashmark'],
  personnel: ['personnel', 'personnel group', 'grouping', 'grp'],
  formation: ['formation', 'fm', 'set'],
  receivers: ['receivers', 'receiver distribution', 'distribution'],
  strength: ['strength', 'formation strength', 'passing strength', 'strong side'],
  back_spot: ['back spot', 'back', 'back alignment', 'backs'],
  quarterback_depth: ['quarterback depth', 'qb depth', 'qb alignment', 'quarterback alignment', 'qb'],
  motion: ['motion', 'shift'],
  tempo: ['tempo', 'no huddle', 'huddle', 'pace'],
  checked: ['checked', 'check', 'audible', 'changed', 'changed at the line'],
  play_kind: ['play kind', 'play type', 'run pass', 'run or pass', 'r p', 'p r', 'rp', 'kind', 'type'],
  option_tag: ['option tag', 'option', 'rpo', 'read option'],
  concept: ['concept', 'play name', 'play', 'play call', 'pass concept', 'run concept'],
  protectors: ['protectors', 'protection', 'in protection', 'blockers'],
  slide: ['slide', 'line slide', 'protection slide'],
  back_action: ['back action', 'back job', 'what the back did'],
  backs_released: ['backs released', 'backs out'],
  rushers_faced: ['rushers', 'rushers faced', 'pass rushers', 'rush', 'number of rushers'],
  coverage_faced: ['coverage', 'coverage faced', 'shell'],
  time_to_throw: ['time to throw', 'ball out', 'release time', 'throw time', 'time to release'],
  target_zone: ['target zone', 'zone thrown', 'target area', 'where thrown', 'thrown to'],
  target_depth: ['target depth', 'air yards', 'depth of target', 'pass depth', 'depth thrown'],
  gain: ['gain', 'yards gained', 'yards', 'gained', 'yds'],
  result: ['result', 'outcome', 'play result'],
  call: ['call', 'our call', 'pressure call', 'defensive call', 'pressure'],
  path: ['path', 'pressure path', 'blitz path'],
  family: ['family', 'pressure family'],
  coverage: ['coverage', 'our coverage'],
  rotation: ['rotation'],
  shown_early: ['shown early', 'showed'],
  note: ['note', 'notes', 'comment', 'comments', 'remarks'],
};

/** Marks of a yes or no that tells more of the play, by our word for it. */
export const FLAG_WORDS: Readonly<Record<string, readonly string[]>> = {
  scramble: ['scramble'],
  screen: ['screen'],
  play_action: ['play action'],
  throwaway: ['throw away', 'throwaway', 'thrown away'],
};

/** How well a header names one of our columns, 0 to 1: 1 says so outright, 0 says nothing of it. */
export function headerLikeness(header: string, column: ColumnName): number {
  return Math.max(
    ...[column.replaceAll('_', ' '), ...HEADER_WORDS[column]].map((phrase) => phraseLikeness(header, phrase)),
  );
}

/** How well a header says a phrase of trade words, 0 to 1. */
export function phraseLikeness(header: string, phrase: string): number {
  const tokens = headerTokens(header);
  const words = phrase.split(' ');
  const said = tokens.join(' ');
  if (said === '') return 0;
  if (said === phrase || tokens.join('') === words.join('')) return 1;
  if (words.every((word) => tokens.includes(word))) return 0.4 + 0.5 * (words.length / tokens.length);
  if (said.length >= 3 && phrase.startsWith(said)) return 0.85;
  return isSlip(said, phrase) ? 0.75 : 0;
}

/** The words of a header in lower case: `YardsToGo`, `yards_to_go` and `Yards to go` are the same three. */
export function headerTokens(header: string): string[] {
  return header
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .replaceAll('#', ' number ')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
}

/** Whether a header is a trade word for any of our columns. */
export function isTradeHeader(header: string): boolean {
  // Most cells of a sheet are figures, and no trade word is one.
  if (!/[\p{L}#]/u.test(header)) return false;
  return (Object.keys(HEADER_WORDS) as ColumnName[]).some((column) => headerLikeness(header, column) >= 0.75);
}

/** Whether a cell is the label of a row of sums. */
export function isTotalLabel(cell: string): boolean {
  return /^(?:(?:grand|sub)?[\s-]*totals?|sums?|averages?|avg\.?|means?|all plays|all snaps)\b/i.test(cell.trim());
}

/** Short words differ by one slip from many others. */
function isSlip(said: string, phrase: string): boolean {
  const allowed = phrase.length >= 8 ? 2 : 1;
  return said.length >= 5 && phrase.length >= 5 && slipsBetween(said, phrase) <= allowed;
}
