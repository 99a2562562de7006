import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { FILM_COLUMNS } from '../../../../src/game/columns.ts';
import { chartedCount, type Film, joinFilms, numberAt, textAt } from '../../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../../src/game/week-settings.ts';
import { readSheet } from '../../../../src/ingest/read-sheet.ts';
import { toCsv } from '../../../../src/ingest/write-csv.ts';
import { countChart } from '../../../../src/pressure/forecast/counts/count-chart.ts';
import {
  COUNT_CLASSES,
  COUNT_COLUMNS,
  type CountRow,
  GAMES,
} from '../../../../src/pressure/forecast/counts/count-row.ts';
import { countsSql } from '../../../../src/pressure/forecast/counts/counts-sql.ts';
import { createRandom } from '../../../../src/stats/random.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Harrow Creek' }).situations;
const ARCHIVE = 'data/demo/season/archive';

/** A general-purpose database engine; a benchmark's development dependency that may be left out of an installation. */
const engine = await import('@duckdb/node-api').catch(() => null);

function archive(change = (text: string) => text): Film {
  const files = readdirSync(ARCHIVE).filter((name) => name.endsWith('.csv'));
  const bytesOf = (file: string) => new TextEncoder().encode(change(readFileSync(`${ARCHIVE}/${file}`, 'utf8')));
  return joinFilms(
    files.map((file) => readSheet({ file: `${ARCHIVE}/${file}`, bytes: bytesOf(file) }, { kind: 'opponent' }).chart),
  );
}

/** Columns without which a row is no snap. */
const NEEDED = ['game', 'down', 'to_go', 'ball_on', 'play_kind'];

/** The sheet with every third cell or so left blank, as a hurried charter does; the same ones each time. */
function spoiled(text: string): string {
  const random = createRandom(11);
  const [header = [], ...rows] = Papa.parse<string[]>(text.trim()).data.filter(([first]) => !first?.startsWith('#'));
  const blanked = rows.map((row) =>
    row.map((cell, i) => (NEEDED.includes(header[i] ?? '') || random.uniform() < 0.7 ? cell : '')),
  );
  return toCsv([header, ...blanked]);
}

const fileOf = (rows: readonly CountRow[]) =>
  toCsv([COUNT_COLUMNS, ...rows.map((row) => COUNT_COLUMNS.map((name) => row[name]))]);

const literal = (value: string | number | undefined) =>
  typeof value === 'string' ? `'${value.replaceAll("'", "''")}'` : String(value ?? 'NULL');

function snapValues(chart: Film, i: number): string {
  const cells = FILM_COLUMNS.map(({ name, kind }) => literal((kind === 'number' ? numberAt : textAt)(chart, name, i)));
  return `(${[...cells, literal(chart.sources[chart.sourceOf[i] ?? 0])].join(', ')})`;
}

async function talliesBySql(chart: Film): Promise<CountRow[]> {
  const database = await (await engine!.DuckDBInstance.create(':memory:')).connect();
  const columns = FILM_COLUMNS.map(({ name, kind }) => `"${name}" ${kind === 'number' ? 'DOUBLE' : 'VARCHAR'}`);
  await database.run(`CREATE TABLE snaps (${columns.join(', ')}, source VARCHAR)`);
  const snaps = Array.from({ length: chart.size }, (_, i) => snapValues(chart, i));
  for (let i = 0; i < snaps.length; i += 500) {
    await database.run(`INSERT INTO snaps VALUES ${snaps.slice(i, i + 500).join(', ')}`);
  }
  const rows = (await database.runAndReadAll(countsSql(cuts))).getRowsJS();
  database.closeSync();
  return rows.map(([offense, situation, state, target, name, count]) => ({
    offense: String(offense),
    situation: String(situation),
    state: String(state),
    target: String(target),
    class: String(name),
    count: Number(count),
  }));
}

const inOrder = (rows: readonly CountRow[]) => rows.map((row) => JSON.stringify(Object.entries(row).sort())).sort();

describe('the SQL of the tallies', () => {
  it('speaks of every target a file of tallies may hold', () => {
    const sql = countsSql(cuts);
    for (const target of COUNT_CLASSES.keys()) expect(sql).toContain(`'${target}'`);
  });

  it('cuts down and distance where the staff does', () => {
    expect(countsSql({ ...cuts, third: { short: 2, medium: 7 } })).toContain(
      "WHEN to_go <= 2 THEN 'third_short' WHEN to_go <= 7 THEN 'third_medium'",
    );
  });

  it.skipIf(engine === null)('writes the very bytes of our file, of the demo archive', async () => {
    const chart = archive();
    expect(fileOf(await talliesBySql(chart))).toBe(fileOf(countChart(chart, cuts)));
  });

  it.skipIf(engine === null)('writes them of sheets full of blanks too, of charter and of game', async () => {
    const chart = archive(spoiled);
    const names = ['offense', 'quarter', 'score_margin', 'motion', 'slide', 'time_to_throw'] as const;
    for (const name of names) expect(chartedCount(chart, name)).toBeLessThan(0.9 * chart.size);
    const counted = countChart(chart, cuts);
    expect(counted.some(({ state }) => state === '')).toBe(true);
    expect(counted.some(({ offense }) => offense.startsWith(ARCHIVE))).toBe(true);
    expect(fileOf(await talliesBySql(chart))).toBe(fileOf(counted));
  });

  it.skipIf(engine === null)('makes the same tallies of the demo archive on another engine (DuckDB)', async () => {
    const chart = archive();
    const counted = countChart(chart, cuts);
    expect(counted.filter(({ target }) => target !== GAMES).length).toBeGreaterThan(500);
    expect(inOrder(await talliesBySql(chart))).toEqual(inOrder(counted));
  });
});
