import { readFileSync } from 'node:fs';
import { readSheet } from '../src/ingest/read-sheet.ts';

const file = process.argv[2] ?? '';
const { chart, rejected } = readSheet({ file, bytes: readFileSync(file) }, { kind: 'opponent' });
// The invented games hold a rare sack behind their own goal line, which is a fault and right to be one.
if (chart.size === 0 || rejected.length > chart.size / 10_000)
  throw new Error(`read ${chart.size}, rejected ${rejected.length}`);
