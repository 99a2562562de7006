import { describe, expect, it } from 'vitest';
import { callLibrarySchema } from '../../src/game/call-library.ts';
import { DEFAULT_FIT_RULES } from '../../src/game/default-fit-rules.ts';
import { FAMILIES } from '../../src/game/families.ts';
import { fitRulesSchema } from '../../src/game/fit-rules.ts';
import { ruleTable } from '../../src/pressure/fit/rule-table.ts';
import { demoDefense } from '../pressure/demo-defense.ts';

const faultsOf = (rules: unknown) => {
  const parsed = callLibrarySchema.safeParse({ ...demoDefense, rules });
  return parsed.success ? [] : parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
};

const ours = { id: 'our_hot', families: ['hot'], when: { motion: ['fast'] }, says: 'wrong' };

describe('the table of rules', () => {
  it('has each id once, speaks of every family, and names a source for each rule', () => {
    expect(new Set(DEFAULT_FIT_RULES.map(({ id }) => id)).size).toBe(DEFAULT_FIT_RULES.length);
    for (const family of FAMILIES) {
      const says = DEFAULT_FIT_RULES.filter(({ families }) => families.includes(family)).map((rule) => rule.says);
      expect(new Set(says), family).toEqual(new Set(['right', 'wrong']));
    }
    for (const { source } of DEFAULT_FIT_RULES) expect(source).not.toBe('');
  });

  it('could be written in defense.yaml itself', () => {
    expect(fitRulesSchema.parse({ set: DEFAULT_FIT_RULES }).set).toEqual(DEFAULT_FIT_RULES);
  });

  it('switches a rule off, changes one in its place and adds one at the end', () => {
    const changes = fitRulesSchema.parse({
      off: ['hot_run'],
      set: [ours, { id: 'base_screen', families: ['base'], when: { answer: ['screen'] }, says: 'wrong' }],
    });
    const table = ruleTable(changes);
    expect(table).toHaveLength(DEFAULT_FIT_RULES.length);
    expect(table.map(({ id }) => id)).not.toContain('hot_run');
    expect(table[0]).toMatchObject({ id: 'base_screen', says: 'wrong', source: 'our staff' });
    expect(table.at(-1)).toMatchObject({ id: 'our_hot', stands: false });
  });
});

describe('rules in defense.yaml', () => {
  it('are read when they are sound, and may be left out', () => {
    expect(faultsOf({ off: ['hot_run'], set: [ours] })).toEqual([]);
    expect(demoDefense.rules).toEqual({ off: [], set: [] });
  });

  it('name a rule that is not there, with those near it', () => {
    const [fault] = faultsOf({ off: ['hot_runs'] });
    expect(fault).toMatch(/^rules\.off\.0: "hot_runs" is not a rule; near it are hot_run,/);
  });

  it('name an id written twice and a wrong rule that stands', () => {
    expect(faultsOf({ set: [ours, { ...ours, stands: true }] })).toEqual([
      'rules.set.1.id: rule our_hot is written twice',
      'rules.set.1.stands: rule our_hot: only a right rule can stand; wrong beats right already, so leave stands out',
    ]);
  });

  it.each([
    [{ ...ours, families: ['hots'] }, 'rules.set.0.families.0'],
    [{ ...ours, when: {} }, 'rules.set.0.when'],
    [{ ...ours, when: { motion: ['jet'] } }, 'rules.set.0.when.motion.0'],
    [{ ...ours, when: { weather: ['wet'] } }, 'rules.set.0.when'],
    [{ ...ours, says: 'maybe' }, 'rules.set.0.says'],
  ])('name the place of %o', (rule, place) => {
    expect(faultsOf({ set: [rule] }).some((fault) => fault.startsWith(place))).toBe(true);
  });
});
