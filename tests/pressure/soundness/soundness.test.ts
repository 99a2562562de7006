import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Call } from '../../../src/game/call-library.ts';
import { FAMILIES } from '../../../src/game/families.ts';
import { checkCall, checkLibrary } from '../../../src/pressure/soundness/soundness.ts';
import { faultInWords } from '../../../src/report/words/soundness-words.ts';
import { demoCall, demoDefense } from '../demo-defense.ts';

type Breakage = (call: Call) => Call;
/** The faults a call does not declare, with the words a coach reads. */
const faultsOf = (call: Call) =>
  checkCall(call, demoDefense)
    .filter(({ declared }) => !declared)
    .map(faultInWords);
const broken = (name: string, breakage: Breakage) => faultsOf(breakage(demoCall(name)));

const withoutCover =
  (role: string): Breakage =>
  (call) => ({ ...call, cover: call.cover.filter((man) => man.role !== role) });
const rejob =
  (role: string, job: Call['cover'][number]['job']): Breakage =>
  (call) => ({
    ...call,
    cover: call.cover.map((man) => (man.role === role ? { ...man, job } : man)),
  });
const relane =
  (role: string, lane: Call['rush'][number]['lane']): Breakage =>
  (call) => ({
    ...call,
    rush: call.rush.map((man) => (man.role === role ? { ...man, lane } : man)),
  });
const change =
  (role: string, more: Partial<Call['rush'][number]>): Breakage =>
  (call) => ({ ...call, rush: call.rush.map((man) => (man.role === role ? { ...man, ...more } : man)) });
const recover =
  (role: string, more: Partial<Call['cover'][number]>): Breakage =>
  (call) => ({ ...call, cover: call.cover.map((man) => (man.role === role ? { ...man, ...more } : man)) });
const both =
  (...breakages: readonly Breakage[]): Breakage =>
  (call) =>
    breakages.reduce((changed, breakage) => breakage(changed), call);
const noGiven: Breakage = (call) => ({ ...call, given: [] });
const noPeel =
  (role: string): Breakage =>
  (call) => ({
    ...call,
    rush: call.rush.map((man) => (man.role === role ? { ...man, peels: false } : man)),
  });

describe('the demo library', () => {
  it('is sound: every fault is a declared exception', () => {
    expect(checkLibrary(demoDefense).filter(({ declared }) => !declared)).toEqual([]);
  });

  it('declares what it gives up, and each declaration answers a fault of its call', () => {
    const declared = checkLibrary(demoDefense).filter((fault) => fault.declared);
    const given = demoDefense.calls.reduce((sum, call) => sum + call.given.length, 0);
    expect(declared).toHaveLength(given);
  });

  it('has at least two calls of every family, and a path followed by more than one coverage', () => {
    for (const family of FAMILIES) {
      expect(demoDefense.calls.filter((call) => call.family === family).length).toBeGreaterThanOrEqual(2);
    }
    const coverages = (path: string) =>
      new Set(demoDefense.calls.filter((call) => call.path === path).map(({ coverage }) => coverage)).size;
    expect(demoDefense.calls.filter((call) => coverages(call.path) > 1).length).toBeGreaterThanOrEqual(16);
  });

  it('sends the same men through the same lanes whenever a path is called, but for the add-on', () => {
    const atSnap = (call: Call) =>
      call.rush
        .filter(({ way }) => way !== 'late_if_back_blocks')
        .map(({ role, lane, way }) => `${role} ${lane} ${way}`);
    for (const call of demoDefense.calls) {
      const first = demoDefense.calls.find(({ path }) => path === call.path) ?? call;
      expect(atSnap(call)).toEqual(atSnap(first));
    }
  });
});

describe('broken copies of the demo library', () => {
  it.each([
    {
      what: 'a man left out',
      name: 'Latch Roof',
      by: withoutCover('will'),
      rule: 'eleven men',
      words: 'Will has no job',
    },
    {
      what: 'no man on number two far',
      name: 'Latch Lock',
      by: rejob('safety_boundary', 'man_1_far'),
      rule: 'owner',
      words: 'nobody has number two on the far side',
    },
    {
      what: 'nobody on the back',
      name: 'Latch Lock',
      by: rejob('will', 'man_2_far'),
      rule: 'owner',
      words: 'nobody has the back',
    },
    {
      what: 'one edge that does not peel',
      name: 'Anvil Peel',
      by: noPeel('will'),
      rule: 'owner',
      words: 'nobody has the back when he goes to the far side',
    },
    {
      what: 'the declaration of the back taken away',
      name: 'Anvil Hot',
      by: noGiven,
      rule: 'owner',
      words: 'nobody has the back',
    },
    {
      what: 'an edge rusher sent inside',
      name: 'Anvil Peel',
      by: relane('will', 'far_A'),
      rule: 'contain',
      words: 'nobody contains the far edge',
    },
    {
      what: 'a peel man alone on his side',
      name: 'Hackle Peel',
      by: (call) => relane('nose', 'near_B')(relane('end_boundary', 'near_C')(call)),
      rule: 'contain',
      words: 'Will peels and no inside rusher replaces him on the far edge',
    },
    {
      what: 'two men in one lane',
      name: 'Latch Roof',
      by: relane('mike', 'near_B'),
      rule: 'lane',
      words: 'Field end and Mike share the near B lane and neither loops',
    },
    {
      what: 'no deep middle',
      name: 'Latch Lock',
      by: rejob('safety_middle', 'man_3_far'),
      rule: 'deep middle',
      words: 'nobody has the deep middle',
    },
    {
      what: 'an undeclared empty middle',
      name: 'Anvil Zero',
      by: noGiven,
      rule: 'deep middle',
      words: 'nobody has the deep middle',
    },
    {
      what: 'an add-on that does not say it empties the middle',
      name: 'Hackle Extra',
      by: noGiven,
      rule: 'deep middle',
      words: 'Middle safety leaves the deep middle to nobody when he joins the rush',
    },
    { what: 'an undeclared flat', name: 'Latch Roof', by: noGiven, rule: 'flat', words: 'nobody has the near flat' },
    {
      what: 'an undeclared quarterback',
      name: 'Anvil Peel',
      by: noGiven,
      rule: 'quarterback run',
      words: 'nobody has the quarterback when he runs',
    },
    {
      what: 'a nose who drops',
      name: 'Ferry Roof',
      by: (call: Call) => ({
        ...call,
        rush: call.rush.map((man) => (man.role === 'nose' ? { ...man, role: 'end_boundary' } : man)),
        cover: call.cover.map((man) => (man.role === 'end_boundary' ? { ...man, role: 'nose' } : man)),
      }),
      rule: 'cannot',
      words: 'Nose is not asked to drop into a zone',
    },
    {
      what: 'a corner who rushes',
      name: 'Latch Roof',
      by: (call: Call) => ({
        ...call,
        rush: call.rush.map((man) => (man.role === 'nickel' ? { ...man, role: 'corner_field' } : man)),
      }),
      rule: 'cannot',
      words: 'Field corner is not asked to rush',
    },
    {
      what: 'six in a five-man family',
      name: 'Latch Roof',
      by: (call: Call) => ({
        ...withoutCover('will')(call),
        rush: [...call.rush, { role: 'will', lane: 'far_B' as const, way: 'straight' as const, peels: false }],
      }),
      rule: 'family',
      words: '6 rush at the snap; three-under has 5',
    },
    {
      what: 'a peel call with one peel man',
      name: 'Mallet Peel',
      by: noPeel('nickel'),
      rule: 'family',
      words: 'edges peel on 1 of 2 sides; peel has 2',
    },
    {
      what: 'an add-on with nobody to add',
      name: 'Hackle Extra',
      by: (call: Call) => ({ ...call, rush: call.rush.slice(0, 6) }),
      rule: 'family',
      words: '0 join late; add-on has 1',
    },
    {
      what: 'inside men who peel while the edges stay',
      name: 'Anvil Peel',
      by: both(
        change('nickel', { peels: false }),
        change('will', { peels: false }),
        change('end_field', { peels: true }),
        change('end_boundary', { peels: true }),
      ),
      rule: 'peel',
      words: 'Field end peels from the near B lane; the widest man, outside the tackle, has the back',
    },
    {
      what: 'inside men who peel: nobody has the back',
      name: 'Anvil Peel',
      by: both(
        change('nickel', { peels: false }),
        change('will', { peels: false }),
        change('end_field', { peels: true }),
        change('end_boundary', { peels: true }),
      ),
      rule: 'owner',
      words: 'nobody has the back',
    },
    {
      what: 'inside men who peel do not make a peel call',
      name: 'Anvil Peel',
      by: both(change('will', { peels: false }), change('end_boundary', { peels: true })),
      rule: 'family',
      words: 'edges peel on 1 of 2 sides; peel has 2',
    },
    {
      what: 'a C-gap man who peels inside a man in the D gap',
      name: 'Hackle Peel',
      by: both(change('nickel', { peels: false }), change('end_field', { peels: true })),
      rule: 'peel',
      words: 'Field end peels from the near C lane',
    },
    {
      what: 'the edge and the B-gap rusher peeling on one side',
      name: 'Anvil Peel',
      by: change('end_field', { peels: true }),
      rule: 'peel',
      words: 'Nickel and Field end peel on the near side; one man goes with the back',
    },
    {
      what: 'both deep halves on one side',
      name: 'Funnel Split',
      by: rejob('safety_boundary', 'deep_half_near'),
      rule: 'deep middle',
      words: 'nobody has the far deep half or the deep middle',
    },
    {
      what: 'two men in one deep half',
      name: 'Funnel Split',
      by: rejob('safety_boundary', 'deep_half_near'),
      rule: 'one place each',
      words: 'Field safety and Boundary safety both have deep half near',
    },
    {
      what: 'two men in one seam',
      name: 'Latch Roof',
      by: rejob('will', 'seam_near'),
      rule: 'one place each',
      words: 'Field safety and Will both have seam near',
    },
    {
      what: 'two loopers in one lane',
      name: 'Cross Roof',
      by: change('nose', { lane: 'near_A', way: 'loop' }),
      rule: 'lane',
      words: 'Will and Nose share the near A lane and both loop',
    },
    {
      what: 'three men in one lane',
      name: 'Cross Roof',
      by: both(change('nose', { lane: 'near_A' }), change('mike', { lane: 'near_A', way: 'loop' })),
      rule: 'lane',
      words: 'Mike and Will and Nose share the near A lane and two is the most, one of them looping',
    },
    {
      what: 'an add-on joined by the nose',
      name: 'Hackle Extra',
      by: (call: Call) => {
        const swapped: Record<string, string> = { nose: 'safety_middle', safety_middle: 'nose' };
        return { ...call, rush: call.rush.map((man) => ({ ...man, role: swapped[man.role] ?? man.role })) };
      },
      rule: 'add-on',
      words: 'Nose is on the line and cannot read the back first',
    },
    {
      what: 'an adder who is his own second owner',
      name: 'Latch Roof',
      by: recover('will', { adds: true, next: 'seam_far' }),
      rule: 'second owner',
      words: 'Will adds and nobody has seam far after him',
    },
    {
      what: 'two adders who are each the second owner of the other',
      name: 'Latch Roof',
      by: both(
        recover('will', { adds: true, next: 'seam_near' }),
        recover('safety_field', { adds: true, next: 'seam_far' }),
      ),
      rule: 'second owner',
      words: 'Field safety adds and nobody has seam near after him',
    },
    {
      what: 'the A and B gap open on one side',
      name: 'Latch Roof',
      by: change('nose', { lane: 'near_D' }),
      rule: 'inside',
      words: 'nobody rushes the A or B gap on the far side',
    },
    {
      what: 'a zone man who adds',
      name: 'Latch Roof',
      by: (call: Call) => ({
        ...call,
        cover: call.cover.map((man) => (man.role === 'will' ? { ...man, adds: true } : man)),
      }),
      rule: 'second owner',
      words: 'Will adds and nobody has seam far after him',
    },
  ] satisfies { what: string; name: string; by: Breakage; rule: string; words: string }[])(
    '$what fails by the rule "$rule"',
    ({ name, by, rule, words }) => {
      const found = broken(name, by);
      expect(
        found
          .filter((fault) => fault.rule === rule)
          .map((fault) => fault.words)
          .join('; '),
      ).toContain(words);
      expect(found.every(({ call }) => call === name)).toBe(true);
    },
  );

  it.each(['trips', 'empty', 'two_backs', 'fast_motion', 'heavy'] as const)(
    'a call with no answer to %s fails, unless it declares it',
    (look) => {
      const { [look]: _, ...adjust } = demoCall('Latch Roof').adjust;
      const call = { ...demoCall('Latch Roof'), adjust };
      expect(faultsOf(call).map(({ rule }) => rule)).toEqual([look.replace('_', ' ')]);
      expect(faultsOf({ ...call, given: [...call.given, look] })).toEqual([]);
    },
  );

  it.each(['', ' ', '-', '?', '...', 'tbd', 'N/A', ' none '])('%j is no answer to trips', (trips) => {
    const call = { ...demoCall('Latch Roof'), adjust: { ...demoCall('Latch Roof').adjust, trips } };
    expect(faultsOf(call).map(({ rule }) => rule)).toEqual(['trips']);
  });

  it('an open inside may be given on purpose, on the side that is open', () => {
    const call = change('nose', { lane: 'near_D' })(demoCall('Latch Roof'));
    const open = (given: Call['given']) => faultsOf({ ...call, given: [...call.given, ...given] });
    expect(open(['inside_far'])).toEqual([]);
    expect(open(['inside_near']).map(({ rule }) => rule)).toEqual(['inside']);
  });

  it('the order of the men in a call changes no fault', () => {
    const call = both(
      change('end_field', { peels: true }),
      rejob('safety_boundary', 'man_2_near'),
    )(demoCall('Anvil Peel'));
    const turned = { ...call, rush: call.rush.toReversed(), cover: call.cover.toReversed() };
    const rules = (one: Call) =>
      faultsOf(one)
        .map(({ rule }) => rule)
        .sort();
    expect(rules(turned)).toEqual(rules(call));
  });

  it('a fault of one man names his role', () => {
    expect(broken('Latch Roof', withoutCover('will')).find(({ rule }) => rule === 'eleven men')?.role).toBe('will');
    expect(broken('Hackle Extra', noGiven).find(({ rule }) => rule === 'deep middle')?.role).toBe('safety_middle');
  });

  it('a second owner may be written as the next job of another man', () => {
    const call = demoCall('Latch Roof');
    const cover = call.cover.map((man) => {
      if (man.role === 'will') return { ...man, adds: true };
      return man.role === 'safety_middle' ? { ...man, next: 'seam_far' as const } : man;
    });
    expect(faultsOf({ ...call, cover })).toEqual([]);
  });

  it('any man taken out of any call is missed', () => {
    const calls = fc.constantFrom(...demoDefense.calls);
    fc.assert(
      fc.property(calls, fc.nat(10), (call, pick) => {
        const role = demoDefense.roles[pick % 11]?.id ?? '';
        const cut = {
          ...call,
          rush: call.rush.filter((man) => man.role !== role),
          cover: call.cover.filter((man) => man.role !== role),
        };
        expect(faultsOf(cut).some((fault) => fault.rule === 'eleven men' && fault.role === role)).toBe(true);
      }),
    );
  });
});
