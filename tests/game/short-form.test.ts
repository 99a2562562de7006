import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { CallLibrary } from '../../src/game/call-library.ts';
import { FAMILIES } from '../../src/game/families.ts';
import { defenseSchema } from '../../src/game/short-form/defense-schema.ts';
import { isPlainYaml } from '../../src/ingest/plain-yaml.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { STARTER_DEFENSE } from '../../src/ingest/starter-defense.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';
import { checkLibrary } from '../../src/pressure/soundness/soundness.ts';

const SHORT = readFileSync('data/demo/season/defense.yaml', 'utf8');
const FULL = readFileSync('tests/game/demo-defense-in-full.yaml', 'utf8');

function libraryOf(text: string): CallLibrary {
  const read = readYaml(text, defenseSchema, 'defense.yaml');
  if (read.kind === 'problems') throw new Error(read.problems.map(describeProblem).join('\n'));
  return read.value;
}

function problemsOf(text: string): string[] {
  const read = readYaml(text, defenseSchema, 'defense.yaml');
  return read.kind === 'value' ? [] : read.problems.map(describeProblem);
}

const unsound = (library: CallLibrary) => checkLibrary(library).filter(({ declared }) => !declared);

describe('the demo season in the short form', () => {
  it('is the library written in full, to the byte', () => {
    expect(JSON.stringify(libraryOf(SHORT))).toBe(JSON.stringify(libraryOf(FULL)));
  });

  it('takes under 250 lines, and in full over 800', () => {
    expect(SHORT.trimEnd().split('\n').length).toBeLessThan(250);
    expect(FULL.trimEnd().split('\n').length).toBeGreaterThan(800);
  });

  it('keeps to the forms that are read quickly', () => {
    expect(isPlainYaml(SHORT)).toBe(true);
    expect(isPlainYaml(STARTER_DEFENSE)).toBe(true);
  });
});

describe('the order in which men are written', () => {
  it('means nothing: any order gives the same library to the byte', () => {
    const full = parse(FULL);
    const wanted = JSON.stringify(defenseSchema.parse(full));
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (keys) => {
        const shuffle = <Man>(men: readonly Man[]) =>
          men
            .map((man) => ({ man, key: keys.next().value }))
            .sort((a, b) => a.key - b.key)
            .map(({ man }) => man);
        const calls = full.calls.map((call: { rush: object[]; cover: object[] }) => ({
          ...call,
          rush: shuffle(call.rush),
          cover: shuffle(call.cover),
        }));
        expect(JSON.stringify(defenseSchema.parse({ ...full, calls }))).toBe(wanted);
      }),
      { numRuns: 25 },
    );
  });
});

describe('the starter', () => {
  const starter = libraryOf(STARTER_DEFENSE);

  it('has sound calls of every family, a line each', () => {
    expect(unsound(starter)).toEqual([]);
    expect(new Set(starter.calls.map(({ family }) => family))).toEqual(new Set(FAMILIES));
    const listed = STARTER_DEFENSE.slice(STARTER_DEFENSE.indexOf('\ncalls:\n') + 1).trimEnd();
    expect(listed.split('\n').length - 1).toBe(starter.calls.length);
  });

  it('declares what each call gives up, and nothing besides', () => {
    const declared = checkLibrary(starter).filter((fault) => fault.declared);
    expect(declared).toHaveLength(starter.calls.reduce((sum, { given }) => sum + given.length, 0));
  });

  it('takes four calls of a newcomer in six typed lines, and they are sound', () => {
    const paths = [
      '  storm: { sent_from: strength, send: [nickel, will near_A loop, mike near_B] }',
      '  cross: { sent_from: back, send: [mike near_B, will near_A loop] }',
    ];
    const calls = [
      '  - { name: Storm, path: storm, coverage: hot }',
      '  - { name: Storm Zero, like: Storm, coverage: zero }',
      '  - { name: Cross Under, path: cross, coverage: three deep three under, rotation: away_from_rush }',
      '  - { name: Cross Man, like: Cross Under, coverage: man free }',
    ];
    const typed = STARTER_DEFENSE.replace('\ncoverages:\n', `\n${paths.join('\n')}\ncoverages:\n`) + calls.join('\n');
    const library = libraryOf(typed);
    expect(library.calls.slice(-4).map(({ name, family }) => `${name} ${family}`)).toEqual([
      'Storm hot',
      'Storm Zero zero',
      'Cross Under three_under',
      'Cross Man man_free',
    ]);
    expect(unsound(library)).toEqual([]);
  });
});

describe('what differs', () => {
  const withCall = (line: string) => libraryOf(STARTER_DEFENSE + line).calls.at(-1);
  const men = (call: CallLibrary['calls'][number] | undefined) => call?.rush.map(({ role, lane }) => `${role} ${lane}`);

  it('a call says a job, and the coverage says the rest', () => {
    const call = withCall('  - { name: X, path: six, coverage: zero, cover: { man_back: safety_middle adds } }');
    expect(call?.cover.find(({ job }) => job === 'man_back')).toEqual({
      role: 'safety_middle',
      job: 'man_back',
      adds: true,
    });
    expect(call?.cover).toHaveLength(5);
  });

  it('a call from the boundary trades its men, and lanes follow from where they line up', () => {
    expect(
      men(
        withCall(
          '  - { name: X, path: boundary five, coverage: man free, cover: { man_back: safety_field, man_2_far: nickel } }',
        ),
      ),
    ).toEqual(['will near_C', 'end_boundary near_B', 'nose near_A', 'mike far_A', 'end_field far_C']);
  });

  it('an answer of a call replaces that of its coverage, and leaves the others', () => {
    const call = withCall('  - { name: X, like: Six Hot, adjust: { trips: stay and pass it off } }');
    expect(call?.adjust.trips).toBe('stay and pass it off');
    expect(call?.adjust.empty).toBe('call it off and check to man free');
  });

  it('a call that is like another and names its own path sends its own men', () => {
    expect(men(withCall('  - { name: X, like: Field Man, path: both edges }'))).toEqual([
      'nickel near_C',
      'end_field near_B',
      'nose near_A',
      'end_boundary far_B',
      'will far_C',
    ]);
  });
});

describe('faults of the short form', () => {
  const broken = (from: string, to: string) => {
    expect(STARTER_DEFENSE).toContain(from);
    return problemsOf(STARTER_DEFENSE.replace(from, to));
  };
  const lineOf = (text: string) => STARTER_DEFENSE.split('\n').findIndex((line) => line.includes(text)) + 1;

  it.each([
    [
      'Field Man, path: field five',
      'Field Man, path: feild five',
      /Field Man has a path that does not stand under paths: four, field five/,
    ],
    ['coverage: hot }', 'coverage: hott }', /Six Hot has a coverage that does not stand under coverages: thirds/],
    [
      'send: [nickel, mike] }',
      'send: [nickle, mike] }',
      /paths\.field five\.send.*"nickle".*does not begin with one of our roles \(nose/,
    ],
    [
      'mike near_A] }',
      'mike near_E] }',
      /"mike near_E".*has near_E after the role; write a lane such as near_B, loop, late or peels/,
    ],
    ['hot_near: safety_field', 'hot_near: safety_feild', /coverages\.hot\.cover\.hot_near.*"safety_feild"/],
    ['hot_near: safety_field', 'hot_naer: safety_field', /hot_naer/],
    [
      '    like: peel\n    family: peel_spy',
      '    like: peal\n    family: peel_spy',
      /coverages\.peel with a spy\.like.*peal is the name of no coverage/,
    ],
    [
      '  four: { send',
      '  four: { like: four, send',
      /goes round in a circle: four is like four; write one of them out/,
    ],
    ['trade: [[corner_field, corner_boundary], ', 'trade: [[corner_field, corner_field], ', /trades places twice/],
    [
      'trade: [[corner_field, corner_boundary], [safety_field, safety_boundary], [end_field, end_boundary], [nickel, will]]',
      '',
      /Boundary Under is sent from the boundary: write trade/,
    ],
    ['name: Six Zero', 'name: Six Hot', /call Six Hot is written twice/],
    [
      'path: four, coverage: three deep four under',
      'coverage: zero',
      /Base says no path: write one of four, field five/,
    ],
    ['    family: zero\n', '', /line \d+, "calls\[8\] \(Six Zero\)\.family": is not one of base, three_under/],
  ])('%j as %j', (from, to, words) => {
    expect(broken(from, to).join('\n')).toMatch(words);
  });

  it('name the line', () => {
    expect(broken('hot_near: safety_field', 'hot_near: safety_feild')[0]).toContain(
      `line ${lineOf('hot_near: safety_field')}`,
    );
    expect(broken('path: six, coverage: hot }', 'path: sixx, coverage: hot }')[0]).toContain(
      `line ${lineOf('name: Six Hot')}`,
    );
  });

  it('say who was named when nobody is left for a job', () => {
    const [problem] = broken('man_back: safety_middle }', 'man_back: mike }');
    expect(problem).toContain(
      'Six Zero: nobody is left for man_back: mike rushes or has another job; name one more man for it under coverages, zero, cover',
    );
  });

  it('come all in one run', () => {
    const text = STARTER_DEFENSE.replace('coverage: hot }', 'coverage: hott }').replace(
      'coverage: zero }',
      'coverage: zerro }',
    );
    expect(problemsOf(text)).toHaveLength(2);
  });
});
