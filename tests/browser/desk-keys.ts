import type { Page } from 'playwright-core';

/** From the start page to the strip, by keyboard alone. */
export async function newSeason(page: Page, opponent = 'Cedar Falls'): Promise<void> {
  await page.getByLabel('First opponent').waitFor();
  await tabTo(page, (label) => label.includes('First opponent'));
  await page.keyboard.type(opponent);
  await page.keyboard.press('Enter');
  await page.getByRole('application', { name: 'Charting strip' }).waitFor();
}

/** Presses keys one after another; `hold` holds the space bar down for a throw. */
export async function press(page: Page, keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    if (key === 'hold') {
      await page.keyboard.down(' ');
      await page.waitForTimeout(320);
      await page.keyboard.up(' ');
    } else await page.keyboard.press(key);
  }
}

/** Presses Tab until what is there is the button, then Enter. */
export async function pressButton(page: Page, name: string): Promise<void> {
  await tabTo(page, (words) => words === name);
  await page.keyboard.press('Enter');
}

/** More tabs than lead around the longest page: while a sheet is drawn the report still has its own. */
const MOST_TABS = 400;

/** Presses Tab until the words of what has the focus are the ones wanted: its label's, else its name or its text. */
export async function tabTo(page: Page, isWanted: (words: string) => boolean): Promise<void> {
  for (let tabs = 0; tabs < MOST_TABS; tabs++) {
    if (isWanted(await wordsHere(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`not reached within ${MOST_TABS} tabs; the last was ${await wordsHere(page)}`);
}

function wordsHere(page: Page): Promise<string> {
  return page.evaluate(() => {
    const here = document.activeElement === document.body ? null : document.activeElement;
    const labels = (here as HTMLInputElement | null)?.labels ?? [];
    const label = [...labels].map(({ textContent }) => textContent ?? '').join(' ');
    return (here?.getAttribute('aria-label') || label || here?.textContent || '').trim();
  });
}

/** Titles and texts of the pages that are sent to the printer from now on. */
export async function watchPrinter(page: Page): Promise<() => Promise<readonly { title: string; text: string }[]>> {
  await page.evaluate(() => {
    const printed: { title: string; text: string }[] = [];
    Object.assign(window, { printed });
    const inside = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow')?.get;
    Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', {
      get(this: HTMLIFrameElement) {
        const frame = inside?.call(this);
        if (frame)
          frame.print = () =>
            printed.push({ title: frame.document.title, text: frame.document.body.textContent ?? '' });
        return frame;
      },
    });
  });
  return async () => {
    await page.waitForFunction(() => (window as never as { printed: unknown[] }).printed.length > 0);
    return page.evaluate(() => (window as never as { printed: [] }).printed.splice(0));
  };
}
