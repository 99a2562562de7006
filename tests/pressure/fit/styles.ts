import type { Family } from '../../../src/game/families.ts';
import { type Film, filmFromRecords } from '../../../src/game/film.ts';
import { fitChapter } from '../../../src/pressure/fit/fit-chapter.ts';
import type { FamilyFit } from '../../../src/pressure/fit/fit-result.ts';
import {
  type ChartedMore,
  chartedMore,
  countedForecast,
  type InventedOffense,
  inventedRecords,
  inventedSettings,
  ORDINARY,
} from '../invented-offense.ts';

/** One invented offense of a style. */
export interface StyledOffense extends InventedOffense, ChartedMore {
  readonly style: string;
}

const ORDINARY_MORE: ChartedMore = {
  motion: { none: 62, across: 12, short: 12, fast: 12, back_out: 2 },
  tempo: { huddle: 60, no_huddle: 30, fast: 10 },
  checked: { no: 92, yes: 8 },
  optionTag: { none: 80, read: 10, run_pass: 10 },
  concept: { stick: 50, mesh: 12, 'post curl': 33, rub: 5 },
  formation: { doubles: 94, bunch: 6 },
  held: 0.35,
};

/** The film of an invented offense: one chart, what is not named of it ordinary. */
export function filmOf(offense: InventedOffense & ChartedMore): Film {
  return filmFromRecords(chartedMore(inventedRecords(offense), { ...ORDINARY_MORE, ...offense }));
}

/** Every family on all expected snaps of an invented offense. */
export function fitOf(offense: InventedOffense & ChartedMore): readonly FamilyFit[] {
  const chart = filmOf(offense);
  const settings = inventedSettings();
  const forecast = countedForecast(chart, settings);
  const { families } = fitChapter({
    chart,
    forecast,
    library: null,
    cuts: settings.situations,
    pressured: { factors: [] },
    seed: 1,
  });
  return families.filter(({ situation }) => situation === 'all');
}

/** Families by falling right less wrong. */
export function ranked(fits: readonly FamilyFit[]): readonly Family[] {
  return [...fits].sort((a, b) => b.net.mean - a.net.mean).map(({ family }) => family);
}

const answers = (change: InventedOffense['answers']) => ({ ...ORDINARY.answers, ...change });

/** Two invented offenses of each style; everything not named is ordinary. */
export const STYLES: readonly StyledOffense[] = [
  {
    style: 'option',
    answers: { run: 58, quarterback_run: 26, quick: 4, dropback: 8, movement: 4 },
    optionTag: { triple: 40, read: 20, none: 40 },
    personnel: { '21': 50, '20': 30, '11': 20 },
    receivers: { '2x1': 60, '2x2': 30, '3x1': 10 },
    concept: { iso: 90, mesh: 5, rub: 5 },
  },
  {
    style: 'option',
    answers: { run: 52, quarterback_run: 32, screen: 2, quick: 4, dropback: 6, movement: 4 },
    optionTag: { triple: 30, read: 30, none: 40 },
    personnel: { '30': 40, '20': 40, '21': 20 },
    receivers: { '1x1': 70, '2x1': 20, '2x2': 10 },
    concept: { iso: 92, mesh: 4, rub: 4 },
  },
  {
    style: 'air raid',
    answers: { run: 22, quarterback_run: 3, screen: 10, quick: 30, dropback: 26, deep_shot: 6, movement: 3 },
    personnel: { '10': 85, '11': 15 },
    receivers: { '2x2': 52, '3x1': 38, '3x2': 10 },
    concept: { mesh: 34, cross: 16, stick: 45, rub: 5 },
    backAction: { blocks: 30, check_releases: 20, releases_wide: 25, releases_inside: 25 },
    protectors: { 5: 65, 6: 35 },
    held: 0.2,
  },
  {
    style: 'air raid',
    answers: { run: 18, quarterback_run: 2, screen: 12, quick: 36, dropback: 24, deep_shot: 6, movement: 2 },
    personnel: { '10': 95, '11': 5 },
    receivers: { '2x2': 48, '3x1': 40, '3x2': 12 },
    concept: { mesh: 30, shallow: 24, stick: 40, rub: 6 },
    backAction: { blocks: 25, check_releases: 20, releases_wide: 30, releases_inside: 25 },
    protectors: { 5: 75, 6: 25 },
    held: 0.2,
  },
  { style: 'screen team', answers: answers({ screen: 34, dropback: 10, deep_shot: 3, quick: 12 }) },
  { style: 'screen team', answers: answers({ screen: 44, dropback: 12, run: 30, quick: 8 }) },
  {
    style: 'held ball, back in',
    answers: answers({ run: 34, quarterback_run: 2, screen: 2, quick: 5, dropback: 40, deep_shot: 14, movement: 3 }),
    backAction: { blocks: 82, check_releases: 8, releases_wide: 4, releases_inside: 6 },
    protectors: { 5: 5, 6: 55, 7: 40 },
    held: 0.75,
    scrambles: 0.02,
    optionTag: { none: 100 },
  },
  {
    style: 'held ball, back in',
    answers: answers({ run: 30, quarterback_run: 2, screen: 1, quick: 6, dropback: 44, deep_shot: 14, movement: 3 }),
    backAction: { blocks: 76, check_releases: 14, releases_wide: 4, releases_inside: 6 },
    protectors: { 6: 65, 7: 35 },
    held: 0.8,
    scrambles: 0.02,
    optionTag: { none: 100 },
  },
  {
    style: 'back out wide',
    answers: answers({ run: 30, quarterback_run: 3, quick: 10, dropback: 40 }),
    backAction: { blocks: 12, check_releases: 8, releases_wide: 68, releases_inside: 12 },
    protectors: { 5: 88, 6: 12 },
  },
  {
    style: 'back out wide',
    answers: answers({ run: 26, quarterback_run: 4, quick: 16, dropback: 42 }),
    backAction: { blocks: 10, check_releases: 5, releases_wide: 75, releases_inside: 10 },
    protectors: { 5: 92, 6: 8 },
  },
  {
    style: 'trips team',
    receivers: { '3x1': 78, '2x2': 14, '3x2': 4, '2x1': 4 },
    targetZone: { flat: 10, deep_middle: 22, middle: 38, outside: 30 },
    personnel: { '11': 60, '10': 40 },
  },
  {
    style: 'trips team',
    receivers: { '3x1': 70, '2x2': 20, '2x1': 10 },
    targetZone: { flat: 8, deep_middle: 20, middle: 42, outside: 30 },
    personnel: { '11': 70, '10': 30 },
  },
  {
    style: 'balanced',
    receivers: { '2x2': 82, '3x1': 10, '2x1': 8 },
    targetZone: { flat: 34, deep_middle: 4, middle: 30, outside: 32 },
  },
  {
    style: 'balanced',
    receivers: { '2x2': 74, '3x1': 10, '2x1': 16 },
    targetZone: { flat: 40, deep_middle: 4, middle: 26, outside: 30 },
  },
  {
    style: 'running quarterback',
    answers: answers({ run: 30, quarterback_run: 24, dropback: 24 }),
    scrambles: 0.4,
    optionTag: { read: 40, run_pass: 10, none: 50 },
  },
  {
    style: 'running quarterback',
    answers: answers({ run: 24, quarterback_run: 30, dropback: 24 }),
    scrambles: 0.35,
    optionTag: { read: 45, run_pass: 10, none: 45 },
  },
  {
    style: 'heavy',
    answers: { run: 66, quarterback_run: 3, screen: 2, quick: 7, dropback: 17, deep_shot: 3, movement: 2 },
    personnel: { '12': 44, '22': 26, '21': 18, '11': 12 },
    receivers: { '2x1': 66, '2x2': 22, '3x1': 12 },
    protectors: { 5: 10, 6: 50, 7: 40 },
    optionTag: { none: 100 },
  },
  {
    style: 'heavy',
    answers: { run: 72, quarterback_run: 2, screen: 2, quick: 6, dropback: 14, deep_shot: 2, movement: 2 },
    personnel: { '22': 40, '12': 40, '13': 10, '11': 10 },
    receivers: { '2x1': 60, '1x1': 24, '2x2': 10, '3x1': 6 },
    protectors: { 5: 5, 6: 45, 7: 50 },
    optionTag: { none: 100 },
  },
  {
    style: 'empty',
    answers: answers({ run: 16, quarterback_run: 6, quick: 26, dropback: 34 }),
    receivers: { '3x2': 62, '2x2': 18, '3x1': 20 },
    backAction: { none: 62, blocks: 14, releases_wide: 12, releases_inside: 12 },
    protectors: { 5: 92, 6: 8 },
  },
  {
    style: 'empty',
    answers: answers({ run: 18, quarterback_run: 5, quick: 24, dropback: 36 }),
    receivers: { '3x2': 55, '2x2': 22, '3x1': 23 },
    backAction: { none: 55, blocks: 18, releases_wide: 14, releases_inside: 13 },
    protectors: { 5: 90, 6: 10 },
  },
];
