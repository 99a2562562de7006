import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import type { OffenseStyle } from './offense-style.ts';
import { pick } from './pick.ts';
import { type SimulatedSnap, simulateSnap } from './simulate-snap.ts';

/** Who meets whom, when, and how the game is named in the sheet. */
export interface GameSetting {
  readonly defense: string;
  readonly week: number;
  readonly game: string;
}

/** One invented game of an offense: about sixty snaps in a dozen series, with score and clock. */
export function simulateGame(style: OffenseStyle, setting: GameSetting, random: Random): SnapRecord[] {
  const records: SnapRecord[] = [];
  const habits = wobble(style, random);
  let margin = 0;
  let secondsGone = 0;
  for (let drive = 1; secondsGone < 48 * 60 && drive <= 16; drive++) {
    const series = simulateDrive(
      habits,
      { setting, drive, margin, secondsGone, firstSnap: records.length + 1 },
      random,
    );
    records.push(...series.records);
    margin += series.points;
    secondsGone = series.secondsGone + 70 + random.uniform() * 80;
    margin -= pick(random, [
      [0, 0.7],
      [3, 0.08],
      [7, 0.22],
    ]);
  }
  return records;
}

/** Habits move a little from game to game, as they do on real film. */
function wobble(style: OffenseStyle, random: Random): OffenseStyle {
  const move = (share: number) => Math.min(0.96, Math.max(0.02, share + 0.05 * random.normal()));
  return {
    ...style,
    pass: { even: move(style.pass.even), long: move(style.pass.long), short: move(style.pass.short) },
    screen: move(style.screen),
    quick: move(style.quick),
    motion: move(style.motion),
  };
}

interface DriveStart {
  readonly setting: GameSetting;
  readonly drive: number;
  readonly margin: number;
  readonly secondsGone: number;
  readonly firstSnap: number;
}

interface DriveEnd {
  readonly records: SnapRecord[];
  readonly points: number;
  readonly secondsGone: number;
}

function simulateDrive(style: OffenseStyle, start: DriveStart, random: Random): DriveEnd {
  const records: SnapRecord[] = [];
  let field: FieldState = { down: 1, toGo: 10, yardsToGoal: Math.round(60 + 20 * random.uniform()) };
  let secondsGone = start.secondsGone;
  while (secondsGone < 48 * 60) {
    if (field.down === 4 && !goesForIt(field, random))
      return { records, points: field.yardsToGoal < 25 ? 3 : 0, secondsGone };
    const snap = simulateSnap(style, { ...field, margin: start.margin, late: secondsGone > 44 * 60 }, random);
    const hash = pick(random, [
      ['left', 0.37],
      ['middle', 0.26],
      ['right', 0.37],
    ]);
    records.push(
      stamp(snap, {
        ...start,
        ...field,
        secondsGone,
        hash,
        offense: style.name,
        snap: start.firstSnap + records.length,
      }),
    );
    secondsGone += 24 + 16 * random.uniform();
    const next = afterSnap(field, snap);
    if (typeof next === 'number') return { records, points: next, secondsGone };
    field = next;
  }
  return { records, points: 0, secondsGone };
}

interface FieldState {
  readonly down: number;
  readonly toGo: number;
  readonly yardsToGoal: number;
}

/** The next down, or the points with which the series ended. */
function afterSnap(field: FieldState, snap: SimulatedSnap): FieldState | number {
  const yardsToGoal = field.yardsToGoal - snap.gain;
  if (snap.turnover) return 0;
  if (yardsToGoal <= 0) return 7;
  if (yardsToGoal >= 99) return -2;
  if (snap.gain >= field.toGo) return { down: 1, toGo: Math.min(10, yardsToGoal), yardsToGoal };
  return field.down === 4 ? 0 : { down: field.down + 1, toGo: field.toGo - snap.gain, yardsToGoal };
}

function goesForIt({ toGo, yardsToGoal }: FieldState, random: Random): boolean {
  return toGo <= 2 ? random.uniform() < (yardsToGoal < 55 ? 0.6 : 0.15) : yardsToGoal < 35 && random.uniform() < 0.15;
}

interface Stamp extends DriveStart, FieldState {
  readonly offense: string;
  readonly snap: number;
  readonly hash: string;
}

function stamp(snap: SimulatedSnap, at: Stamp): SnapRecord {
  const quarter = Math.min(4, Math.floor(at.secondsGone / 720) + 1);
  return {
    offense: at.offense,
    ...at.setting,
    snap: at.snap,
    drive: at.drive,
    quarter,
    clock: Math.max(0, Math.round(quarter * 720 - at.secondsGone)),
    score_margin: at.margin,
    down: at.down,
    to_go: Math.min(at.toGo, at.yardsToGoal),
    ball_on: at.yardsToGoal,
    hash: at.hash,
    checked: 'no',
    ...snap.record,
  };
}
