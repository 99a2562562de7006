/** Rows as aligned columns of plain text under a header: columns of numbers read right, all others left. */
export function tableText(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [header, ...rows];
  const widths = header.map((_, column) => Math.max(...all.map((row) => [...(row[column] ?? '')].length)));
  const right = header.map((_, column) => column > 0 && isNumbers(rows.map((row) => row[column] ?? '')));
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (right[column] ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0)))
      .join('  ')
      .trimEnd();
  return `${[line(header), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n')}\n`;
}

/** Whether every cell that holds anything begins like a number. */
function isNumbers(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  return filled.length > 0 && filled.every((cell) => /^[-+\u2212]?\d/.test(cell));
}
