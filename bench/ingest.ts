// Reading and validating a sheet against papaparse alone (to arrays), each in its own process, in one run.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeBigSheet } from './big-sheet.ts';
import { bundleForBench, type Limit, machineLine, measureTogether, printRatios } from './measure.ts';

const sizes = process.argv
  .slice(2)
  .map(Number)
  .filter((size) => size > 0);
const folder = mkdtempSync(join(tmpdir(), 'ingest-'));
const papaparse = bundleForBench('read-with-papaparse', folder);
const ours = bundleForBench('read-with-ingest', folder);

console.log(machineLine());
for (const size of sizes.length > 0 ? sizes : [1_000, 10_000, 100_000, 1_000_000]) {
  const sheet = join(folder, `${size}.csv`);
  writeBigSheet(sheet, size);
  const contenders = [
    { name: 'papaparse to arrays', args: [papaparse, sheet] },
    { name: 'ingest and validate', args: [ours, sheet] },
  ];
  const measured = measureTogether(contenders, size >= 1_000_000 ? 1 : 5);
  printRatios(`${size} snaps`, measured, limitsAt(size));
  rmSync(sheet);
}
rmSync(folder, { recursive: true });

/** Small sheets are all start-up, and memory is promised where it matters. */
function limitsAt(size: number): Record<string, Limit> {
  if (size < 100_000) return {};
  return { 'ingest and validate': size >= 1_000_000 ? { cpu: 1, memory: 0.4 } : 1 };
}
