// Writes the invented demo season into data/demo/season. Seeded: the same script always writes the same bytes.
// Everything in it is made up: league, schools, habits, snaps. defense.yaml and the week.yaml files are written by hand.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parse } from 'yaml';
import { type ColumnName, FILM_COLUMNS, OWN_FILM_COLUMNS } from '../src/game/columns.ts';
import type { SnapRecord } from '../src/game/film.ts';
import { defenseSchema } from '../src/game/short-form/defense-schema.ts';
import { createRandom } from '../src/stats/random.ts';
import { OFFENSES, type OffenseStyle, OUR_SCHOOL } from './demo/offense-style.ts';
import { playOurCalls } from './demo/own-calls.ts';
import { secondChart } from './demo/second-chart.ts';
import { leaveGaps, sheetOf } from './demo/sheet.ts';
import { simulateGame } from './demo/simulate-game.ts';

const home = 'data/demo/season';
const library = defenseSchema.parse(parse(readFileSync(`${home}/defense.yaml`, 'utf8')));
const ownOnly: readonly ColumnName[] = ['call', 'path', 'family', 'coverage', 'rotation', 'shown_early'];
const headers = FILM_COLUMNS.map((column) => column.name).filter((name) => !ownOnly.includes(name));
const liveHeaders: readonly ColumnName[] = [
  'game',
  'snap',
  'drive',
  'quarter',
  'down',
  'to_go',
  'ball_on',
  'hash',
  'receivers',
  'back_spot',
  'play_kind',
  'back_action',
  'gain',
  'call',
];
const scoutGaps = {
  protectors: 0.3,
  slide: 0.35,
  back_action: 0.2,
  time_to_throw: 0.25,
  target_zone: 0.1,
  target_depth: 0.2,
  clock: 0.3,
  score_margin: 0.05,
  tempo: 0.4,
  motion: 0.08,
  strength: 0.05,
  coverage_faced: 0.15,
  personnel: 0.04,
  checked: 0.5,
} as const;
const archiveGaps = { ...scoutGaps, protectors: 0.55, slide: 0.6, back_action: 0.5, time_to_throw: 0.5 } as const;

const [brindle, tamarack, harrow, ...others] = OFFENSES as [
  OffenseStyle,
  OffenseStyle,
  OffenseStyle,
  ...OffenseStyle[],
];

writeArchive();
writeOwnSeason();
for (const [i, style] of [brindle, tamarack, harrow].entries()) writeWeek(style, 7 + i);

function writeArchive(): void {
  for (const style of others) {
    const snaps = scoutedGames(style, [1, 2, 3, 4], `archive ${style.name}`);
    write(
      `archive/${fileName(style.name)}.csv`,
      sheetOf(leaveGaps(snaps, archiveGaps, createRandom(`gaps ${style.name}`)), headers),
    );
  }
}

function writeOwnSeason(): void {
  const rows: SnapRecord[] = [];
  for (const [i, style] of others.slice(0, 6).entries()) rows.push(...gameAgainstUs(style, i + 1).ours);
  write('ours.csv', sheetOf(rows, OWN_FILM_COLUMNS));
}

function writeWeek(style: OffenseStyle, week: number): void {
  const folder = `week-0${week}`;
  const random = createRandom(`gaps ${folder}`);
  const games = scoutedGames(style, [week - 4, week - 3, week - 2, week - 1], folder);
  const firstHalf = games.filter((snap) => Number(snap.week) < week - 2);
  const secondHalf = games.filter((snap) => Number(snap.week) >= week - 2);
  write(`${folder}/opponent-earlier.csv`, sheetOf(leaveGaps(firstHalf, scoutGaps, random), headers));
  write(`${folder}/opponent-latest.csv`, sheetOf(leaveGaps(secondHalf, scoutGaps, random), headers));
  const played = gameAgainstUs(style, week);
  const beforeHalf = played.theirs
    .map((snap, i) => ({ ...snap, call: played.ours[i]?.call ?? '' }))
    .filter((snap) => Number(snap.quarter) <= 2);
  write(
    `${folder}/live.csv`,
    sheetOf(leaveGaps(beforeHalf, { back_action: 0.4, receivers: 0.1, hash: 0.1 }, random), liveHeaders),
  );
  write(`${folder}/game.csv`, sheetOf(leaveGaps(played.theirs, scoutGaps, random), headers));
  write(`${folder}/ours.csv`, sheetOf(played.ours, OWN_FILM_COLUMNS));
  const again = secondChart(played.theirs, createRandom(`second chart ${folder}`));
  if (week === 7)
    write(
      `${folder}/second-chart.csv`,
      sheetOf(leaveGaps(again, scoutGaps, createRandom('gaps second chart')), headers),
    );
}

function scoutedGames(style: OffenseStyle, weeks: readonly number[], label: string): SnapRecord[] {
  return weeks.flatMap((week, i) => {
    const defense = others[(week + i) % others.length]!.name;
    const setting = {
      defense: defense === style.name ? 'Pinegate' : defense,
      week,
      game: `week ${week} ${style.name}`,
    };
    return simulateGame(style, setting, createRandom(`${label} game ${week}`));
  });
}

function gameAgainstUs(style: OffenseStyle, week: number) {
  const setting = { defense: OUR_SCHOOL, week, game: `week ${week} ${style.name}` };
  const snaps = simulateGame(style, setting, createRandom(`us ${week} ${style.name}`));
  return playOurCalls(snaps, library, createRandom(`calls ${week}`));
}

function fileName(name: string): string {
  return name.toLowerCase().replaceAll(' ', '-');
}

function write(path: string, text: string): void {
  const file = `${home}/${path}`;
  mkdirSync(file.slice(0, file.lastIndexOf('/')), { recursive: true });
  writeFileSync(file, text);
  console.log(`${file}: ${text.split('\n').length - 2} snaps`);
}
