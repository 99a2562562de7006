import { ANSWERS, type Answer } from '../../game/answers.ts';
import { FAMILIES, type Family } from '../../game/families.ts';

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
