import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoSeason, run } from '../end-to-end/program.ts';
import { drawnMarks, visibleLines } from './page-lines.ts';

/** Where the golden files lie. */
export const GOLDEN_FOLDER = 'tests/golden/files';

const DEMO_WEEKS = ['week-07', 'week-08', 'week-09'] as const;
const SHEETS = ['report', 'call-sheet', 'wristband', 'tip-sheet', 'script', 'halftime', 'review'] as const;

/**
 * What the program writes on the three demo weeks and on a small season that knows run and pass alone and has no calls:
 * the visible text of every page, the marks of two reports, and what one plan decides with its numbers rounded to three
 * digits.
 *
 * @returns text of each golden file by its name
 */
export function goldenFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  const season = demoSeason();
  for (const week of DEMO_WEEKS) addDemoWeek(files, join(season, week));
  files.set('season.txt', visibleLines(readFileSync(join(season, 'week-09/out/season.html'), 'utf8')));
  const odd = oddSeason();
  addPages(files, odd, ['report', 'call-sheet', 'tip-sheet']);
  for (const [name, week] of [
    ['week-09', join(season, 'week-09')],
    ['odd', odd],
  ] as const) {
    files.set(`${name}.report.marks.txt`, drawnMarks(readFileSync(join(week, 'out/report.html'), 'utf8')));
  }
  files.set('week-09.plan.txt', roundedPlan(readFileSync(join(season, 'week-09/out/report.json'), 'utf8')));
  rmSync(season, { recursive: true, force: true });
  rmSync(join(odd, '..'), { recursive: true, force: true });
  return files;
}

function addDemoWeek(files: Map<string, string>, week: string): void {
  for (const args of [
    ['report', week],
    ['script', week],
    ['halftime', week, '--live', join(week, 'live.csv')],
    ['review', week],
  ]) {
    const { code, note } = run(args);
    if (code !== 0) throw new Error(`${args.join(' ')} ended with ${code}: ${note}`);
  }
  addPages(files, week, SHEETS);
}

function addPages(files: Map<string, string>, week: string, sheets: readonly string[]): void {
  const name = week.endsWith('week-01') ? 'odd' : week.slice(-7);
  for (const sheet of sheets) {
    files.set(`${name}.${sheet}.txt`, visibleLines(readFileSync(join(week, `out/${sheet}.html`), 'utf8')));
  }
}

/** Invented: two games that say run or pass and nothing of how, no calls, no other offense. */
function oddSeason(): string {
  const season = mkdtempSync(join(tmpdir(), 'odd-'));
  const week = join(season, 'week-01');
  cpSync('data/demo/season/week-09/week.yaml', join(week, 'week.yaml'));
  const rows = Array.from({ length: 90 }, (_, i) => {
    const down = 1 + (i % 3);
    const kind = (i * 7) % 10 < 4 + down ? 'pass' : 'run';
    return `${i < 45 ? 'first' : 'second'},${1 + (i % 45)},${down},${10 - 3 * (down - 1)},own ${20 + (i % 25)},${kind},${(i * 5) % 9}`;
  });
  writeFileSync(join(week, 'opponent.csv'), ['game,snap,down,to_go,ball_on,play_kind,gain', ...rows, ''].join('\n'));
  const { code, note } = run(['report', week]);
  if (code !== 0) throw new Error(`the odd season ended with ${code}: ${note}`);
  return week;
}

/** What a plan decides: the menu, what sets them apart, our own film and what the numbers rest on. */
const DECIDED = ['film', 'archive', 'different', 'menu', 'ownFilm'] as const;

/** These parts of a plan with every number rounded and every innermost list or record on a line of its own. */
function roundedPlan(json: string): string {
  const plan = JSON.parse(json) as Record<string, unknown>;
  const lines: string[] = [];
  for (const part of DECIDED) write(plan[part], part, lines);
  return lines.join('\n');
}

function write(value: unknown, path: string, lines: string[]): void {
  const inner = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  const nested = inner.some(([, part]) => typeof part === 'object' && part !== null);
  if (!nested) lines.push(`${path}: ${JSON.stringify(value, rounded)}`);
  else for (const [key, part] of inner) write(part, path === '' ? key : `${path}.${key}`, lines);
}

function rounded(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toPrecision(3)) : value;
}
