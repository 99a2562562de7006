import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SENT_FROM } from '../../../src/game/call-library.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { protectionMix } from '../../../src/pressure/protection/protection-mix.ts';
import { picturesFor, picturesFrom } from '../../../src/pressure/protection/protection-pictures.ts';
import { ASSUMED_RATES, averageRates, protectionRates } from '../../../src/pressure/protection/protection-rates.ts';
import { tallyProtection } from '../../../src/pressure/protection/protection-tally.ts';
import { protectionMixWords } from '../../../src/report/words/protection-mix-words.ts';
import { demoCall } from '../demo-defense.ts';

const many = (count: number, snap: SnapRecord) => Array.from({ length: count }, () => snap);
const PASS: SnapRecord = { play_kind: 'dropback', result: 'complete' };
const SIX_AWAY: SnapRecord = {
  ...PASS,
  protectors: 6,
  slide: 'left',
  strength: 'left',
  back_spot: 'weak',
  back_action: 'blocks',
  hash: 'left',
};
const mixOf = (snaps: SnapRecord[], archive: SnapRecord[] | null = null) => {
  const tally = tallyProtection(filmFromRecords(snaps));
  const others = archive && tallyProtection(filmFromRecords(archive));
  const sourced = protectionRates({ tally, archive: others, forecast: null });
  return { tally, ...sourced, mix: protectionMix(tally, sourced) };
};

describe('tallyProtection', () => {
  it('counts passes only, each column over the passes on which it was charted', () => {
    const { tally } = mixOf([
      ...many(6, SIX_AWAY),
      ...many(4, PASS),
      ...many(5, { ...SIX_AWAY, play_kind: 'run', result: 'rush' }),
    ]);
    expect(tally.passes).toBe(10);
    expect(tally.charted).toEqual({ protectors: 6, slide: 6, back: 6 });
    expect(tally.protectors.find(({ count }) => count === 6)?.share).toMatchObject({ count: 6, trials: 6 });
    expect(tally.toBack).toMatchObject({ count: 0, trials: 6 });
    expect(tally.toStrength).toMatchObject({ count: 6, trials: 6 });
  });

  it('takes eight and more together, and five and fewer', () => {
    const { tally } = mixOf([
      { ...PASS, protectors: 9 },
      { ...PASS, protectors: 4 },
    ]);
    expect(tally.protectors.map(({ share }) => share.count)).toEqual([1, 0, 0, 1]);
  });

  it('tells half, full and man turns apart', () => {
    const { tally } = mixOf([
      { ...PASS, slide: 'left' },
      { ...PASS, slide: 'full_left' },
      { ...PASS, slide: 'man' },
    ]);
    expect(tally.turns.map(({ share }) => share.count)).toEqual([1, 1, 1]);
  });
});

describe('protectionRates', () => {
  it('is the assumption when nothing was charted, and lists every piece as assumed', () => {
    const { rates, assumed } = mixOf(many(30, PASS));
    expect(rates).toEqual(ASSUMED_RATES);
    expect(assumed).toHaveLength(4);
    expect(assumed.every(({ from }) => from === 'assumed')).toBe(true);
  });

  it('takes other opponents where the archive has at least twenty, and says so', () => {
    const { rates, assumed } = mixOf(many(30, PASS), many(25, { ...SIX_AWAY, protectors: 7 }));
    expect(rates.protectors).toEqual([0, 0, 1, 0]);
    expect(assumed[0]).toEqual({ piece: 'protectors', from: 'other_opponents' });
    expect(mixOf(many(30, PASS), many(19, { ...SIX_AWAY, protectors: 7 })).rates.protectors).toEqual(
      ASSUMED_RATES.protectors,
    );
  });

  it('moves toward their own film as more is charted', () => {
    const six = (count: number) => mixOf(many(count, SIX_AWAY)).rates.protectors[1] ?? 0;
    expect(six(5)).toBeGreaterThan(ASSUMED_RATES.protectors[1] ?? 1);
    expect(six(50)).toBeGreaterThan(six(5));
    expect(mixOf(many(50, SIX_AWAY)).rates.toBack).toBeLessThan(0.1);
  });

  it('reads five protectors off the back where nobody counted protectors', () => {
    const { rates } = mixOf([
      ...many(20, { ...PASS, back_action: 'releases_wide' }),
      ...many(20, { ...PASS, back_action: 'blocks' }),
    ]);
    expect(rates.protectors[0]).toBeCloseTo((20 + 10 * 0.2) / 50, 12);
    expect(rates.wide).toBeCloseTo((20 + 10 * 0.5) / 30, 12);
    expect(rates.protectors.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});

describe('protectionMix', () => {
  it('is called assumed, charted or partly charted by the passes on which it was charted', () => {
    expect(mixOf(many(30, PASS)).mix.source).toBe('assumed');
    expect(mixOf(many(30, SIX_AWAY)).mix.source).toBe('charted');
    expect(mixOf([...many(30, SIX_AWAY), ...many(5, PASS)]).mix.source).toBe('partly_charted');
    const { back_action: _, ...withoutBack } = SIX_AWAY;
    expect(mixOf(many(30, withoutBack)).mix.source).toBe('partly_charted');
  });

  it('says the counts, calls few of them thin, and names what is not from their film', () => {
    expect(protectionMixWords(mixOf(many(12, SIX_AWAY)).mix)).toBe(
      "Of 12 passes, protectors were charted on 12, the slide on 12, the back's job on 12. That is thin.",
    );
    expect(protectionMixWords(mixOf(many(30, PASS)).mix)).toContain(
      'No protection was charted on their 30 passes. Not from their film: how many protect (assumed)',
    );
    expect(protectionMixWords(mixOf(many(30, { ...PASS, protectors: 6 })).mix)).toContain("the back's job (assumed)");
  });

  it('has a null estimate where nothing was charted', () => {
    const { mix } = mixOf([]);
    expect(mix.passes).toBe(0);
    expect(mix.slideToBack.estimate).toBeNull();
    expect(mix.pictures.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});

const rates = fc
  .record({
    protectors: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
    turns: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
    toBack: fc.double({ min: 0, max: 1, noNaN: true }),
    toField: fc.double({ min: 0, max: 1, noNaN: true }),
    toStrength: fc.double({ min: 0, max: 1, noNaN: true }),
    wide: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map((found) => {
    const scaled = (shares: number[]) => shares.map((share) => share / shares.reduce((a, b) => a + b, 0));
    return { ...found, protectors: scaled(found.protectors), turns: scaled(found.turns) };
  });

describe('picturesFrom', () => {
  it('gives shares that sum to 1, protectors as given, and each picture once', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SENT_FROM), rates, (sentFrom, found) => {
        const pictures = picturesFrom(sentFrom, found);
        expect(pictures.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        const fives = pictures.filter(({ picture }) => picture.protection.startsWith('five'));
        expect(fives.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(found.protectors[0] ?? 0, 9);
        const keys = pictures.map(({ picture }) => JSON.stringify(picture));
        expect(new Set(keys).size).toBe(keys.length);
      }),
    );
  });

  it('sees the slide near as often as the habit of its side says', () => {
    const near = (sentFrom: (typeof SENT_FROM)[number], more: Partial<typeof ASSUMED_RATES>) =>
      picturesFrom(sentFrom, { ...ASSUMED_RATES, turns: [1, 0, 0], ...more })
        .filter(({ picture }) => picture.slide === 'near')
        .reduce((sum, { share }) => sum + share, 0);
    expect(near('back', { toBack: 0.17 })).toBeCloseTo(0.17, 12);
    expect(near('away_from_back', { toBack: 0.17 })).toBeCloseTo(0.83, 12);
    expect(near('field', { toField: 0.8 })).toBeCloseTo(0.8, 12);
    expect(near('boundary', { toField: 0.8 })).toBeCloseTo(0.2, 12);
    expect(near('weak', { toStrength: 0.8 })).toBeCloseTo(0.2, 12);
    expect(near('either', {})).toBeCloseTo(0.5, 12);
  });

  it('a back who is out goes wide to the side he stands on', () => {
    const wide = picturesFrom('back', { ...ASSUMED_RATES, wide: 1 }).filter(({ picture }) =>
      picture.back.startsWith('wide'),
    );
    expect(wide.length).toBeGreaterThan(0);
    expect(wide.every(({ picture }) => picture.back === 'wide_near')).toBe(true);
  });

  it('a call without a peel man does not tell wide from out', () => {
    expect(
      picturesFor(demoCall('Latch Roof'), ASSUMED_RATES).some(({ picture }) => picture.back.startsWith('wide')),
    ).toBe(false);
    expect(
      picturesFor(demoCall('Anvil Peel'), ASSUMED_RATES).some(({ picture }) => picture.back.startsWith('wide')),
    ).toBe(true);
  });
});

describe('averageRates', () => {
  it('is the assumption without an archive', () => {
    expect(averageRates(null)).toBe(ASSUMED_RATES);
  });
});
