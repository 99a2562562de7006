import type { Call } from '../../game/call-library.ts';
import type { ProtectionRates } from './protection-rates.ts';
import type { ProtectionPicture } from './protection-result.ts';

/** A picture and how often it is expected on their passes. */
export interface ExpectedPicture {
  readonly picture: ProtectionPicture;
  /** 0 to 1. */
  readonly share: number;
}

/**
 * The pictures a call sees when it is sent from a side; shares sum to 1, the likeliest first. Whether the slide comes
 * near depends on the habit that side is tied to; the back is near when the call is sent from him, and otherwise stands
 * where his habit with the slide puts him. Five protect when the back is out, six and more when he is in. A slide to the
 * back makes him cross (scan). Tight ends who stay count as sixth and seventh only when the back stays too.
 */
export function picturesFrom(sentFrom: Call['sent_from'], rates: ProtectionRates): readonly ExpectedPicture[] {
  const merged = new Map<string, { readonly picture: ProtectionPicture; share: number }>();
  for (const sides of sideChances(sentFrom, rates)) {
    for (const { picture, share } of picturesOn(sides, rates)) {
      const key = `${picture.protection} ${picture.slide} ${picture.back}`;
      const found = merged.get(key) ?? { picture, share: 0 };
      found.share += share * sides.share;
      merged.set(key, found);
    }
  }
  return [...merged.values()].filter(({ share }) => share > 0).sort((a, b) => b.share - a.share);
}

/**
 * The pictures a call tells apart: without a peel man it is the same to the rush whether a back who is out went wide.
 */
export function picturesFor(call: Call, rates: ProtectionRates): readonly ExpectedPicture[] {
  const peels = call.rush.some((rusher) => rusher.peels);
  return picturesFrom(call.sent_from, peels ? rates : { ...rates, wide: 0 });
}

interface Sides {
  readonly slide: 'near' | 'far';
  readonly back: 'near' | 'far';
  readonly share: number;
}

function sideChances(sentFrom: Call['sent_from'], rates: ProtectionRates): Sides[] {
  const near = slideNear(sentFrom, rates);
  const sides = (['near', 'far'] as const).flatMap((slide) =>
    (['near', 'far'] as const).map((back): Sides => {
      const slideShare = slide === 'near' ? near : 1 - near;
      const together = slide === back ? rates.toBack : 1 - rates.toBack;
      return { slide, back, share: slideShare * together };
    }),
  );
  // Seen from the back or opposite him, his side is given and only the slide is open.
  if (sentFrom !== 'back' && sentFrom !== 'away_from_back') return sides;
  const back = sentFrom === 'back' ? 'near' : 'far';
  return (['near', 'far'] as const).map((slide) => ({
    slide,
    back,
    share: slide === back ? rates.toBack : 1 - rates.toBack,
  }));
}

function slideNear(sentFrom: Call['sent_from'], { toBack, toField, toStrength }: ProtectionRates): number {
  switch (sentFrom) {
    case 'field':
      return toField;
    case 'boundary':
      return 1 - toField;
    case 'strength':
      return toStrength;
    case 'weak':
      return 1 - toStrength;
    case 'back':
      return toBack;
    case 'away_from_back':
      return 1 - toBack;
    case 'either':
      return 0.5;
    default:
      return sentFrom satisfies never;
  }
}

function picturesOn({ slide, back }: Sides, { protectors, turns, wide }: ProtectionRates): ExpectedPicture[] {
  const [five = 0, six = 0, seven = 0, eight = 0] = protectors;
  const [half = 0, full = 0, man = 0] = turns;
  const turned = half + full;
  const wideBack = back === 'near' ? 'wide_near' : 'wide_far';
  const picture = (protection: ProtectionPicture['protection'], side: ProtectionPicture['slide']) =>
    ({ protection, slide: side, back: 'in' }) as const;
  const fives = [
    { picture: picture('five_man_slide', slide), share: five * turned },
    { picture: picture('five_man_man', 'none'), share: five * man },
  ];
  return [
    ...fives.map((one) => ({ picture: { ...one.picture, back: 'out' as const }, share: one.share * (1 - wide) })),
    ...fives.map((one) => ({ picture: { ...one.picture, back: wideBack } as const, share: one.share * wide })),
    { picture: picture(slide === back ? 'scan' : 'half_slide_covered', slide), share: six * half },
    { picture: picture('full_slide', slide), share: six * full },
    { picture: picture('man_dual_read', 'none'), share: six * man },
    { picture: picture('seven_man', slide), share: seven * turned },
    { picture: picture('seven_man', 'none'), share: seven * man },
    { picture: picture('max', slide), share: eight * turned },
    { picture: picture('max', 'none'), share: eight * man },
  ];
}
