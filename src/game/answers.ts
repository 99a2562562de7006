/** Passes as open play data tell them apart; `quick` is thrown in 2.0 seconds or less, `dropback` the rest with its sacks. */
export type OpenAnswer = 'screen' | 'quick' | 'dropback' | 'play_action';

/** What an answer is, for every room that asks. */
interface AnswerFacts {
  readonly isPass: boolean;
  /** What open play data count in its place; null on runs, where rushers and coverage are blank. */
  readonly openData: OpenAnswer | null;
  /** The answer that has its own points by outcome and down. */
  readonly valuedAs: 'run' | 'screen' | 'quick' | 'dropback' | 'movement';
  /** Its part of the snaps charted as a pass and no more; judgment. */
  readonly ofBarePasses: number;
}

/**
 * The seven answers an offense has, in the order of the pages; every snap is one of them or is counted as not known. Open
 * data count a deep shot among the dropbacks and movement among play action.
 */
export const ANSWER_TABLE = {
  run: { isPass: false, openData: null, valuedAs: 'run', ofBarePasses: 0 },
  quarterback_run: { isPass: false, openData: null, valuedAs: 'run', ofBarePasses: 0 },
  screen: { isPass: true, openData: 'screen', valuedAs: 'screen', ofBarePasses: 0.15 },
  quick: { isPass: true, openData: 'quick', valuedAs: 'quick', ofBarePasses: 0.35 },
  dropback: { isPass: true, openData: 'dropback', valuedAs: 'dropback', ofBarePasses: 0.4 },
  deep_shot: { isPass: true, openData: 'dropback', valuedAs: 'dropback', ofBarePasses: 0.1 },
  movement: { isPass: true, openData: 'play_action', valuedAs: 'movement', ofBarePasses: 0 },
} as const satisfies Readonly<Record<string, AnswerFacts>>;
/** One word of {@link ANSWERS}. */
export type Answer = keyof typeof ANSWER_TABLE;

/** The answers that end in a ball thrown or meant to be. */
export type PassAnswer = {
  [Key in Answer]: (typeof ANSWER_TABLE)[Key]['isPass'] extends true ? Key : never;
}[Answer];

/** The words of {@link ANSWER_TABLE}, runs first. */
export const ANSWERS = Object.keys(ANSWER_TABLE) as readonly Answer[];

/** The passes among {@link ANSWERS}. */
export const PASS_ANSWERS: readonly PassAnswer[] = ANSWERS.filter(isPass);

/** Whether a word is one of the answers. */
export function isAnswer(word: string): word is Answer {
  return word in ANSWER_TABLE;
}

/** Whether an answer is a pass: who rushed and what was played behind it is charted on passes alone. */
export function isPass(answer: Answer): answer is PassAnswer {
  return ANSWER_TABLE[answer].isPass;
}
