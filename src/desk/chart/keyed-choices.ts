/** One choice and its key. */
export interface Choice {
  readonly key: string;
  readonly value: string;
  readonly label: string;
}

/** Words that read better with a letter of their own than with their underscores taken away. */
const LABELS: Readonly<Record<string, string>> = {
  quarterback_run: 'QB run',
  under_center: 'under center',
  man_two_deep: 'man, two deep',
  man_free: 'man free',
  run_pass: 'run or pass',
  penalty: 'flag, no play',
};

/**
 * Choices with one key each: the keys given, else the first letter that is free, so that most keys say their word.
 *
 * @param keys - one character for each word
 */
export function keyedChoices(words: readonly string[], keys?: string): readonly Choice[] {
  const taken = new Set<string>();
  return words.map((value, i) => {
    const key = keys?.[i] ?? freeKey(value, taken);
    taken.add(key);
    return { key, value, label: LABELS[value] ?? value.replaceAll('_', ' ') };
  });
}

const SPARE = 'zwyvjgubnmhplkoierdscatfqx123456789';

function freeKey(value: string, taken: ReadonlySet<string>): string {
  if (/^\d$/.test(value)) return value;
  const words = value.toLowerCase().split('_');
  const wanted = [...words.map((word) => word[0] ?? ''), ...value.toLowerCase(), ...SPARE];
  return wanted.find((key) => /[a-z0-9]/.test(key) && !taken.has(key)) ?? '';
}

/** Names of the staff's own, in the order in which they came up: digits first, then letters. */
export function namedChoices(names: readonly string[]): readonly Choice[] {
  return names.slice(0, NAME_KEYS.length).map((value, i) => ({ key: NAME_KEYS[i] ?? '', value, label: value }));
}

const NAME_KEYS = '123456789abcdefghijklmnopqrstuvwxyz';
