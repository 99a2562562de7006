/**
 * One code of 0 to 255 for every snap. A plain loop: for long charts, an eighth of the time of building a typed array
 * from an iterated list.
 */
export function codesBySnap(size: number, codeAt: (index: number) => number): Uint8Array {
  const codes = new Uint8Array(size);
  for (let i = 0; i < size; i++) codes[i] = codeAt(i);
  return codes;
}
