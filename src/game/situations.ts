/** What a down-and-distance situation is called, and which one it joins where it is too rare for a mix of its own. */
interface SituationFacts {
  readonly label: string;
  /** The same down with the next distance, fourth down to third; null where there is none. */
  readonly joins: string | null;
}

/** The down-and-distance situations, in the order of the pages; cutoffs for short and medium are the staff's. */
export const SITUATION_TABLE = {
  first_ten: { label: '1st and 10', joins: null },
  first_long: { label: '1st and 11 or more', joins: 'first_ten' },
  first_short: { label: '1st and less than 10', joins: 'first_ten' },
  first_goal: { label: '1st and goal', joins: null },
  second_short: { label: '2nd and short', joins: 'second_medium' },
  second_medium: { label: '2nd and medium', joins: 'second_long' },
  second_long: { label: '2nd and long', joins: null },
  third_short: { label: '3rd and short', joins: 'third_medium' },
  third_medium: { label: '3rd and medium', joins: 'third_long' },
  third_long: { label: '3rd and long', joins: null },
  fourth_short: { label: '4th and short', joins: 'third_short' },
  fourth_medium: { label: '4th and medium', joins: 'third_medium' },
  fourth_long: { label: '4th and long', joins: 'third_long' },
} as const satisfies Readonly<Record<string, SituationFacts>>;
/** One word of {@link SITUATION_TABLE}. */
export type SituationId = keyof typeof SITUATION_TABLE;

/** The words of {@link SITUATION_TABLE} in its order. */
export const SITUATION_IDS = Object.keys(SITUATION_TABLE) as readonly SituationId[];

/** The situations with what they are called. */
export const SITUATIONS = SITUATION_IDS.map((id) => ({ id, label: SITUATION_TABLE[id].label as string }));

/** Whether a word is one of the situations; all snaps together are none. */
export function isSituation(word: string): word is SituationId {
  return word in SITUATION_TABLE;
}
