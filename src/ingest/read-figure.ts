import { withPlainMinus } from './plain-minus.ts';

/** Words that stand before a number and change nothing: Q2, gain of 3, & 10. */
const BEFORE = /^(?:q|qtr|quarter|gain(?:ed)?(?: of)?|&|and)\s*(?=[\d+-])/i;

/** Words that stand after a number and change nothing: 3rd, 5 yds, 11 personnel, 2.4 sec. */
const AFTER =
  /(?<=\d)\s*(?:st|nd|rd|th|y|yd|yds|yards?|p|pers?|pers\.|personnel|s|secs?|seconds?|pts|points|gain)\.?(?:\s+(?:down|quarter|qtr|q))?$/i;

/** A loss in words: loss of 3, lost 3, 3 loss, 3 yd loss. */
const LOSS = [
  /^(?:loss|lost)(?: of)?\s*-?(\d+)(?:\s*(?:y|yds?|yards?)\.?)?$/i,
  /^-?(\d+)\s*(?:(?:y|yds?|yards?)\.?\s*)?loss$/i,
];

/** A loss as book-keepers write it: (3). */
const BRACKETED = /^\(\s*-?(\d+)\s*(?:(?:y|yds?|yards?)\.?)?\s*\)$/i;

/** Nothing gained, in words. */
const NOTHING = /^(?:no gain|none|n\.?g\.?|even)$/i;

const PLAIN = /^[+-]?\s?\d+(?:[.,]\d+)?$/;

/**
 * The number of a cell in which it stands with words or in brackets: `+5` is 5, `(3)` and `loss of 3` are -3, `-3 yds`
 * is -3, `no gain` is 0, `3rd`, `Q2` and `11 personnel` are 3, 2 and 11, `2,6` is 2.6. NaN for anything else.
 */
export function readFigure(written: string): number {
  const text = withPlainMinus(written).trim().replace(/\s+/g, ' ');
  if (NOTHING.test(text)) return 0;
  const lost = [...LOSS, BRACKETED].map((pattern) => text.match(pattern)?.[1]).find((figure) => figure !== undefined);
  if (lost !== undefined) return 0 - Number(lost);
  const plain = text.replace(BEFORE, '').replace(AFTER, '');
  return PLAIN.test(plain) ? Number(plain.replace(' ', '').replace(',', '.')) : Number.NaN;
}
