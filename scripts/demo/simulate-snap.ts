import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import { drawLook } from './draw-look.ts';
import { passOutcome, runOutcome } from './draw-outcome.ts';
import { drawProtection } from './draw-protection.ts';
import type { OffenseStyle } from './offense-style.ts';
import { pick } from './pick.ts';

/** Where the game stands when a snap is called. */
export interface SnapSpot {
  readonly down: number;
  readonly toGo: number;
  readonly yardsToGoal: number;
  readonly margin: number;
  readonly late: boolean;
}

/** What happened: the charted cells and what the drive needs to go on. */
export interface SimulatedSnap {
  readonly record: SnapRecord;
  readonly gain: number;
  readonly turnover: boolean;
}

/** Draws one invented snap of an offense in a spot. */
export function simulateSnap(style: OffenseStyle, spot: SnapSpot, random: Random): SimulatedSnap {
  const passes = random.uniform() < passShare(style, spot);
  const held = spot.down >= 3 && spot.toGo >= 7;
  const look = drawLook(style, spot.down > 1 && spot.toGo >= 7, random);
  const kind = passes ? drawPass(style, held, random) : drawRun(style, random);
  const rushers = pick(random, [
    [4, 0.62],
    [5, 0.26],
    [6, 0.09],
    [3, 0.03],
  ]);
  const play = { kind, rushers, strength: style.strength };
  const outcome = passes ? passOutcome(play, random) : runOutcome(play, random);
  const gain = Math.max(Math.min(Math.round(outcome.gain), spot.yardsToGoal), -12);
  const protection = passes
    ? drawProtection(style, { look, backStays: held ? style.backStaysLong : 0.45 }, random)
    : {};
  const coverage = pick(random, [
    ['three_deep', 0.34],
    ['two_deep', 0.2],
    ['four_deep', 0.2],
    ['man_free', 0.2],
    ['zero', 0.06],
  ]);
  const record = {
    ...look.cells,
    ...protection,
    play_kind: kind,
    rushers_faced: rushers,
    coverage_faced: coverage,
    gain,
    ...outcome.cells,
  };
  return { record, gain, turnover: outcome.turnover };
}

function passShare(style: OffenseStyle, spot: SnapSpot): number {
  let share = downShare(style, spot);
  if (spot.late && spot.margin < 0) share += 0.2;
  if (spot.late && spot.margin > 8) share -= 0.15;
  if (spot.yardsToGoal <= 5) share -= 0.12;
  return Math.min(0.95, Math.max(0.05, share));
}

function downShare(style: OffenseStyle, spot: SnapSpot): number {
  if (spot.down === 1) return style.pass.even;
  if (spot.toGo <= 3) return style.pass.short;
  return spot.toGo / (5 - spot.down) > 3.4 ? style.pass.long : style.pass.even;
}

function drawRun(style: OffenseStyle, random: Random): string {
  return random.uniform() < style.quarterbackRun ? 'quarterback_run' : 'run';
}

function drawPass(style: OffenseStyle, held: boolean, random: Random): string {
  const screen = style.screen * (held ? 0.55 : 1.15);
  const quick = style.quick * (held ? 0.5 : 1.1);
  const rest = Math.max(0.05, 1 - screen - quick - style.deep - style.movement);
  return pick(random, [
    ['screen', screen],
    ['quick', quick],
    ['deep_shot', style.deep],
    ['movement', style.movement],
    ['dropback', rest],
  ]);
}
