import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { halftime } from '../../src/commands/halftime.ts';
import { report } from '../../src/commands/report.ts';
import { review } from '../../src/commands/review.ts';
import { cellsOf, sheetOfCells } from './mutate-sheet.ts';
import { type SeasonFiles, smallSeason, withSeason } from './small-season.ts';
import { tryReport } from './trial.ts';

/** A whole plan takes seconds, so that few orders are tried. */
const RUNS = { numRuns: 3 };

const season = smallSeason();

/** The report.json of a season as text, without the seal, which is of the files' bytes. */
async function planOf(files: SeasonFiles): Promise<string> {
  return withSeason(files, async (folder) => {
    expect(await tryReport(folder)).toEqual({ kind: 'correct' });
    const plan = readFileSync(join(folder, 'week-09/out/report.json'), 'utf8');
    return plan.replaceAll(folder, 'season').replace(/,\n "seal": \{[^}]*\}/, '');
  });
}

type Shuffle = <Item>(items: readonly Item[]) => Item[];

/** A way to put any list into another order, drawn by fast-check. */
const shuffles = fc.infiniteStream(fc.nat()).map(
  (keys): Shuffle =>
    (items) =>
      items
        .map((item) => ({ item, key: keys.next().value }))
        .sort((one, other) => one.key - other.key)
        .map(({ item }) => item),
);

interface Library {
  readonly calls: readonly { readonly rush: readonly object[]; readonly cover: readonly object[] }[];
}

const library: Library & { readonly calls: readonly object[] } = JSON.parse(await planOf(season)).library;
const inFull = (changed: object): SeasonFiles => ({ ...season, 'defense.yaml': Buffer.from(stringify(changed)) });
const plain = await planOf(inFull(library));

/** As it is but for the order of lists. */
function withoutOrder(value: unknown): unknown {
  if (Array.isArray(value)) {
    const items = value.map(withoutOrder);
    return items.sort((one, other) => (JSON.stringify(one) < JSON.stringify(other) ? -1 : 1));
  }
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, withoutOrder(held)]));
}

/** As it is but for the last digits, which follow from the order in which numbers are added up. */
function withoutLastDigits(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value), (_, held) =>
    typeof held === 'number' ? Number(held.toPrecision(9)) : held,
  );
}

const quiet = { out: () => {}, note: () => {}, progress: () => {}, today: '2026-10-18' };

/** Lets `use` work on a copy of the whole demo season, and takes it away. */
async function withDemo<Result>(use: (folder: string) => Promise<Result>): Promise<Result> {
  return withSeason({}, async (folder) => {
    cpSync('data/demo/season', folder, { recursive: true });
    return use(folder);
  });
}

/** The season with the rows of some of its sheets in another order. */
function withRows(shuffle: Shuffle, which: (path: string) => boolean): SeasonFiles {
  const files = Object.entries(inFull(library)).map(([path, bytes]) => {
    if (!path.endsWith('.csv') || !which(path)) return [path, bytes];
    const [header = [], ...rows] = cellsOf(bytes);
    return [path, sheetOfCells([header, ...shuffle(rows)])];
  });
  return Object.fromEntries(files);
}

describe('the order in which things are written changes nothing in report.json', () => {
  it('of the men who rush and cover: to the byte', async () => {
    const shuffled = (shuffle: Shuffle) =>
      library.calls.map((call) => ({ ...call, rush: shuffle(call.rush), cover: shuffle(call.cover) }));
    await fc.assert(
      fc.asyncProperty(shuffles, async (shuffle) => {
        expect(await planOf(inFull({ ...library, calls: shuffled(shuffle) }))).toBe(plain);
      }),
      RUNS,
    );
  });

  it('of the calls: but for the order of lists', async () => {
    await fc.assert(
      fc.asyncProperty(shuffles, async (shuffle) => {
        const plan = await planOf(inFull({ ...library, calls: shuffle(library.calls) }));
        expect(withoutOrder(JSON.parse(plan))).toEqual(withoutOrder(JSON.parse(plain)));
      }),
      RUNS,
    );
  });

  it('of the calls of a whole library, where menus all but equal compete: the same menu', async () => {
    const planned = async (change: (calls: readonly object[]) => readonly object[]) =>
      withDemo(async (folder) => {
        const defense = parse(readFileSync(join(folder, 'defense.yaml'), 'utf8'));
        writeFileSync(join(folder, 'defense.yaml'), stringify({ ...defense, calls: change(defense.calls) }));
        await report(join(folder, 'week-08'), {}, quiet);
        return JSON.parse(readFileSync(join(folder, 'week-08/out/report.json'), 'utf8')).menu;
      });
    const menu = await planned((calls) => calls);
    expect(menu.calls.length).toBeGreaterThan(5);
    expect(withoutOrder(await planned((calls) => [...calls].reverse()))).toEqual(withoutOrder(menu));
  });

  it('of the rows of sheets with weeks and snap numbers: to the byte', async () => {
    await fc.assert(
      fc.asyncProperty(shuffles, async (shuffle) => {
        expect(await planOf(withRows(shuffle, (path) => !path.startsWith('archive/')))).toBe(plain);
      }),
      RUNS,
    );
  });

  it('of the rows of the archive: but for last digits', async () => {
    await fc.assert(
      fc.asyncProperty(shuffles, async (shuffle) => {
        const plan = await planOf(withRows(shuffle, (path) => path.startsWith('archive/')));
        expect(withoutLastDigits(JSON.parse(plan))).toEqual(withoutLastDigits(JSON.parse(plain)));
      }),
      RUNS,
    );
  });
});

describe('the order of rows changes nothing on Friday and Monday, where snap numbers are charted', () => {
  /** halftime.json and review.json of Sunday's plan with tonight's sheets; the rows they point at follow the sheets. */
  async function afterSunday(tonight: SeasonFiles): Promise<readonly string[]> {
    return withSeason(season, async (folder) => {
      const week = join(folder, 'week-09');
      await report(week, {}, quiet);
      for (const [path, bytes] of Object.entries(tonight)) writeFileSync(join(folder, path), bytes);
      await halftime(week, {}, quiet);
      await review(week, {}, quiet);
      return ['halftime.json', 'review.json'].map((name) => {
        const text = readFileSync(join(week, 'out', name), 'utf8').replaceAll(folder, 'season');
        return text.replace(/,\n "seal": \{[^}]*\}/, '').replace(/"row": \d+/g, '"row": 0');
      });
    });
  }

  it('to the byte', async () => {
    const sorted = await afterSunday({});
    await fc.assert(
      fc.asyncProperty(shuffles, async (shuffle) => {
        const tonight = ['live.csv', 'game.csv', 'ours.csv'].map((name) => {
          const path = `week-09/${name}`;
          const [header = [], ...rows] = cellsOf(season[path] ?? new Uint8Array());
          return [path, sheetOfCells([header, ...shuffle(rows)])] as const;
        });
        expect(await afterSunday(Object.fromEntries(tonight))).toEqual(sorted);
      }),
      RUNS,
    );
  });
});

it('the plan compared holds the whole library and a menu', () => {
  expect(parse(stringify(JSON.parse(plain).library)).calls).toHaveLength(library.calls.length);
  expect(JSON.parse(plain).menu.kind).toBe('menu');
});
