// What became of the tells, four games to the next: how many were named, and how much of what they said came in the next
// game beyond the forecast, by target; own film alone and with the other offenses as archive.
// Usage: npx tsx bench/tells.ts FILE PROFILE [EVERY] [own|archive]: every so many windows are replayed.
import { readFileSync } from 'node:fs';
import { type Film, filterSnaps, numberAt } from '../src/game/film.ts';
import { weekSettingsSchema } from '../src/game/week-settings.ts';
import { profileSchema } from '../src/ingest/profile.ts';
import { readSheet } from '../src/ingest/read-sheet.ts';
import { readYaml } from '../src/ingest/yaml-file.ts';
import { backtestFilm } from '../src/pressure/forecast/backtest/backtest-film.ts';
import { backtestWindows } from '../src/pressure/forecast/backtest/backtest-window.ts';
import { tellRecord } from '../src/pressure/forecast/backtest/tell-record.ts';
import { type ReplayedTell, replayTells } from '../src/pressure/forecast/backtest/tell-replay.ts';

const [file = '', profile = '', every = '1', only = ''] = process.argv.slice(2);
const TRAINED_ON = 4;
const film = backtestFilm(readChart(), weekSettingsSchema.parse({ opponent: 'x' }).situations);
const windows = backtestWindows(film.games, { trainOn: TRAINED_ON, archive: 'others' }).filter(
  (_, i) => i % Number(every) === 0,
);
for (const kind of ['own', 'archive'] as const) if (only === '' || only === kind) judge(kind);

function judge(kind: 'own' | 'archive'): void {
  const replayed = replayTells(
    film,
    windows.map((window) => (kind === 'own' ? { ...window, archive: [] } : window)),
  );
  console.log(`${kind === 'own' ? 'own film alone' : 'with the archive'}: ${windows.length} windows`);
  print('all', replayed);
  for (const [name, groups] of [
    ['target', ({ tell }: ReplayedTell) => tell.target],
    ['standing', ({ tell }: ReplayedTell) => (2 * tell.gamesShown > TRAINED_ON ? 'most games' : 'fewer games')],
  ] as const) {
    console.log(` by ${name}`);
    for (const group of [...new Set(replayed.map(groups))].sort()) {
      print(
        group,
        replayed.filter((one) => groups(one) === group),
      );
    }
  }
}

function print(name: string, tells: readonly ReplayedTell[]): void {
  const { withTells, neverSeen, judged, held, snaps, keptOfSaid, keptOfPlan } = tellRecord(tells, windows.length);
  const kept = [keptOfSaid, keptOfPlan].map((part) => part?.toFixed(2) ?? '-').join(', of plan ');
  console.log(
    `  ${name}: ${tells.length} before ${withTells} games, ${neverSeen} not seen again, held ${held} of ${judged}, ${snaps} snaps, kept ${kept}`,
  );
}

function readChart(): Film {
  const read = readYaml(readFileSync(profile, 'utf8'), profileSchema, profile);
  if (read.kind === 'problems') throw new Error(`${profile} does not fit`);
  const { chart } = readSheet({ file, bytes: readFileSync(file) }, { kind: 'opponent', profile: read.value });
  return filterSnaps(chart, (i) => (numberAt(chart, 'week', i) ?? 0) <= 18);
}
