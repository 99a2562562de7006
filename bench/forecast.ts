// Log loss of the next game from four, slope of calibration, and how often 95% count ranges held, on a charted season: every
// way to forecast the backtest knows, every target. Concepts in place of answers are read from the season's own words.
// Usage: npx tsx bench/forecast.ts FILE PROFILE [LAST_WEEK] [GAMES_DRAWN]
import { readFileSync } from 'node:fs';
import { type Film, filterSnaps, numberAt, textAt } from '../src/game/film.ts';
import { weekSettingsSchema } from '../src/game/week-settings.ts';
import { profileSchema } from '../src/ingest/profile.ts';
import { readSheet } from '../src/ingest/read-sheet.ts';
import { readYaml } from '../src/ingest/yaml-file.ts';
import { backtest } from '../src/pressure/forecast/backtest/backtest.ts';
import { backtestFilm } from '../src/pressure/forecast/backtest/backtest-film.ts';
import type { TargetScore } from '../src/pressure/forecast/backtest/backtest-result.ts';
import { TARGET_DEFINITIONS, type TargetDefinition } from '../src/pressure/forecast/target.ts';
import { NOT_KNOWN } from '../src/pressure/snap/not-known.ts';
import { METHOD_WORDS } from '../src/report/words/method-words.ts';

const [RUN, SCREEN, PLAY_ACTION, DROPBACK] = [0, 1, 2, 3];
const [file = '', profile = '', lastWeek = '18', games] = process.argv.slice(2);
const cuts = weekSettingsSchema.parse({ opponent: 'x' }).situations;
const { targets } = backtest({
  film: backtestFilm(readChart(), cuts),
  rule: { trainOn: 4, archive: 'others' },
  targets: questions(),
  sample: games === undefined ? undefined : { games: Number(games), seed: 5 },
});
targets.forEach(print);

function print({ target, classes, games: judged, methods, coverage }: TargetScore): void {
  console.log(`\n${target} (${classes.length} classes), ${judged} games`);
  for (const { id, logLoss, calibration } of methods) {
    const slope = calibration?.slope;
    console.log(`  ${METHOD_WORDS[id].padEnd(48)} ${logLoss.toFixed(4)}${slope ? `  slope ${slope.toFixed(2)}` : ''}`);
  }
  const held = coverage.filter(({ intervals }) => intervals > 0);
  const told = held.map((one) => `${one.size} ${(one.covered / one.intervals).toFixed(3)}`);
  console.log(`  ranges held: ${told.join(', ')}`);
}

function questions(): TargetDefinition[] {
  const found = TARGET_DEFINITIONS.filter(({ target }) => ['run_or_pass', 'quick_release', 'motion'].includes(target));
  const [answer, screen] = (['answer', 'screen'] as const).map((name) => definitionOf(name));
  const four = ['run', 'screen', 'play action', 'dropback'];
  return [
    ...found,
    { ...(screen as TargetDefinition), codes: (chart) => concepts(chart).map(screenOf) },
    { ...(answer as TargetDefinition), classes: four, runs: ['run'], codes: concepts },
  ];
}

function definitionOf(name: TargetDefinition['target']): TargetDefinition | undefined {
  const found = TARGET_DEFINITIONS.find(({ target }) => target === name);
  if (found === undefined) return undefined;
  const { readByFile: _, ...definition } = found;
  return definition;
}

function concepts(chart: Film): Uint8Array {
  return Uint8Array.from({ length: chart.size }, (_, i) => {
    const kind = textAt(chart, 'play_kind', i);
    const concept = textAt(chart, 'concept', i);
    if (kind === undefined) return NOT_KNOWN;
    if (kind === 'run' || kind === 'quarterback_run') return RUN;
    if (concept === 'screen') return SCREEN;
    return concept === 'play action' || concept === 'rpo pass' ? PLAY_ACTION : DROPBACK;
  });
}

function screenOf(concept: number): number {
  return concept === RUN || concept === NOT_KNOWN ? NOT_KNOWN : Number(concept !== SCREEN);
}

function readChart(): Film {
  const read = readYaml(readFileSync(profile, 'utf8'), profileSchema, profile);
  if (read.kind === 'problems') throw new Error(`${profile} does not fit`);
  const sheet = readSheet({ file, bytes: readFileSync(file) }, { kind: 'opponent', profile: read.value });
  return filterSnaps(sheet.chart, (i) => (numberAt(sheet.chart, 'week', i) ?? 0) <= Number(lastWeek));
}
