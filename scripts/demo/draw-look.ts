import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import type { OffenseStyle } from './offense-style.ts';
import { pick } from './pick.ts';

/** How the offense lines up: what protection needs of it, and the cells a charter writes. */
export interface Look {
  readonly backSpot: string;
  readonly strength: string;
  readonly cells: SnapRecord;
}

/** Draws a look; long downs spread the field. */
export function drawLook(style: OffenseStyle, longDown: boolean, random: Random): Look {
  const receivers = drawReceivers(style, longDown, random);
  const depth = drawDepth(style, receivers === '3x2' ? 1 : style.shotgun * (longDown ? 1.2 : 1), random);
  const strength = pick(random, [
    ['left', 0.42],
    ['right', 0.58],
  ]);
  const backSpot = drawBackSpot(receivers, depth, random);
  const personnel = drawPersonnel(receivers, random);
  const cells = {
    personnel,
    receivers,
    strength,
    back_spot: backSpot,
    quarterback_depth: depth,
    formation: formationName(receivers, depth, personnel),
    motion: drawMotion(style, random),
    tempo: drawTempo(style, random),
  };
  return { backSpot, strength, cells };
}

function drawReceivers(style: OffenseStyle, longDown: boolean, random: Random): string {
  if (random.uniform() < style.empty * (longDown ? 2 : 1)) return '3x2';
  if (random.uniform() < style.twoBack * (longDown ? 0.3 : 1)) return '2x1';
  return random.uniform() < style.trips * (longDown ? 1.4 : 1) ? '3x1' : '2x2';
}

function drawDepth(style: OffenseStyle, gunShare: number, random: Random): string {
  if (random.uniform() >= gunShare) return 'under_center';
  return pick(random, [
    ['shotgun', 0.88 + style.empty],
    ['pistol', 0.12],
  ]);
}

function drawBackSpot(receivers: string, depth: string, random: Random): string {
  if (receivers === '3x2') return 'none';
  if (depth !== 'shotgun') return 'behind';
  return receivers === '2x1'
    ? 'both'
    : pick(random, [
        ['strong', 0.35],
        ['weak', 0.65],
      ]);
}

function drawPersonnel(receivers: string, random: Random): string {
  if (receivers === '3x2') return '00';
  return receivers === '2x1'
    ? '21'
    : pick(random, [
        ['11', 0.62],
        ['10', 0.25],
        ['12', 0.13],
      ]);
}

function drawMotion(style: OffenseStyle, random: Random): string {
  if (random.uniform() >= style.motion) return 'none';
  return pick(random, [
    ['short', 0.35],
    ['across', 0.3],
    ['fast', 0.25],
    ['shift', 0.1],
  ]);
}

function drawTempo(style: OffenseStyle, random: Random): string {
  if (random.uniform() < style.looksToSideline) return 'freeze';
  return random.uniform() < style.noHuddle ? 'no_huddle' : 'huddle';
}

const FORMATIONS: Readonly<Record<string, string>> = { '3x2': 'Quilt', '3x1': 'Rake', '2x1': 'Bench', '2x2': 'Table' };

function formationName(receivers: string, depth: string, personnel: string): string {
  return `${FORMATIONS[receivers]}${depth === 'under_center' ? ' low' : ''}${personnel === '12' ? ' heavy' : ''}`;
}
