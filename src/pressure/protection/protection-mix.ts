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
    note: noteOf(charted, tally.passes, assumed) + situationNote(situations),
    passes: tally.passes,
    assumed,
    protectors: tally.protectors,
    slideToBack: tally.toBack,
    slideToField: tally.toField,
    slideToStrength: tally.toStrength,
    backJobs: tally.backJobs,
    pictures: picturesFrom('back', rates),
    seenFrom: 'back',
    ...(situations.length > 0 && { situations: situations.map(situationProtection) }),
  };
}

type Charted = ProtectionTally['charted'];

/** From this share of passes on a column counts as charted; the page says so below it. */
const NEARLY_ALL = 0.95;

/** Below this many passes counts are called thin. */
const THIN = 20;

function sourceOf({ protectors, slide, back }: Charted, passes: number): ProtectionMix['source'] {
  if (protectors + slide + back === 0) return 'assumed';
  return Math.min(protectors, slide, back) >= NEARLY_ALL * passes ? 'charted' : 'partly charted';
}

function noteOf(charted: Charted, passes: number, assumed: readonly string[]): string {
  const { protectors, slide, back } = charted;
  if (protectors + slide + back === 0) {
    return `No protection was charted on their ${passes} passes. ${takenElsewhere(assumed)}`;
  }
  const counts = `Of ${passes} passes, protectors were charted on ${protectors}, the slide on ${slide}, the back's job on ${back}.`;
  const thin = Math.min(protectors, slide, back) < THIN ? ' That is thin.' : '';
  return assumed.length === 0 ? `${counts}${thin}` : `${counts}${thin} ${takenElsewhere(assumed)}`;
}

function situationNote(situations: readonly SituationRates[]): string {
  return situations.length > 0 ? ' What was charted is forecast for each situation.' : '';
}

function takenElsewhere(assumed: readonly string[]): string {
  return `Not from their film: ${assumed.join(', ')}.`;
}
