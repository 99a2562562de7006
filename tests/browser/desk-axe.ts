import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

/** What axe finds wrong on the page as it stands, and that the page is wider than a window of that many pixels. */
export async function looksWrong(page: Page, width: number): Promise<string[]> {
  const { violations }: AxeResults = await page.evaluate(
    `(() => { ${axe.source}; return window.axe.run(document, { iframes: false }); })()`,
  );
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  return [...violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`), ...(wide > width ? [`${wide} wide`] : [])];
}
