import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../../src/game/week-settings.ts';
import { fitArchive, fitOpponent } from '../../../../src/pressure/forecast/additive/additive.ts';
import type { AdditiveReading } from '../../../../src/pressure/forecast/additive/additive-families.ts';
import { additiveFilm } from '../../../../src/pressure/forecast/additive/additive-film.ts';
import { runOrPassCodes } from '../../../../src/pressure/snap/run-or-pass.ts';
import { snapCells } from '../../../../src/pressure/snap/snap-cells.ts';
import { createRandom } from '../../../../src/stats/random.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const DEPTHS = ['shotgun', 'under_center'] as const;

/** Run or pass by depth of the quarterback, down and the offense's own leaning, in log odds of a pass. */
const oddsOf = (snap: SnapRecord, leaning: number) =>
  leaning + (snap['quarterback_depth'] === 'shotgun' ? 1 : -1) + (snap['down'] === 3 ? 0.8 : 0);

function offense(name: string, snaps: number, leaning = 0): SnapRecord[] {
  const random = createRandom(name);
  const pick = <T>(list: readonly T[]) => list[random.integer(list.length)] as T;
  return Array.from({ length: snaps }, (): SnapRecord => {
    const seen: SnapRecord = {
      offense: name,
      down: pick([1, 2, 3]),
      to_go: pick([10, 7, 4]),
      ball_on: 1 + random.integer(98),
      quarter: pick([1, 2, 3, 4]),
      clock: random.integer(720),
      score_margin: random.integer(29) - 14,
      personnel: pick(['11', '12', '21']),
      quarterback_depth: pick(DEPTHS),
    };
    const pass = random.uniform() < 1 / (1 + Math.exp(-oddsOf(seen, leaning)));
    return { ...seen, play_kind: pass ? 'quick' : 'run' };
  });
}

interface Sample {
  readonly own: readonly SnapRecord[];
  readonly archive: readonly SnapRecord[];
  readonly asked: readonly SnapRecord[];
  readonly reading?: AdditiveReading;
}

/** Shares of a pass on the asked snaps. */
function passShares({ own, archive, asked, reading = 'line' }: Sample): number[] {
  const chart = filmFromRecords([...own, ...archive, ...asked]);
  const film = additiveFilm(chart, snapCells(chart, cuts));
  const target = { codes: runOrPassCodes(chart), classes: 2 };
  const numbers = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i);
  const task = { film, name: 'run_or_pass', target, reading, own: numbers(0, own.length) } as const;
  const base = fitArchive(task, numbers(own.length, archive.length));
  const shares = fitOpponent(task, base)(numbers(own.length + archive.length, asked.length));
  return asked.map((_, i) => shares[2 * i + 1] as number);
}

const without = (records: readonly SnapRecord[], column: keyof SnapRecord) =>
  records.map(({ [column]: _, ...rest }) => rest as SnapRecord);
const meanGap = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, share, i) => sum + Math.abs(share - other[i]!), 0) / one.length;

const archive = offense('others', 2500);
const asked = offense('next game', 60);

describe('the additive model', () => {
  it('comes near the chances that made the film', () => {
    const shares = passShares({ own: offense('plain', 240), archive, asked });
    const truth = asked.map((snap) => 1 / (1 + Math.exp(-oddsOf(snap, 0))));
    expect(meanGap(shares, truth)).toBeLessThan(0.06);
  });

  it('moves towards an offense that leans to the pass, and stays short of it', () => {
    const plain = passShares({ own: offense('plain', 240), archive, asked });
    const leaning = passShares({ own: offense('leaning', 240, 1), archive, asked });
    const truth = asked.map((snap) => 1 / (1 + Math.exp(-oddsOf(snap, 1))));
    const mean = (shares: readonly number[]) => shares.reduce((sum, share) => sum + share, 0) / shares.length;
    expect(mean(leaning)).toBeGreaterThan(mean(plain) + 0.08);
    expect(mean(leaning)).toBeLessThan(mean(truth));
    expect(meanGap(leaning, truth)).toBeLessThan(meanGap(plain, truth));
  });

  it('says with no film of the opponent what the archive says, and with neither that nothing is known', () => {
    const truth = asked.map((snap) => 1 / (1 + Math.exp(-oddsOf(snap, 0))));
    expect(meanGap(passShares({ own: [], archive, asked }), truth)).toBeLessThan(0.06);
    expect(passShares({ own: [], archive: [], asked })).toEqual(asked.map(() => 0.5));
  });

  it('moves next to nothing when the opponent is just like the archive', () => {
    const others = archive.slice(0, 1000);
    const alike = passShares({ own: others, archive: others, asked });
    expect(meanGap(alike, passShares({ own: [], archive: others, asked }))).toBeLessThan(0.02);
  });

  it('gives relabelled answers for relabelled categories', () => {
    const own = offense('plain', 120);
    const flip = (records: readonly SnapRecord[]) =>
      records.map((snap): SnapRecord => ({ ...snap, play_kind: snap['play_kind'] === 'run' ? 'quick' : 'run' }));
    const shares = passShares({ own, archive: archive.slice(0, 800), asked });
    const flipped = passShares({ own: flip(own), archive: flip(archive.slice(0, 800)), asked });
    shares.forEach((share, i) => {
      expect(flipped[i]! + share).toBeCloseTo(1, 4);
    });
  });

  it('does not mind what formations and personnel are called', () => {
    const rename = (records: readonly SnapRecord[]) =>
      records.map(
        (snap): SnapRecord => ({ ...snap, personnel: { 11: '31', 12: '32', 21: '01' }[snap['personnel'] as 11]! }),
      );
    const [own, others] = [offense('plain', 120), archive.slice(0, 800)];
    const shares = passShares({ own, archive: others, asked });
    const renamed = passShares({ own: rename(own), archive: rename(others), asked: rename(asked) });
    shares.forEach((share, i) => {
      expect(renamed[i]!).toBeCloseTo(share, 3);
    });
  });

  it('knows the look at the line only', () => {
    const looks = DEPTHS.map((depth) => asked.map((snap): SnapRecord => ({ ...snap, quarterback_depth: depth })));
    const sample = { own: offense('plain', 120), archive: archive.slice(0, 800) };
    const [gun, under] = looks.map((snaps) => passShares({ ...sample, asked: snaps, reading: 'plan' }));
    expect(gun).toEqual(under);
    const [seenGun, seenUnder] = looks.map((snaps) => passShares({ ...sample, asked: snaps }));
    expect(Math.min(...seenGun!.map((share, i) => share - seenUnder![i]!))).toBeGreaterThan(0.1);
  });

  it('a column nobody charted on the opponent has no say, whatever the archive holds of it', () => {
    const own = without(offense('plain', 120), 'quarterback_depth');
    const others = archive.slice(0, 800);
    const blank = without(asked, 'quarterback_depth');
    const shares = passShares({ own, archive: others, asked: blank });
    const never = passShares({ own, archive: without(others, 'quarterback_depth'), asked: blank });
    expect(meanGap(shares, never)).toBeLessThan(0.005);
  });

  it('a blank on the next game alone costs the column and no more', () => {
    const sample = { own: offense('plain', 120), archive };
    const shares = passShares({ ...sample, asked: without(asked, 'quarterback_depth') });
    const between = DEPTHS.map((depth) =>
      passShares({ ...sample, asked: asked.map((snap): SnapRecord => ({ ...snap, quarterback_depth: depth })) }),
    );
    shares.forEach((share, i) => {
      expect(share).toBeGreaterThan(between[1]![i]!);
      expect(share).toBeLessThan(between[0]![i]!);
    });
  });

  it('gives shares between 0 and 1 on any film', () => {
    const snap = fc.record<SnapRecord>(
      {
        down: fc.integer({ min: 1, max: 4 }),
        to_go: fc.integer({ min: 1, max: 20 }),
        ball_on: fc.integer({ min: 1, max: 99 }),
        quarter: fc.integer({ min: 1, max: 7 }),
        clock: fc.integer({ min: 0, max: 900 }),
        formation: fc.constantFrom('trey', 'doubles'),
        receivers: fc.constantFrom('2x2', '3x1', '3x2'),
        play_kind: fc.constantFrom('run', 'quick', 'pass'),
      },
      { requiredKeys: [] },
    ) as fc.Arbitrary<SnapRecord>;
    const film = fc.array(snap, { maxLength: 30 });
    const sample = fc.record({
      own: film,
      archive: film,
      asked: film,
      reading: fc.constantFrom<AdditiveReading>('plan', 'line'),
    });
    fc.assert(
      fc.property(sample, (films) => {
        expect(passShares(films).every((share) => share > 0 && share < 1)).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
