import { DEFAULT_FIT_RULES } from './default-fit-rules.ts';

/** What the cross-field checks of `rules:` look at. */
export interface RulesToCheck {
  readonly off: readonly string[];
  readonly set: readonly { readonly id: string; readonly says: string; readonly stands: boolean }[];
}

/** One fault of `rules:`: where, and what to type. */
export interface FitRuleProblem {
  readonly path: (string | number)[];
  readonly message: string;
}

/** Faults that span several lines of `rules:`: ids that are no rule, ids written twice, a wrong rule that stands. */
export function fitRuleProblems({ off, set }: RulesToCheck): FitRuleProblem[] {
  const known = [...DEFAULT_FIT_RULES, ...set].map(({ id }) => id);
  const ids = set.map(({ id }) => id);
  return [
    ...off.flatMap((id, i) =>
      known.includes(id)
        ? []
        : [{ path: ['rules', 'off', i], message: `"${id}" is not a rule; ${nearIds(id, known)}` }],
    ),
    ...set.flatMap(({ id }, i) =>
      ids.indexOf(id) < i ? [{ path: ['rules', 'set', i, 'id'], message: `rule ${id} is written twice` }] : [],
    ),
    ...set.flatMap(({ id, says, stands }, i) =>
      stands && says === 'wrong'
        ? [
            {
              path: ['rules', 'set', i, 'stands'],
              message: `rule ${id}: only a right rule can stand; wrong beats right already, so leave stands out`,
            },
          ]
        : [],
    ),
  ];
}

/** Rules named in one message. */
const NAMED = 6;

/** Ids that share a word with the one written, or where to find them all. */
function nearIds(id: string, known: readonly string[]): string {
  const words = id.split('_');
  const near = known.filter((other) => other.split('_').some((word) => words.includes(word)));
  return near.length === 0
    ? `rule ids look like ${known.slice(0, 3).join(', ')}; the report's table of rules has them all`
    : `near it are ${near.slice(0, NAMED).join(', ')}`;
}
