import { ANSWERS, type Answer, FAMILIES, type Family } from '../../game/vocabulary.ts';

/** One number for each of their answers. */
export type ByAnswer = Readonly<Record<Answer, number>>;

/** One thing for each family. */
export type ByFamily<Value> = Readonly<Record<Family, Value>>;

/** Something for each answer. */
export function eachAnswer<Value>(of: (answer: Answer) => Value): Readonly<Record<Answer, Value>> {
  return Object.fromEntries(ANSWERS.map((answer) => [answer, of(answer)])) as Record<Answer, Value>;
}

/** Something for each family. */
export function eachFamily<Value>(of: (family: Family) => Value): ByFamily<Value> {
  return Object.fromEntries(FAMILIES.map((family) => [family, of(family)])) as ByFamily<Value>;
}

/** Sum over the answers of a share times a number. */
export function weighted(shares: ByAnswer, values: ByAnswer): number {
  return ANSWERS.reduce((sum, answer) => sum + shares[answer] * values[answer], 0);
}

/** Whether an answer is a pass: who rushed and what was played behind it is charted on passes alone. */
export function isPass(answer: Answer): boolean {
  return answer !== 'run' && answer !== 'quarterback_run';
}
