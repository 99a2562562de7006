import type { Difference } from '../../stats/difference.ts';
import type { Share } from '../../stats/share.ts';
import type { FeatureName, SeenValue } from '../forecast/tell-feature.ts';
import type { PathHabit } from '../menu/habits.ts';

/** How often a reader of our film guesses the coverage right, out of game. */
export interface GuessRate {
  readonly knows: 'nothing' | 'situation' | 'path' | 'path_and_situation';
  readonly share: Share;
  /** Interval over games; null under four games. */
  readonly byGame: { readonly low: number; readonly high: number } | null;
  /** Share more than one who knows nothing, with its interval over games; null for him, and under four games. */
  readonly gain: { readonly difference: number; readonly low: number; readonly high: number } | null;
  /** Mean log loss of his forecast, in bits a snap: how much he is still in doubt. */
  readonly doubtBits: number;
}

/** A split of our pressure rate. */
export interface PressureRate {
  readonly by: FeatureName;
  readonly value: string;
  readonly share: Share;
  /** Share that the situation alone would give on these snaps; null for down, distance and situation themselves. */
  readonly expected: number | null;
}

/** Whether our pressure rate goes with something seen before the snap. */
export interface PressureSplit {
  readonly by: FeatureName;
  readonly snaps: number;
  readonly values: number;
  readonly against: 'overall' | 'situation';
  /** Share of shuffled logs that differ as much; null with one value only. */
  readonly p: number | null;
  /** The same corrected over all splits (Benjamini-Hochberg). */
  readonly adjusted: number | null;
}

/** A path, turn, family or side, and the coverages behind it. */
export interface CoveragesBehind {
  readonly value: string;
  readonly snaps: number;
  readonly coverages: readonly { readonly coverage: string; readonly share: Share }[];
}

/** Something besides the path that may give the coverage away. */
export interface CoverageClue {
  readonly by: 'rotation' | 'family' | 'side';
  /** Pressures on which it was charted. */
  readonly snaps: number;
  readonly values: readonly CoveragesBehind[];
  /** Share of the doubt about the coverage it takes away, of wrong guesses, and what shuffled logs show. */
  readonly theilU: number | null;
  readonly lambda: number | null;
  readonly chance: number | null;
  readonly p: number | null;
  readonly adjusted: number | null;
}

/** How the snaps ended that they changed after our look, and those they left. */
export interface LookChanges {
  /** Snaps on which we showed early, and those of them on which a change was not charted. */
  readonly shown: number;
  readonly notCharted: number;
  readonly changed: { readonly success: Share; readonly explosive: Share };
  readonly left: { readonly success: Share; readonly explosive: Share };
  /** Success when changed less success when left. */
  readonly difference: Difference;
}

/** How often we show each path or family early. */
export interface EarlyShow {
  readonly by: 'path' | 'family';
  /** Corrected p of the split; null where showing was not charted. */
  readonly adjusted: number | null;
  readonly values: readonly { readonly value: string; readonly share: Share }[];
}

/** One of our habits beyond what the forecast of us expects there. */
export interface OwnTell {
  readonly asks: 'pressure' | 'coverage';
  readonly seen: readonly SeenValue[];
  /** `base` or `pressure`, or the coverage. */
  readonly follows: string;
  readonly share: Share;
  /** Share the forecast expected on those snaps, and the one an opponent would plan with. */
  readonly expected: number;
  readonly planWith: number;
  readonly adjusted: number;
  readonly games: readonly { readonly game: string; readonly count: number; readonly trials: number }[];
  readonly oneGameOnly: boolean;
}

/** What brings a reader of our film under the cap. */
export interface Remedy {
  /** The pairing cap, or the blind rate where that is higher: no swap brings a reader under a blind guess. */
  readonly cap: number;
  /** How often he is right now, out of game, and how often one who guesses blind is. */
  readonly guessRate: number;
  readonly blindRate: number;
  /** Whether the path tells him more than a blind guess and more than the cap allows. */
  readonly givesAway: boolean;
  /** Games the swaps are spread over. */
  readonly games: number;
  /** Snaps to play in another coverage over all these games. */
  readonly swaps: readonly {
    readonly situation: string;
    readonly path: string;
    readonly instead: string;
    readonly coverage: string;
    readonly snaps: number;
    readonly costPoints?: number;
  }[];
  /** Share of our last four games by then on which he is right. */
  readonly reaches: number;
  readonly costPoints: number;
  /** Pressures expected in these games. */
  readonly coming: number;
  /** Fewest games in which the cap can be met; 0 when it is met now, null when eight are too few. */
  readonly earliest: number | null;
  /** The fewest swaps by each number of games: needed, possible, and where they lead. */
  readonly byGames: readonly {
    readonly games: number;
    readonly needed: number;
    readonly done: number;
    readonly costPoints: number;
    readonly reaches: number;
    readonly coming: number;
  }[];
  /** Paths of which our film shows too little to be read. */
  readonly tooRare: readonly { readonly path: string; readonly snaps: number }[];
  /** Paths above the cap with no other coverage in the library. */
  readonly oneCoverage: readonly string[];
  /** What the menu has to keep to because of our film. */
  readonly habits: readonly PathHabit[];
  /** Whether a call library was given, and snaps from which on a path can be read. */
  readonly library: boolean;
  readonly readable: number;
}

/** How a reader who goes by our film fares against the week's menu. */
export interface ReaderOnPlan {
  readonly paths: readonly {
    readonly path: string;
    /** Whether our film shows the path often enough to be read. */
    readonly known: boolean;
    readonly guess: string;
    /** Share of the path's calls on which the guess is right. */
    readonly right: number;
    readonly calls: number;
  }[];
  readonly calls: number;
  /** Null when no pressure is planned. */
  readonly rate: number | null;
}

/** What our own film gives away. */
export interface OwnFilmChapter {
  readonly snaps: number;
  readonly games: number;
  /** Our snaps with five or more, of those with a charted family. */
  readonly pressures: Share;
  readonly pairings: readonly {
    readonly path: string;
    readonly snaps: number;
    readonly coverages: readonly { readonly coverage: string; readonly share: Share }[];
  }[];
  readonly clues: readonly CoverageClue[];
  readonly predictability: {
    readonly theilU: number | null;
    readonly lambda: number | null;
    /** Mean of Theil's U over shuffled logs, and the share of them at least as high. */
    readonly chance: number | null;
    readonly p: number | null;
    readonly informationBits: number | null;
  };
  readonly guesses: readonly GuessRate[];
  readonly pressureRates: readonly PressureRate[];
  readonly pressureSplits: readonly PressureSplit[];
  readonly runsTest: readonly {
    readonly situation: string;
    readonly p: number | null;
    readonly snaps: number;
    /** Corrected over the situations. */
    readonly adjusted: number | null;
  }[];
  readonly rotation: readonly { readonly path: string; readonly rotation: string; readonly share: Share }[];
  readonly shownEarly: Share;
  readonly changedAfterLook: Share;
  readonly lookChanges: LookChanges;
  readonly earlyShows: readonly EarlyShow[];
  readonly tells: readonly OwnTell[];
  /** Tests made in the search for tells. */
  readonly tellsLooked: number;
  readonly remedy: Remedy;
  /** Null until the week's menu is known, and without one. */
  readonly onPlan: ReaderOnPlan | null;
}
