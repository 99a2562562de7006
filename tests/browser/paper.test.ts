import { spawnSync } from 'node:child_process';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderCallSheet } from '../../src/report/render-call-sheet.ts';
import { renderReport } from '../../src/report/render-report.ts';
import { renderTipSheet } from '../../src/report/render-tip-sheet.ts';
import { inventedPlan } from '../report/invented-plan.ts';
import {
  bundledPageScript,
  chromiumPath,
  hasPdfTools,
  launchBrowser,
  openPage,
  pageFolder,
  pdfGreys,
  pdfPages,
} from './browser.ts';

const folder = pageFolder();
const plan = inventedPlan();
let browser: Browser;
let report: string;

async function print(name: string, text: string, scheme: 'light' | 'dark'): Promise<string> {
  const { page } = await openPage(browser, folder.write(`${name}.html`, text), { scheme });
  const path = folder.path(`${name}.pdf`);
  await page.pdf({ path, preferCSSPageSize: true });
  await page.close();
  return path;
}

describe.skipIf(chromiumPath === null || !hasPdfTools)('on paper', () => {
  beforeAll(async () => {
    browser = await launchBrowser();
    // The system is dark, as a tired staff's laptop is; paper must not be.
    report = await print('report', await renderReport(plan, { script: await bundledPageScript() }), 'dark');
  });

  afterAll(async () => {
    await browser?.close();
    folder.remove();
  });

  it('the report is letter landscape', () => {
    const { stdout } = spawnSync('pdfinfo', [report], { encoding: 'utf8' });
    expect(stdout).toMatch(/Page size:\s+792 x 612 pts/);
  });

  it('the report prints its open parts on eight sides at most, the first screen on the first', () => {
    const sides = pdfPages(report);
    expect(sides.length).toBeGreaterThan(3);
    expect(sides.length).toBeLessThanOrEqual(8);
    for (const head of ['CALL IT LIKE THIS', 'WHY', 'STAY OUT OF', 'HOW WE LOOK', 'HOW SURE'])
      expect(sides[0]).toContain(head);
  });

  it('closed parts and controls are not printed, cautions are', () => {
    const text = pdfPages(report).join('\n');
    expect(text).not.toMatch(/Glossary|Dark page|Print everything|What if\?|Mostly from/);
    expect(text).toContain('licensed athletic');
    expect(text).toContain('Invented demonstration data');
  });

  it('with everything open the method is printed, and headings stand on every page of a long table', async () => {
    const sides = pdfPages(await print('full', await renderReport(plan, { full: true }), 'light'));
    expect(sides.join('\n')).toContain('Mostly from');
    const withRows = sides.filter(
      (page) => (page.match(/^ *\d(?:st|nd|rd|th) and \w+ +(?:Run|Screen|Quick|Dropback)/gm) ?? []).length > 5,
    );
    expect(withRows.length).toBeGreaterThanOrEqual(2);
    for (const page of withRows) expect(page).toMatch(/Situation +(?:What|Their answer)/);
  });

  it('paper is white and ink black although the system is dark', () => {
    for (const page of [1, 2, 4]) {
      const greys = pdfGreys(report, page);
      const mean = greys.reduce((sum, grey) => sum + grey, 0) / greys.length;
      expect(mean).toBeGreaterThan(200);
      expect(greys.some((grey) => grey < 80)).toBe(true);
    }
  });

  it('the call sheet has two sides at most and its type is large', async () => {
    const path = await print('call-sheet', await renderCallSheet(plan), 'dark');
    const pages = pdfPages(path);
    expect(pages.length).toBeLessThanOrEqual(2);
    expect(pages[0]).toContain('3rd and long');
    expect(pages.at(-1)).toContain('state association');
    const { page } = await openPage(browser, `file://${folder.path('call-sheet.html')}`);
    const size = await page
      .locator('.calls')
      .first()
      .evaluate((cell) => Number.parseFloat(getComputedStyle(cell).fontSize));
    expect(size).toBeGreaterThanOrEqual(18);
    await page.close();
  });

  it('the tip sheet is one side', async () => {
    expect(pdfPages(await print('tip-sheet', await renderTipSheet(plan), 'dark'))).toHaveLength(1);
  });
});
