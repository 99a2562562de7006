import { readFile } from 'node:fs/promises';

/** The desk's one page as built beside the program; null when it was not built. */
export async function deskFile(): Promise<string | null> {
  for (const place of ['./desk.html', '../desk.html']) {
    const text = await readFile(new URL(place, import.meta.url), 'utf8').catch(() => null);
    if (text !== null) return text;
  }
  return null;
}

/** How the desk is opened and where it finds the season. */
export const HOW_TO_OPEN =
  'Double-click it: it opens in a browser, needs no network, and reads the season with "Work in a season folder".';
