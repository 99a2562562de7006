import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import type { Look } from './draw-look.ts';
import type { OffenseStyle } from './offense-style.ts';
import { pick } from './pick.ts';

/** The look of a pass play and the share of such plays on which the back stays in. */
export interface PassSpot {
  readonly look: Look;
  readonly backStays: number;
}

/** Draws who protects, where the line slides and what the back does on a pass. */
export function drawProtection(style: OffenseStyle, { look, backStays }: PassSpot, random: Random): SnapRecord {
  if (look.backSpot === 'none')
    return { protectors: 5, slide: coinSide(random), back_action: 'none', backs_released: 0 };
  const stays = random.uniform() < backStays;
  const secondStays = stays && look.backSpot === 'both' && random.uniform() < 0.5;
  return {
    protectors: 5 + Number(stays) + Number(secondStays),
    slide: drawSlide(style, look, random),
    back_action: stays
      ? pick(random, [
          ['blocks', 0.8],
          ['check_releases', 0.2],
        ])
      : drawRelease(style, random),
    backs_released: stays ? 0 : 1,
  };
}

function drawRelease(style: OffenseStyle, random: Random): string {
  return random.uniform() < style.releasesWide + 0.2 ? 'releases_wide' : 'releases_inside';
}

function drawSlide(style: OffenseStyle, look: Look, random: Random): string {
  if (look.backSpot === 'behind' || look.backSpot === 'both') return coinSide(random);
  const backRight = (look.backSpot === 'strong') === (look.strength === 'right');
  const away = random.uniform() < style.slideAwayFromBack;
  return backRight === away ? 'left' : 'right';
}

function coinSide(random: Random): string {
  return pick(random, [
    ['left', 0.5],
    ['right', 0.5],
  ]);
}
