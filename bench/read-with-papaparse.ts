import { readFileSync } from 'node:fs';
import Papa from 'papaparse';

const { data } = Papa.parse<string[]>(readFileSync(process.argv[2] ?? '', 'utf8'), { skipEmptyLines: true });
if (data.length < 2) throw new Error('no rows');
