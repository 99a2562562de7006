import type { Share } from '../../stats/share.ts';

/** How often a reader of our film guesses the coverage right, out of game. */
export interface GuessRate {
  readonly knows: 'nothing' | 'the situation' | 'the path' | 'the path and the situation';
  readonly share: Share;
  /** Interval over games; null under four games. */
  readonly byGame: { readonly low: number; readonly high: number } | null;
}

/** A split of our pressure rate. */
export interface PressureRate {
  readonly by: string;
  readonly value: string;
  readonly share: Share;
}

/** What our own film gives away. */
export interface OwnFilmChapter {
  readonly snaps: number;
  readonly games: number;
  readonly pairings: readonly {
    readonly path: string;
    readonly snaps: number;
    readonly coverages: readonly { readonly coverage: string; readonly share: Share }[];
  }[];
  readonly predictability: {
    readonly theilU: number | null;
    readonly lambda: number | null;
    /** Mean of Theil's U over shuffled logs, and the share of them at least as high. */
    readonly chance: number | null;
    readonly p: number | null;
    readonly informationBits: number | null;
    readonly words: string;
  };
  readonly guesses: readonly GuessRate[];
  readonly pressureRates: readonly PressureRate[];
  readonly runsTest: readonly { readonly situation: string; readonly p: number | null; readonly snaps: number }[];
  readonly rotation: readonly { readonly path: string; readonly rotation: string; readonly share: Share }[];
  readonly shownEarly: Share;
  readonly changedAfterLook: Share;
  readonly tells: readonly {
    readonly description: string;
    readonly follows: string;
    readonly share: Share;
    readonly adjusted: number;
  }[];
  readonly remedy: {
    readonly cap: number;
    readonly guessRate: number;
    readonly swaps: readonly {
      readonly situation: string;
      readonly path: string;
      readonly instead: string;
      readonly coverage: string;
      readonly snaps: number;
    }[];
    readonly reaches: number;
    readonly costPoints: number;
    readonly words: string;
  };
}
