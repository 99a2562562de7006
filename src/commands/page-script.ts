import { readFile } from 'node:fs/promises';

/** The page's own script as bundled beside the program, or the empty text when the build did not make it. */
export async function pageScript(): Promise<string> {
  return readFile(new URL('./page-script.js', import.meta.url), 'utf8').catch(() =>
    readFile(new URL('../page-script.js', import.meta.url), 'utf8').catch(() => ''),
  );
}
