import { readFileSync } from 'node:fs';
import { readSheet } from '../src/ingest/read-sheet.ts';

const file = process.argv[2] ?? '';
const { chart, rejected } = readSheet({ file, bytes: readFileSync(file) }, { kind: 'opponent' });
if (chart.size === 0 || rejected.length > 0) throw new Error(`read ${chart.size}, rejected ${rejected.length}`);
