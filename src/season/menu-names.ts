import type { CallLibrary } from '../game/call-library.ts';
import { freeWordKey } from '../game/free-word.ts';
import type { WeekSettings } from '../game/week-settings.ts';
import { nearestWord } from '../ingest/nearest-word.ts';
import type { SoundnessFault } from '../pressure/soundness/fault.ts';
import { failureWords } from '../report/words/soundness-words.ts';

/** What the names under must and ban of week.yaml are held to. */
export interface NamedCalls {
  readonly menu: WeekSettings['menu'];
  readonly library: CallLibrary | null;
  readonly soundness: readonly SoundnessFault[];
}

/**
 * Faults of the calls that week.yaml says must be carried or may not be: names that defense.yaml does not have, calls that
 * must be carried and are unsound, and any name where there is no defense.yaml. Each with what to type.
 */
export function menuNameProblems({ menu, library, soundness }: NamedCalls): readonly string[] {
  const given = [
    ...menu.must.map((name) => ['must', name] as const),
    ...menu.ban.map((name) => ['ban', name] as const),
  ];
  if (library === null)
    return given.map(([list, name]) => `${place(list, name)} there is no defense.yaml that could have it.`);
  const names = library.calls.map((call) => call.name);
  return given.flatMap(([list, name]) => {
    const call = names.find((known) => freeWordKey(known) === freeWordKey(name));
    if (call === undefined) return [`${place(list, name)} is no call of defense.yaml.${meantWords(name, names)}`];
    const faults = soundness.filter((fault) => fault.call === call && !fault.declared);
    if (list === 'ban' || faults.length === 0) return [];
    const why = faults.map(({ failure }) => failureWords(failure)).join('; ');
    return [`${place(list, name)} is unsound and cannot be carried: ${why}`];
  });
}

function place(list: 'must' | 'ban', name: string): string {
  return `week.yaml, menu.${list}: "${name}"`;
}

function meantWords(name: string, names: readonly string[]): string {
  const near = nearestWord(name, names);
  return near === undefined ? ` Its calls are ${names.join(', ')}.` : ` Did you mean "${near}"?`;
}
