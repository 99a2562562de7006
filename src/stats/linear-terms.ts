/**
 * A weighted sum of variables: factors by variable name, or a list of names with their factors in which a name stands
 * once. A variable left out has factor 0.
 */
export type LinearTerms<Name extends VariableName = string> =
  | Readonly<Record<Name, number>>
  | ReadonlyMap<Name, number>
  | readonly (readonly [Name, number])[];

/** What a program calls its variables; numbers are dearer to read and cheaper to solve. */
export type VariableName = string | number;

/** The names of a sum with their factors, in the order given. */
export function termsOf<Name extends VariableName>(terms: LinearTerms<Name>): Iterable<readonly [Name, number]> {
  return isIterable(terms) ? terms : (Object.entries(terms) as [Name, number][]);
}

function isIterable<Name extends VariableName>(
  terms: LinearTerms<Name>,
): terms is ReadonlyMap<Name, number> | readonly (readonly [Name, number])[] {
  return Symbol.iterator in terms;
}
