import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { type FitRule, fitRulesSchema } from '../../../src/game/fit-rules.ts';
import { ruleRecord } from '../../../src/pressure/review/rule-record.ts';
import { seasonFit } from '../../../src/pressure/review/season-rule.ts';
import { createRandom } from '../../../src/stats/random.ts';
import { inventedSettings } from '../invented-offense.ts';

const cuts = inventedSettings().situations;
const { set: RULES } = fitRulesSchema.parse({
  set: [
    { id: 'planted_false', families: ['hot'], when: { answer: ['run'] }, says: 'right' },
    { id: 'planted_true', families: ['four_under'], when: { answer: ['screen'] }, says: 'right' },
    { id: 'says_nothing', families: ['peel'], when: { answer: ['quick'] }, says: 'wrong' },
    { id: 'asks_for_throws', families: ['hot'], when: { thrown_to: ['flat'] }, says: 'wrong' },
  ],
});

const recordOf = (ours: readonly SnapRecord[], game: readonly SnapRecord[] = [], rules: readonly FitRule[] = RULES) =>
  ruleRecord({ rules, library: null, ours: filmFromRecords(ours), game: filmFromRecords(game), cuts });

const snap = (change: SnapRecord): SnapRecord => ({
  game: 'w1',
  down: 1,
  to_go: 10,
  play_kind: 'run',
  family: 'hot',
  result: 'rush',
  gain: 0,
  ...change,
});

describe('our calls marked by the rules', () => {
  it('are right or wrong where a rule spoke, neutral where none did, with what came of them', () => {
    const { snaps, right, neutral } = recordOf([
      snap({ snap: 1, gain: 0 }),
      snap({ snap: 2, gain: 9 }),
      snap({ snap: 3, family: 'base', gain: 0 }),
    ]);
    expect(snaps.map(({ mark, held, rules }) => ({ mark, held, rules }))).toEqual([
      { mark: 'right', held: true, rules: ['planted_false'] },
      { mark: 'right', held: false, rules: ['planted_false'] },
      { mark: 'neutral', held: true, rules: [] },
    ]);
    expect([right.count, right.trials, neutral.count, neutral.trials]).toEqual([1, 2, 1, 1]);
  });

  it('take what our sheet leaves blank from the same snap of the game', () => {
    const ours = [1, 2].map((n) => snap({ snap: n, play_kind: 'quick', result: 'complete' }));
    const game = [
      { game: 'W1', snap: 1, play_kind: 'quick', target_zone: 'flat' },
      { game: 'w1', snap: 2, play_kind: 'quick', target_zone: 'middle' },
    ];
    expect(recordOf(ours, game).snaps.map(({ mark }) => mark)).toEqual(['wrong', 'neutral']);
  });

  it('are open where the trigger was charted on other snaps only, and leave out rules nobody charted for', () => {
    const ours = [1, 2].map((n) => snap({ snap: n, play_kind: 'quick', result: 'complete' }));
    const half = recordOf(ours, [{ game: 'w1', snap: 1, play_kind: 'quick', target_zone: 'flat' }]);
    expect(half.snaps.map(({ mark }) => mark)).toEqual(['wrong', 'open']);
    expect(half.open).toBe(1);
    const none = recordOf(ours);
    expect(none.snaps.map(({ mark }) => mark)).toEqual(['neutral', 'neutral']);
    expect(none.notAsked).toEqual(['asks_for_throws']);
  });
});

/** How often calls of a family hold, by answer; everything else holds half the time. */
type Truth = Readonly<Record<string, number>>;

function seasonOf(truth: Truth, seed: string) {
  const random = createRandom(seed);
  const pick = <Item>(items: readonly Item[]) => items[random.integer(items.length)] as Item;
  return Array.from({ length: 10 }, (_, game) =>
    Array.from({ length: 60 }, (_, n) => {
      const kind = pick(['run', 'run', 'screen', 'quick', 'dropback']);
      const family = pick(['hot', 'four_under', 'peel', 'base', 'base']);
      const held = random.uniform() < (truth[`${family} ${kind}`] ?? 0.5);
      return snap({ game: `w${game}`, snap: n + 1, play_kind: kind, family, result: 'complete', gain: held ? 0 : 9 });
    }),
  );
}

const standings = (truth: Truth, seed: string) => {
  const fit = seasonFit(seasonOf(truth, seed).map((ours) => ({ fit: recordOf(ours) })));
  return Object.fromEntries((fit?.rules ?? []).map(({ rule, standing }) => [rule, standing]));
};

describe('the rules over a season', () => {
  it('name a planted false rule and not a planted true one', () => {
    expect(standings({ 'hot run': 0.2, 'four_under screen': 0.9 }, 'planted')).toEqual({
      planted_false: 'contradicted',
      planted_true: 'borne_out',
      says_nothing: 'no_difference',
    });
  });

  it('count the record of a rule, and of everything else we called on such snaps', () => {
    const games = seasonOf({}, 'counted');
    const runs = games.flat().filter(({ play_kind }) => play_kind === 'run');
    const held = (records: readonly SnapRecord[]) => records.filter(({ gain }) => gain === 0).length;
    const [own, other] = [runs.filter(({ family }) => family === 'hot'), runs.filter(({ family }) => family !== 'hot')];
    const record = seasonFit(games.map((ours) => ({ fit: recordOf(ours) })))?.rules.find(
      ({ rule }) => rule === 'planted_false',
    );
    expect([record?.held.count, record?.held.trials]).toEqual([held(own), own.length]);
    expect([record?.other.count, record?.other.trials]).toEqual([held(other), other.length]);
    expect(record?.expected).toBeCloseTo((own.length * held(runs)) / runs.length, 10);
  });

  it('seldom name a rule that makes no difference: of forty plain seasons at most four have one', () => {
    const named = Array.from({ length: 40 }, (_, i) => standings({}, `plain ${i}`)).filter((found) =>
      Object.values(found).includes('contradicted'),
    );
    expect(named.length).toBeLessThanOrEqual(4);
  });

  it('say too few below twenty snaps, and nothing without a marked game', () => {
    const [first] = seasonOf({ 'hot run': 0 }, 'one game');
    const one = seasonFit([{ fit: recordOf((first as SnapRecord[]).slice(0, 30)) }]);
    expect(one?.rules.every(({ standing }) => standing === 'too_few')).toBe(true);
    expect(seasonFit([{ fit: null }])).toBeNull();
  });
});
