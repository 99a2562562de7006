/**
 * A number with a fixed number of decimals and a true minus sign; a value that rounds to zero carries no sign.
 *
 * @param value - any finite number
 * @param decimals - 0 to 6
 * @example fixed(-0.34, 1) // "−0.3"
 */
export function fixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `\u2212${text}` : text;
}

/**
 * A gain or loss with its sign, one decimal.
 *
 * @example signed(0.42) // "+0.4"
 */
export function signed(value: number): string {
  const text = fixed(value, 1);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
}

/**
 * A noun with its count; commas between thousands.
 *
 * @example counted(1, 'snap', 'snaps') // "1 snap"
 * @example counted(12390, 'habit', 'habits') // "12,390 habits"
 */
export function counted(count: number, one: string, many: string): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** A whole number as read aloud: commas between thousands. */
function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}

/**
 * A place in an order.
 *
 * @example ordinal(3) // "3rd"
 */
export function ordinal(place: number): string {
  const isTeen = Math.floor(place / 10) % 10 === 1;
  return `${place}${(isTeen ? undefined : ['th', 'st', 'nd', 'rd'][place % 10]) ?? 'th'}`;
}

/**
 * Words joined as in a sentence.
 *
 * @example listed(['nose', 'will', 'mike']) // "nose, will and mike"
 */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
