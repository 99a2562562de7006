// Draws docs/report.png, the README's picture, from the demo week's report in headless Chromium.
import { existsSync, mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { chromium } from 'playwright-core';

const page = resolve(process.argv[2] ?? 'pressure-plan-demo/week-09/out/report.html');
const program = [
  process.env['CHROMIUM_PATH'],
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
].find((path) => path && existsSync(path));
if (!program) throw new Error('no Chromium was found; set CHROMIUM_PATH');
mkdirSync('docs', { recursive: true });
const browser = await chromium.launch({ executablePath: program, args: ['--no-sandbox', '--disable-gpu'] });
const tab = await browser.newPage({ viewport: { width: 1280, height: 900 }, colorScheme: 'light' });
await tab.goto(`file://${page}`);
await tab.screenshot({ path: 'docs/report.png' });
await browser.close();
console.log('docs/report.png');
