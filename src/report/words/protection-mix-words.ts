import { THIN_SNAPS } from '../../game/thin-snaps.ts';
import type { AssumedPiece, ProtectionMix } from '../../pressure/protection/protection-result.ts';

/** What of their protection was charted, how thin that is, and what is not from their film. */
export function protectionMixWords({ charted, passes, assumed, situations }: ProtectionMix): string {
  const { protectors, slide, back } = charted;
  const none = protectors + slide + back === 0;
  const counts = none
    ? `No protection was charted on their ${passes} passes.`
    : `Of ${passes} passes, protectors were charted on ${protectors}, the slide on ${slide}, the back's job on ${back}.`;
  const thin = !none && Math.min(protectors, slide, back) < THIN_SNAPS ? ' That is thin.' : '';
  const elsewhere = assumed.length === 0 ? '' : ` Not from their film: ${assumed.map(pieceWords).join(', ')}.`;
  const bySituation = situations === undefined ? '' : ' What was charted is forecast for each situation.';
  return `${counts}${thin}${elsewhere}${bySituation}`;
}

const PIECES: Readonly<Record<AssumedPiece['piece'], string>> = {
  protectors: 'how many protect',
  slide: 'how the line turns',
  slide_to_back: 'whether it turns to the back',
  back_job: "the back's job",
};

function pieceWords({ piece, from }: AssumedPiece): string {
  return `${PIECES[piece]} (${from === 'assumed' ? 'assumed' : 'as other opponents do'})`;
}
