import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parse, stringify } from 'yaml';

/** The files of a season by their path within it. */
export type SeasonFiles = Readonly<Record<string, Uint8Array>>;

const DEMO = 'data/demo/season';
const head = (path: string, rows: number) =>
  Buffer.from(
    `${readFileSync(join(DEMO, path), 'utf8')
      .split('\n')
      .slice(0, rows + 1)
      .join('\n')}\n`,
  );

/** Calls of the small library: few, so that a week is planned in a fraction of the time. */
const CALLS = 6;

function smallLibrary(): Uint8Array {
  const library = parse(readFileSync(join(DEMO, 'defense.yaml'), 'utf8'));
  const step = Math.floor(library.calls.length / CALLS);
  const calls = library.calls.filter((_: unknown, i: number) => i % step === 0).slice(0, CALLS);
  return Buffer.from(stringify({ ...library, calls }));
}

function smallWeek(): Uint8Array {
  const week = parse(readFileSync(join(DEMO, 'week-09/week.yaml'), 'utf8'));
  return Buffer.from(stringify({ ...week, menu: { ...week.menu, size: 4, pressure_rate: { least: 0, most: 1 } } }));
}

/** A season cut from the invented demo, small enough to be planned many times. */
export function smallSeason(): SeasonFiles {
  return {
    'defense.yaml': smallLibrary(),
    'ours.csv': head('ours.csv', 60),
    'archive/one.csv': head('archive/larkmoor.csv', 90),
    'week-09/week.yaml': smallWeek(),
    'week-09/opponent.csv': head('week-09/opponent-latest.csv', 60),
    'week-09/live.csv': head('week-09/live.csv', 25),
    'week-09/game.csv': head('week-09/game.csv', 30),
    'week-09/ours.csv': head('week-09/ours.csv', 30),
  };
}

/** Writes the files into a folder of their own, lets `use` work on it, and takes the folder away. */
export async function withSeason<Result>(
  files: SeasonFiles,
  use: (season: string) => Promise<Result>,
): Promise<Result> {
  const season = mkdtempSync(join(tmpdir(), 'fuzz-'));
  try {
    for (const [path, bytes] of Object.entries(files)) {
      mkdirSync(dirname(join(season, path)), { recursive: true });
      writeFileSync(join(season, path), bytes);
    }
    return await use(season);
  } finally {
    rmSync(season, { recursive: true, force: true });
  }
}
