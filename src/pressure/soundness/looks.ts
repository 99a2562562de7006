import type { Call } from '../../game/call-library.ts';
import type { Fault } from './fault.ts';

/** Looks that every call must say what it does against. */
const LOOKS = ['trips', 'empty', 'two_backs', 'fast_motion', 'heavy'] as const;

/** Looks the call has no answer to. */
export function lookFaults({ adjust }: Call): Fault[] {
  return LOOKS.filter((look) => !isAnswer(adjust[look])).map((look) => ({
    failure: { kind: 'no_answer', look },
    excuse: look,
  }));
}

/** Words that leave the question open. */
const OPEN = /^(none|nothing|no answer|n\/a|na|tbd|to do|todo|later)$/i;

/** Whether something is written that a player could do; a space, a dash or a question mark is nothing. */
function isAnswer(words: string | undefined): boolean {
  const written = words?.trim() ?? '';
  return /\p{L}{2}/u.test(written) && !OPEN.test(written);
}
