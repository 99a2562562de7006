/** The letter a spreadsheet gives a column, from its index: 0 is A, 26 is AA. */
export function columnLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${columnLetter(Math.floor(index / 26) - 1)}${last}`;
}

/** The index of a column from its letter in upper case: A is 0, AA is 26. */
export function columnIndex(letter: string): number {
  return [...letter].reduce((index, character) => index * 26 + character.charCodeAt(0) - 64, 0) - 1;
}
