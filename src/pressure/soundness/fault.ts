import type { Call, Demand, GivenUp, Lane } from '../../game/call-library.ts';
import type { CoverJob, Receiver } from '../../game/cover-jobs.ts';
import type { Family, MenKind } from '../../game/families.ts';

/** A side of the field seen from the call: the one it is sent from, or the other. */
export type Side = 'near' | 'far';

/**
 * What a call leaves open. `man` and `men` are the titles the staff gives its roles; of a role that is not one of our
 * eleven it is the id.
 */
export type Failure =
  | { readonly kind: 'no_job' | 'stranger' | 'late_lineman' | 'deep_middle_left'; readonly man: string }
  | { readonly kind: 'several_jobs'; readonly man: string; readonly jobs: number }
  | { readonly kind: 'cannot'; readonly man: string; readonly demand: Demand }
  | { readonly kind: 'receiver_open'; readonly receiver: Exclude<Receiver, 'back'> }
  | { readonly kind: 'back_open' | 'deep_middle_open' | 'quarterback_open' }
  | { readonly kind: 'no_second_owner'; readonly man: string; readonly job: CoverJob }
  | { readonly kind: 'crowded_lane'; readonly men: readonly string[]; readonly lane: Lane; readonly loops: number }
  | {
      readonly kind: 'back_open_to' | 'edge_open' | 'inside_open' | 'deep_half_open' | 'flat_open';
      readonly side: Side;
    }
  | { readonly kind: 'edge_left_by_peel'; readonly man: string; readonly side: Side }
  | { readonly kind: 'peel_from_inside'; readonly man: string; readonly lane: Lane }
  | { readonly kind: 'two_peel'; readonly men: readonly string[]; readonly side: Side }
  | { readonly kind: 'same_place'; readonly men: readonly string[]; readonly job: CoverJob }
  | { readonly kind: 'no_answer'; readonly look: GivenUp & keyof Call['adjust'] }
  | {
      readonly kind: 'not_the_family';
      readonly family: Family;
      readonly men: MenKind;
      readonly found: number;
      readonly wanted: number;
    };

/** One failed rule of soundness. */
export interface SoundnessFault {
  readonly call: string;
  /** Role id, where one man is at fault. */
  readonly role: string | null;
  readonly failure: Failure;
  /** A declared exception is shown but does not make the call unsound. */
  readonly declared: boolean;
}

/** What is wrong with a call, before it is known whether the call declares it. */
export interface Fault {
  readonly failure: Failure;
  /** Role id, where one man is at fault. */
  readonly role?: string;
  /** The declaration that would excuse it; none when nothing does. */
  readonly excuse?: GivenUp;
}

/** A fault as the report shows it: declared when the call gives it up on purpose. */
export function soundnessFault(call: Call, { failure, role, excuse }: Fault): SoundnessFault {
  const declared = excuse !== undefined && call.given.includes(excuse);
  return { call: call.name, role: role ?? null, failure, declared };
}
