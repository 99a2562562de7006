import { describe, expect, it } from 'vitest';
import { DEFAULT_FIT_RULES } from '../../src/game/default-fit-rules.ts';
import { FAMILIES, familyFacts, THEORIES } from '../../src/game/families.ts';

const rulesOf = (says: 'right' | 'wrong', family: (typeof FAMILIES)[number]) =>
  DEFAULT_FIT_RULES.filter((rule) => rule.says === says && rule.families.includes(family));

describe('the table of families', () => {
  it.each(FAMILIES)('%s has rules of fit that call it right and others that call it wrong', (family) => {
    expect(rulesOf('right', family)).not.toEqual([]);
    expect(rulesOf('wrong', family)).not.toEqual([]);
  });

  it.each(FAMILIES)('%s turns by rules that speak of it, and not against itself', (family) => {
    const { rules, against } = familyFacts(family).turns;
    const known = DEFAULT_FIT_RULES.filter((rule) => rule.families.includes(family)).map(({ id }) => id);
    expect(rules).not.toEqual([]);
    for (const id of rules) expect(known).toContain(id);
    expect(against).not.toBe(family);
  });

  it('teaches every theory, and only the base none', () => {
    const taught = FAMILIES.map((family) => familyFacts(family).theory);
    expect(new Set(taught.filter((theory) => theory !== null))).toEqual(new Set(THEORIES));
    expect(FAMILIES.filter((family) => familyFacts(family).theory === null)).toEqual(['base']);
  });

  it('eleven men: who rushes and who covers add up', () => {
    for (const family of FAMILIES) {
      const { rush, late = 0, deep, man, under, hot, spy = 0 } = familyFacts(family).men;
      if (family === 'base') continue;
      const covers = (deep ?? 0) + (man ?? 0) + (under ?? hot ?? 0) + spy;
      expect(rush + late + covers, family).toBe(11);
    }
  });
});
