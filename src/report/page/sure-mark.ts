import type { Sure } from '../words/sure-words.ts';
import { type Html, trusted } from './html.ts';

/** The mark of how sure a statement is, with its word in the accessible name; the same on every page. */
export function sureMark(sure: Sure): Html {
  return trusted(
    `<svg class="sure" role="img" aria-label="${sure}" viewBox="0 0 14 14"><g aria-hidden="true">${SHAPES[sure]}</g></svg>`,
  );
}

/** The mark with its word beside it. */
export function sureWithWord(sure: Sure): Html {
  return trusted(`<span class="how-sure">${sureMark(sure).text} ${sure}</span>`);
}

/** Filled, half, ring, dash: separated in black on white by shape alone. */
const SHAPES: Readonly<Record<Sure, string>> = {
  clear: '<circle class="full" cx="7" cy="7" r="5.5"/>',
  likely: '<circle class="line" cx="7" cy="7" r="5"/><path class="full" d="M7,2a5,5 0 0 0 0,10Z"/>',
  lean: '<circle class="line" cx="7" cy="7" r="5"/>',
  'no difference': '<path class="line" d="M2,7h10"/>',
};
