/** Columns that bear on the scores, on which snaps each applies, and what it is called in a sentence. */
export const VALUED_COLUMNS = [
  { column: 'play_kind', on: 'snap', words: 'what they did with the ball' },
  { column: 'receivers', on: 'snap', words: 'how the receivers stand' },
  { column: 'personnel', on: 'snap', words: 'the personnel' },
  { column: 'result', on: 'snap', words: 'how the snap ended' },
  { column: 'back_action', on: 'pass', words: "the back's job" },
  { column: 'protectors', on: 'pass', words: 'how many protect' },
  { column: 'target_zone', on: 'pass', words: 'where they throw' },
  { column: 'concept', on: 'pass', words: 'the pass concept' },
  { column: 'time_to_throw', on: 'pass', words: 'the release time' },
] as const;

/** A column whose charting could sharpen the scores. */
export type ValuedColumn = (typeof VALUED_COLUMNS)[number]['column'];
