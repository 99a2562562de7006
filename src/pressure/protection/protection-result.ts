import type { Answer } from '../../game/answers.ts';
import type { Lane } from '../../game/call-library.ts';
import type { Share } from '../../stats/share.ts';
import type { SoundnessFault } from '../soundness/fault.ts';

/** A protection the engine knows. */
export const PROTECTIONS = [
  'five_man_slide',
  'five_man_man',
  'half_slide_covered',
  'half_slide_uncovered',
  'full_slide',
  'man_dual_read',
  'scan',
  'seven_man',
  'max',
] as const;
/** One word of {@link PROTECTIONS}. */
export type Protection = (typeof PROTECTIONS)[number];

/** A protection with its slide seen from the call: toward the side we send from, or away; `none` for man. */
export interface ProtectionPicture {
  readonly protection: Protection;
  readonly slide: 'near' | 'far' | 'none';
  /** The back stays in, gets out (inside, or there is none), or releases wide to the near or the far side. */
  readonly back: 'in' | 'out' | 'wide_near' | 'wide_far';
}

/**
 * What one rusher meets: nobody (`free`), a neighbor or a back who gets there late (`late`), one blocker, or two.
 */
export interface RusherFate {
  readonly role: string;
  readonly lane: Lane;
  readonly fate: 'free' | 'late' | 'blocked' | 'doubled';
  /**
   * Seconds from snap to a passer seven yards deep. For a blocked or doubled man it is the time by which one in four of
   * them is home.
   */
  readonly arrival: number;
}

/** One call against one protection picture. */
export interface CallProtection {
  readonly call: string;
  readonly picture: ProtectionPicture;
  /** Share of their passes on which this picture is expected, 0 to 1. */
  readonly share: number;
  /** Rushers no blocker is left for; `soft` of them a neighbor with nobody to block may still slow down. */
  readonly free: number;
  readonly soft: number;
  /** Role ids of rushers who take the back instead of rushing. */
  readonly peeled: readonly string[];
  /** Role ids of men who join the rush late because a back stays in. */
  readonly added: readonly string[];
  readonly rushers: readonly RusherFate[];
}

/** Passes on which each was charted. */
export interface ChartedPasses {
  readonly protectors: number;
  readonly slide: number;
  readonly back: number;
}

/** A piece of the protection that their film does not have, and where it is taken from. */
export interface AssumedPiece {
  readonly piece: 'protectors' | 'slide' | 'slide_to_back' | 'back_job';
  readonly from: 'other_opponents' | 'assumed';
}

/** How they protect, charted or assumed. */
export interface ProtectionMix {
  readonly source: 'charted' | 'assumed' | 'partly_charted';
  /** Passes on film: throws, sacks, scrambles; the counts below are of those on which the column was charted. */
  readonly passes: number;
  readonly charted: ChartedPasses;
  /** What nobody charted, and whether other opponents or an assumption stand for it. */
  readonly assumed: readonly AssumedPiece[];
  readonly protectors: readonly { readonly count: number; readonly share: Share }[];
  readonly slideToBack: Share;
  readonly slideToField: Share;
  readonly slideToStrength: Share;
  readonly backJobs: readonly { readonly job: string; readonly share: Share }[];
  /** The pictures a call sees that is sent from the back's side; shares sum to 1. */
  readonly pictures: readonly { readonly picture: ProtectionPicture; readonly share: number }[];
  /** The mix of each situation, where something was charted; without it the one mix stands for every situation. */
  readonly situations?: readonly SituationProtection[];
}

/** How they are expected to protect in one situation; the pictures are seen as in the mix over all passes. */
export interface SituationProtection {
  readonly situation: string;
  readonly charted: ChartedPasses;
  /** Five, six, seven, eight protectors; sums to 1. */
  readonly protectors: readonly number[];
  /** Share of slides that go to the back's side. */
  readonly slideToBack: number;
  /** Share of passes on which the back releases wide. */
  readonly backWide: number;
}

/** P(a rusher is home before the ball is out) of a call, by answer. */
export interface RaceLine {
  readonly call: string;
  readonly answer: Answer;
  /** Probability, 0 to 1, with its 80% interval over what is not known of the release. */
  readonly home: number;
  readonly low: number;
  readonly high: number;
  /** The same call against an average opponent's release and protections. */
  readonly typical: number;
  /** Charted release times behind it; 0 means the published curve alone. */
  readonly timedThrows: number;
  /** First arrival in seconds against the expected mix of protections (median). */
  readonly firstArrival: number;
  /** `home` in each situation, where their protection was charted and forecast by situation. */
  readonly bySituation?: readonly { readonly situation: string; readonly home: number }[];
}

/** The opponent's release as a curve, for the chart. */
export interface ReleaseCurve {
  readonly answer: Answer;
  readonly timedThrows: number;
  /** Sacks on this answer: they carry no time, and count as balls held past the usual sack. */
  readonly sacks: number;
  /** Seconds from snap to release; half the balls are out by then. `low` and `high` bound it with 80% probability. */
  readonly median: number;
  readonly low: number;
  readonly high: number;
  /** Mean and spread of the logarithm of the release time in seconds. */
  readonly mu: number;
  readonly sigma: number;
  /** Timed throws of other opponents behind it. */
  readonly othersTimed: number;
}

/** Chapter of the report on protection, race and soundness. */
export interface ProtectionChapter {
  readonly mix: ProtectionMix;
  readonly calls: readonly CallProtection[];
  readonly race: readonly RaceLine[];
  readonly release: readonly ReleaseCurve[];
  readonly soundness: readonly SoundnessFault[];
}
