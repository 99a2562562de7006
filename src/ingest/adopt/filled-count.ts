/** How many cells hold anything but white space. */
export function filledCount(cells: readonly string[]): number {
  return cells.filter((cell) => cell.trim() !== '').length;
}
