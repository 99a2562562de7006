import type { Call } from '../../game/call-library.ts';
import type { Fault } from './fault.ts';

/** Looks that every call must say what it does against. */
const LOOKS = ['trips', 'empty', 'two_backs', 'fast_motion', 'heavy'] as const;

/** Looks the call has no answer to. */
export function lookFaults({ adjust }: Call): Fault[] {
  return LOOKS.filter((look) => adjust[look] === undefined).map((look) => {
    const rule = look.replace('_', ' ');
    return { rule, words: `no answer to ${rule} is written`, excuse: look };
  });
}
