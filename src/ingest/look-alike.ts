/** Letters and marks that are typed for a digit because they look like it; judgment. */
const DIGIT_FOR: Readonly<Record<string, string>> = {
  O: '0',
  o: '0',
  l: '1',
  I: '1',
  i: '1',
  '|': '1',
  Z: '2',
  z: '2',
  S: '5',
  s: '5',
  B: '8',
};

/** The text with every letter that looks like a digit turned into it. */
export function withDigits(text: string): string {
  return [...text].map((character) => DIGIT_FOR[character] ?? character).join('');
}

/**
 * `Did you mean "10"?`, followed by what differs when the eye cannot see it (a letter for a digit, a letter of another
 * alphabet). Undefined when the two texts are the same, for then there is nothing to suggest.
 */
export function suggest(found: string, meant: string): string | undefined {
  if (found === meant) return undefined;
  const difference = explainDifference(found, meant);
  return `Did you mean "${meant}"?${difference === undefined ? '' : ` ${difference}`}`;
}

function explainDifference(found: string, meant: string): string | undefined {
  const written = [...found];
  const right = [...meant];
  if (written.length !== right.length) return undefined;
  const place = written.findIndex((character, i) => character.toLowerCase() !== right[i]?.toLowerCase());
  const character = written[place];
  if (character === undefined || !looksAlike(character, right[place] ?? '')) return undefined;
  return `The ${ordinal(place, written.length)} character is ${nameOf(character)}.`;
}

function looksAlike(written: string, right: string): boolean {
  return DIGIT_FOR[written] === right || DIGIT_FOR[right] === written || (written.codePointAt(0) ?? 0) > 127;
}

function nameOf(character: string): string {
  if (/\d/.test(character)) return `the digit ${character}`;
  if ((character.codePointAt(0) ?? 0) > 127) return 'a letter of another alphabet that only looks like it';
  return character === '|' ? 'an upright stroke' : `the letter ${character}`;
}

function ordinal(place: number, length: number): string {
  if (place === length - 1 && length > 1) return 'last';
  return ['first', 'second', 'third'][place] ?? `${place + 1}th`;
}
