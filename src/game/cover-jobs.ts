/** Receivers by number from the outside, two a side and the back; a call drawn for trips has a third on one side. */
export type Receiver = 'near_1' | 'near_2' | 'near_3' | 'far_1' | 'far_2' | 'far_3' | 'back';

/** What a cover job asks of a man, and what it holds. */
interface CoverJobFacts {
  readonly demand: 'drop' | 'man' | 'deep' | 'spy';
  /** The receivers it may be the first owner of. */
  readonly owns: readonly Receiver[];
  /** The flat it holds, itself or with the man in it. */
  readonly flat?: 'near' | 'far';
  /** Holds the deep middle alone. */
  readonly deepMiddle?: true;
  /** Plays hot: eyes on the quarterback, breaks on the throw. */
  readonly hot?: true;
  /** Two men may have it at once: a spy each side, a man on each end. */
  readonly shared?: true;
}

/**
 * What a man who does not rush (or a rusher after his peel) is responsible for, deep to short; sides are near and far as
 * for lanes. Common practice, no source.
 */
export const COVER_JOB_TABLE = {
  deep_third_near: { demand: 'deep', owns: ['near_1'] },
  deep_third_middle: { demand: 'deep', owns: [], deepMiddle: true },
  deep_third_far: { demand: 'deep', owns: ['far_1'] },
  deep_half_near: { demand: 'deep', owns: ['near_1'] },
  deep_half_far: { demand: 'deep', owns: ['far_1'] },
  deep_middle: { demand: 'deep', owns: [], deepMiddle: true },
  seam_near: { demand: 'drop', owns: ['near_2'] },
  seam_far: { demand: 'drop', owns: ['far_2'] },
  hook_near: { demand: 'drop', owns: ['near_2', 'back'] },
  hook_middle: { demand: 'drop', owns: ['back'] },
  hook_far: { demand: 'drop', owns: ['far_2', 'back'] },
  flat_near: { demand: 'drop', owns: ['near_1', 'near_2', 'back'], flat: 'near' },
  flat_far: { demand: 'drop', owns: ['far_1', 'far_2', 'back'], flat: 'far' },
  hot_near: { demand: 'drop', owns: ['near_2'], hot: true },
  hot_far: { demand: 'drop', owns: ['far_2'], hot: true },
  man_1_near: { demand: 'man', owns: ['near_1'] },
  man_2_near: { demand: 'man', owns: ['near_2'], flat: 'near' },
  man_3_near: { demand: 'man', owns: ['near_3'], flat: 'near' },
  man_1_far: { demand: 'man', owns: ['far_1'] },
  man_2_far: { demand: 'man', owns: ['far_2'], flat: 'far' },
  man_3_far: { demand: 'man', owns: ['far_3'], flat: 'far' },
  man_back: { demand: 'man', owns: ['back'] },
  man_end: { demand: 'man', owns: ['near_2', 'far_2'], shared: true },
  spy: { demand: 'spy', owns: [], shared: true },
  robber: { demand: 'drop', owns: ['back'] },
} as const satisfies Readonly<Record<string, CoverJobFacts>>;
/** One word of {@link COVER_JOBS}. */
export type CoverJob = keyof typeof COVER_JOB_TABLE;

/** The words of {@link COVER_JOB_TABLE} in its order. */
export const COVER_JOBS = Object.keys(COVER_JOB_TABLE) as readonly CoverJob[];

/** What a cover job asks and holds; the same table with its general type. */
export function coverJobFacts(job: CoverJob): CoverJobFacts {
  return COVER_JOB_TABLE[job];
}
