import type { Call, GivenUp } from '../../game/call-library.ts';

/** One failed rule of soundness. */
export interface SoundnessFault {
  readonly call: string;
  readonly role: string | null;
  readonly rule: string;
  readonly words: string;
  /** A declared exception is shown but does not make the call unsound. */
  readonly declared: boolean;
}

/** What is wrong with a call, before it is known whether the call declares it. */
export interface Fault {
  readonly rule: string;
  /** Role id, where one man is at fault. */
  readonly role?: string;
  readonly words: string;
  /** The declaration that would excuse it; none when nothing does. */
  readonly excuse?: GivenUp;
}

/** A fault as the report shows it: declared when the call gives it up on purpose. */
export function soundnessFault(call: Call, { rule, role, words, excuse }: Fault): SoundnessFault {
  const declared = excuse !== undefined && call.given.includes(excuse);
  return { call: call.name, role: role ?? null, rule, words, declared };
}
