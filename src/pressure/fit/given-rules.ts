import type { Call, GivenUp } from '../../game/call-library.ts';
import type { FitRule, FitTrigger } from '../../game/fit-rules.ts';

/** What a snap is that hits what a call gives up; a flat or an edge is one side of two, so it is left to the call. */
const HOLES: Readonly<Partial<Record<GivenUp, readonly FitTrigger[]>>> = {
  deep_middle: [{ thrown_to: ['deep_middle'] }],
  quarterback_run: [{ answer: ['quarterback_run'] }, { scramble: ['yes'] }],
  back: [{ back: ['releases_wide', 'releases_inside'] }],
  trips: [{ receivers: ['trips'] }],
  empty: [{ receivers: ['empty'] }],
  two_backs: [{ backs: ['two_or_more'] }],
  fast_motion: [{ motion: ['fast'] }],
  heavy: [{ tight_ends: ['two_or_more'] }],
};

/** Rules of one call alone: it is wrong on the snaps that hit what it gives up on purpose. */
export function givenRules({ name, family, given }: Call): readonly FitRule[] {
  return given.flatMap((hole) => holeRules(hole, name, [family]));
}

/** What says that a snap hits a hole; nothing where no chart can tell. */
export function holeRules(hole: GivenUp, call: string, families: FitRule['families']): readonly FitRule[] {
  return (HOLES[hole] ?? []).map((when, i) => ({
    id: `given_${hole}_${i}`,
    families,
    when,
    says: 'wrong' as const,
    stands: false,
    source: `${call} gives it up on purpose`,
  }));
}
