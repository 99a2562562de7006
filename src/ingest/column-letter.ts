/** The letter a spreadsheet gives a column, from its index: 0 is A, 26 is AA. */
export function columnLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${columnLetter(Math.floor(index / 26) - 1)}${last}`;
}
