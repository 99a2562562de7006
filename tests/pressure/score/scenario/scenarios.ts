import { filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import type { Family } from '../../../../src/game/vocabulary.ts';
import { type InventedOffense, inventedRecords } from '../../invented-offense.ts';
import type { ExpectedScores } from '../expected-scores.ts';

/** What a coordinator would expect of one kind of offense; common practice, no source. */
export interface Expectation {
  readonly words: string;
  readonly holds: (scores: ExpectedScores) => boolean;
}

/** One invented offense built to one description. */
export interface Scenario {
  readonly id: string;
  readonly offense: InventedOffense;
  readonly records?: (records: SnapRecord[]) => SnapRecord[];
  readonly expected: readonly Expectation[];
}

/** The chart of a scenario. */
export function scenarioChart({ offense, records = (same) => same }: Scenario) {
  return filmFromRecords(records(inventedRecords(offense)));
}

const ahead = (words: string, [front, behind]: readonly [readonly Family[], readonly Family[]]): Expectation => ({
  words,
  holds: (scores) =>
    Math.min(...front.map((family) => scores[family])) > Math.max(...behind.map((family) => scores[family])),
});
const PRESSURES: readonly Family[] = [
  'three_under',
  'four_under',
  'man_free',
  'hot',
  'zero',
  'peel',
  'peel_spy',
  'add_on',
];
const but = (...left: Family[]): Family[] => PRESSURES.filter((family) => !left.includes(family));

/** Turns away from the back on every pass, whichever side he stands. */
export function turnedAway(records: SnapRecord[]): SnapRecord[] {
  return records.map((record, i) => {
    if (record.back_action === undefined) return record;
    const [strength, weak] = i % 2 === 0 ? (['right', 'left'] as const) : (['left', 'right'] as const);
    const spot = i % 3 === 0 ? 'strong' : 'weak';
    return { ...record, strength, back_spot: spot, slide: spot === 'strong' ? weak : strength };
  });
}

/** Every scenario of the issue; all of it is common practice, no source. */
export const SCENARIOS: readonly Scenario[] = [
  {
    id: 'screen and quick game',
    offense: {
      answers: { run: 30, quarterback_run: 5, screen: 25, quick: 30, dropback: 7, deep_shot: 1, movement: 2 },
      backAction: { blocks: 20, check_releases: 15, releases_wide: 30, releases_inside: 20, none: 15 },
      protectors: { 5: 75, 6: 25 },
      targetZone: { flat: 40, deep_middle: 3, middle: 27, outside: 30 },
    },
    expected: [
      ahead('add-on last', [but('add_on'), ['add_on']]),
      ahead('four-under ahead of hot and zero', [['four_under'], ['hot', 'zero']]),
      ahead('peel ahead of hot and zero', [['peel'], ['hot', 'zero']]),
    ],
  },
  {
    id: 'long yardage, held ball, six protect, back in',
    offense: {
      answers: { run: 15, quarterback_run: 2, screen: 3, quick: 5, dropback: 55, deep_shot: 15, movement: 5 },
      backAction: { blocks: 90, check_releases: 10 },
      protectors: { 6: 95, 7: 5 },
      downs: { '3/9': 60, '2/10': 30, '3/12': 10 },
      scrambles: 0,
    },
    records: turnedAway,
    expected: [
      ahead('add-on first of the six- and seven-man calls', [['add_on'], ['hot', 'zero', 'peel', 'peel_spy']]),
    ],
  },
  {
    id: 'back out wide',
    offense: { backAction: { releases_wide: 75, blocks: 15, releases_inside: 10 } },
    expected: [ahead('peel above zero and hot', [['peel'], ['zero', 'hot']])],
  },
  {
    id: 'trips',
    offense: { receivers: { '3x1': 85, '2x2': 15 } },
    expected: [ahead('three-under above four-under', [['three_under'], ['four_under']])],
  },
  {
    id: 'balanced, flat throws',
    offense: { receivers: { '2x2': 85, '3x1': 15 }, targetZone: { flat: 50, middle: 20, outside: 30 } },
    expected: [ahead('four-under above three-under', [['four_under'], ['three_under']])],
  },
  {
    id: 'running quarterback',
    offense: {
      answers: { run: 30, quarterback_run: 35, screen: 5, quick: 10, dropback: 15, deep_shot: 2, movement: 3 },
      scrambles: 0.3,
    },
    expected: [
      ahead('the spy first', [['peel_spy'], but('peel_spy')]),
      ahead('zero and man-free last', [but('zero', 'man_free'), ['zero', 'man_free']]),
    ],
  },
  {
    id: 'max protection',
    offense: {
      answers: { run: 35, quarterback_run: 3, screen: 3, quick: 7, dropback: 35, deep_shot: 12, movement: 5 },
      backAction: { blocks: 90, check_releases: 10 },
      protectors: { 7: 60, 8: 20, 6: 20 },
    },
    expected: [
      ahead('the add-on first', [['add_on'], but('add_on')]),
      ahead('zone pressures behind the man pressures of six', [
        ['zero', 'peel'],
        ['three_under', 'four_under'],
      ]),
      { words: 'zone pressures no better than the base', holds: (s) => Math.max(s.three_under, s.four_under) < 0 },
    ],
  },
  {
    id: 'empty',
    offense: {
      receivers: { '3x2': 80, '3x1': 20 },
      backAction: { none: 80, releases_wide: 10, releases_inside: 10 },
      protectors: { 5: 100 },
    },
    expected: [
      ahead('those with five on five first', [['zero', 'man_free'], but('zero', 'man_free')]),
      { words: 'no other pressure better than the base', holds: (s) => but('zero', 'man_free').every((f) => s[f] < 0) },
    ],
  },
];
