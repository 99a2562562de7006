import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord, textAt } from '../../../src/game/film.ts';
import { applyFormationBook } from '../../../src/ingest/formation/apply-formation-book.ts';
import { formationReader } from '../../../src/ingest/formation/formation-reader.ts';
import { formationBookSchema } from '../../../src/ingest/formation/formation-schema.ts';
import { formationTemplate } from '../../../src/ingest/formation/formation-template.ts';
import { unknownFormations } from '../../../src/ingest/formation/unknown-formations.ts';
import { describeProblem } from '../../../src/ingest/row-problem.ts';
import { readYaml } from '../../../src/ingest/yaml-file.ts';

const BOOK = formationBookSchema.parse({
  formations: {
    Ladder: { receivers: '3x1', backs: 1 },
    'Anvil tight': { receivers: '2x1', back_spot: 'behind', strength: 'right' },
    Kettle: { receivers: '3x2', backs: 0 },
  },
});
const structureOf = formationReader(BOOK);
const apply = (...records: SnapRecord[]) => applyFormationBook(filmFromRecords(records, 'plays.csv'), BOOK);

describe('a formation book', () => {
  it.each([
    ['Ladder', { receivers: '3x1', backs: 1 }],
    ['ladder rt', { receivers: '3x1', backs: 1, strength: 'right' }],
    ['Left Ladder', { receivers: '3x1', backs: 1, strength: 'left' }],
    ['anvil-tight', { receivers: '2x1', back_spot: 'behind', strength: 'right' }],
    ['Anvil tight left', { receivers: '2x1', back_spot: 'behind', strength: 'right' }],
    ['Kettle', { receivers: '3x2', backs: 0, back_spot: 'none' }],
    ['Right', undefined],
    ['Anvil', undefined],
  ])('says what %s looks like', (name, structure) => {
    expect(structureOf(name)).toEqual(structure);
  });

  it('fills what was not charted, and nothing else', () => {
    const { chart, problems } = apply(
      { formation: 'Ladder left', receivers: '3x1' },
      { formation: 'Kettle' },
      { formation: 'Table' },
      { receivers: '2x2' },
    );
    const rows = [0, 1, 2, 3].map((i) =>
      (['receivers', 'strength', 'back_spot'] as const).map((name) => textAt(chart, name, i)),
    );
    expect(rows).toEqual([
      ['3x1', 'left', undefined],
      ['3x2', undefined, 'none'],
      [undefined, undefined, undefined],
      ['2x2', undefined, undefined],
    ]);
    expect(problems).toEqual([]);
  });

  it('never overrules a charted cell, and warns where it says otherwise', () => {
    const { chart, problems } = apply(
      { formation: 'Ladder', receivers: '2x2' },
      { formation: 'Ladder', back_spot: 'none' },
      { formation: 'Ladder', back_spot: 'weak' },
      { formation: 'Kettle', back_spot: 'strong' },
    );
    expect(textAt(chart, 'receivers', 0)).toBe('2x2');
    expect(problems.map(describeProblem)).toEqual([
      'plays.csv, row 2, "receivers": "2x2" is not what the formation book says of "Ladder", which is 3x1; the charted cell counts.',
      'plays.csv, row 3, "back_spot": "none" is not what the formation book says of "Ladder", which is 1 in the backfield; the charted cell counts.',
      'plays.csv, row 5, "back_spot": "strong" is not what the formation book says of "Kettle", which is none; the charted cell counts.',
    ]);
    expect(problems.every(({ severity }) => severity === 'warning')).toBe(true);
  });

  it('keeps every charted cell, whatever stands there', () => {
    const snap = fc.record(
      {
        formation: fc.constantFrom('Ladder', 'Kettle left', 'Table', 'anvil tight'),
        receivers: fc.constantFrom('2x2', '3x1', '3x2'),
        back_spot: fc.constantFrom('none', 'weak', 'both'),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.array(snap, { minLength: 1, maxLength: 20 }), (records) => {
        const { chart } = apply(...records);
        records.forEach((record, i) => {
          for (const [name, value] of Object.entries(record)) expect(textAt(chart, name as 'formation', i)).toBe(value);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('refuses backs that contradict where they stand, and shapes that are none', () => {
    const faults = (text: string) => {
      const reading = readYaml(text, formationBookSchema, 'formations.yaml');
      return reading.kind === 'problems' ? reading.problems.length : 0;
    };
    expect(faults('formations: { A: { backs: 0, back_spot: weak } }')).toBe(1);
    expect(faults('formations: { A: { backs: 1, back_spot: none } }')).toBe(1);
    expect(faults('formations: { A: { receivers: 1x3 } }')).toBe(1);
    expect(faults('formations: { A: { backs: 1, back_spot: weak, receivers: 3x1 } }')).toBe(0);
  });

  it('has a template that can be read as it is', () => {
    expect(readYaml(formationTemplate(), formationBookSchema, 'formations.yaml').kind).toBe('value');
    expect(formationTemplate()).toMatch(/invented/);
  });
});

describe('formation names the book does not have', () => {
  it('are listed by frequency, with what was charted with them most often', () => {
    const chart = filmFromRecords([
      { formation: 'Table', receivers: '2x2' },
      { formation: 'Table', receivers: '2x2' },
      { formation: 'Table', receivers: '3x1', strength: 'left' },
      { formation: 'Table' },
      { formation: 'Rake', receivers: '2x1', strength: 'right', back_spot: 'weak' },
      { formation: 'Ladder' },
      {},
    ]);
    expect(unknownFormations(chart, BOOK)).toEqual([
      {
        name: 'Table',
        snaps: 4,
        open: 4,
        guesses: [
          { column: 'receivers', word: '2x2', count: 2, charted: 3 },
          { column: 'strength', word: 'left', count: 1, charted: 1 },
        ],
      },
      {
        name: 'Rake',
        snaps: 1,
        open: 0,
        guesses: [
          { column: 'receivers', word: '2x1', count: 1, charted: 1 },
          { column: 'strength', word: 'right', count: 1, charted: 1 },
          { column: 'back_spot', word: 'weak', count: 1, charted: 1 },
        ],
      },
    ]);
    expect(unknownFormations(chart, null).map(({ name }) => name)).toEqual(['Table', 'Ladder', 'Rake']);
  });

  it('are none in an empty chart', () => {
    expect(unknownFormations(filmFromRecords([]), null)).toEqual([]);
  });
});
