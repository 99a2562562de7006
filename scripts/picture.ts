// Draws the README's pictures in headless Chromium: docs/report.png from the demo week's report, docs/desk.png from the
// built desk with the demo season on it.
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
await tab.setViewportSize({ width: 1280, height: 720 });
await tab.goto(`file://${resolve('dist/desk.html')}`);
await tab.getByRole('button', { name: 'Open the invented demo' }).click();
await tab.getByRole('application').waitFor();
for (const key of ['l', '1', 'b', 'q', 'c', '7', 'Space', '6']) await tab.keyboard.press(key);
await tab.getByText('What they do so far, 1').waitFor();
await tab.screenshot({ path: 'docs/desk.png' });
await browser.close();
console.log('docs/report.png, docs/desk.png');
