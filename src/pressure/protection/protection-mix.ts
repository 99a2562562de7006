import { picturesFrom } from './protection-pictures.ts';
import type { SourcedRates } from './protection-rates.ts';
import type { ProtectionMix } from './protection-result.ts';
import type { ProtectionTally } from './protection-tally.ts';
import { type SituationRates, situationProtection } from './situation-protection.ts';

/** The mix of pictures a week is planned against, with the counts behind it and what had to be assumed. */
export function protectionMix(
  tally: ProtectionTally,
  { rates, assumed }: SourcedRates,
  situations: readonly SituationRates[] = [],
): ProtectionMix {
  const { charted } = tally;
  return {
    source: sourceOf(charted, tally.passes),
    passes: tally.passes,
    charted,
    assumed,
    protectors: tally.protectors,
    slideToBack: tally.toBack,
    slideToField: tally.toField,
    slideToStrength: tally.toStrength,
    backJobs: tally.backJobs,
    pictures: picturesFrom('back', rates),
    ...(situations.length > 0 && { situations: situations.map(situationProtection) }),
  };
}

type Charted = ProtectionTally['charted'];

/** From this share of passes on a column counts as charted. */
const NEARLY_ALL = 0.95;

function sourceOf({ protectors, slide, back }: Charted, passes: number): ProtectionMix['source'] {
  if (protectors + slide + back === 0) return 'assumed';
  return Math.min(protectors, slide, back) >= NEARLY_ALL * passes ? 'charted' : 'partly_charted';
}
