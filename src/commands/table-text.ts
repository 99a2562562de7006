/** Rows as aligned columns of plain text under a header; the first column reads left, the others right. */
export function tableText(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [header, ...rows];
  const widths = header.map((_, column) => Math.max(...all.map((row) => [...(row[column] ?? '')].length)));
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0)))
      .join('  ')
      .trimEnd();
  return `${[line(header), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n')}\n`;
}
