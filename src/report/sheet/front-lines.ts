import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { RusherFate } from '../../pressure/protection/protection-result.ts';
import { percent } from '../words/percent.ts';

/** What one man of the front meets when he rushes a pass. */
export interface FrontLine {
  readonly man: string;
  readonly words: string;
}

type Fate = RusherFate['fate'];

/** How much of a man's rushes meets each fate, over the carried calls, and over each of them. */
interface Met {
  readonly fates: ReadonlyMap<Fate, number>;
  readonly freeByCall: ReadonlyMap<string, number>;
}

/**
 * One line for each lineman and linebacker who rushes: two blockers, one, or nobody, over the calls we carry as often as
 * we call them, against the protections to expect. Empty where protection is not charted.
 */
export function frontLines(plan: WeekPlan): readonly FrontLine[] {
  if (plan.library === null || plan.protection.mix.source === 'assumed') return [];
  return plan.library.roles
    .filter(({ group }) => group === 'line' || group === 'linebacker')
    .flatMap(({ id, title }) => {
      const met = metBy(plan, id);
      return met === null ? [] : [{ man: title, words: metWords(met) }];
    });
}

function metBy({ menu, protection }: WeekPlan, role: string): Met | null {
  const calls = menu?.kind === 'menu' ? menu.calls : [];
  const met = protection.calls.flatMap(({ call, share, rushers }) => {
    const fate = rushers.find((rusher) => rusher.role === role)?.fate;
    const called = calls.find((entry) => entry.call === call)?.expectedCalls ?? 0;
    return fate === undefined || called === 0 ? [] : [{ call, share, fate, weight: share * called }];
  });
  const fates = new Map<Fate, number>();
  const freeByCall = new Map<string, number>();
  for (const { call, share, fate, weight } of met) {
    fates.set(fate, (fates.get(fate) ?? 0) + weight);
    if (fate === 'free') freeByCall.set(call, (freeByCall.get(call) ?? 0) + share);
  }
  return met.length === 0 ? null : { fates, freeByCall };
}

function metWords({ fates, freeByCall }: Met): string {
  const total = [...fates.values()].reduce((sum, weight) => sum + weight, 0);
  const part = (fate: Fate) => (fates.get(fate) ?? 0) / total;
  const said = FATES.flatMap(({ fate, words }) =>
    part(fate) < WORTH_SAYING ? [] : [`${words} ${percent(part(fate))}`],
  );
  const [best] = [...freeByCall].sort((a, b) => b[1] - a[1]);
  return `${said.join(', ')}${best === undefined || part('free') < WORTH_SAYING ? '' : `; free most in ${best[0]}`}.`;
}

/** A smaller share is not worth a player's memory; judgment. */
const WORTH_SAYING = 0.05;

const FATES: readonly { readonly fate: Fate; readonly words: string }[] = [
  { fate: 'free', words: 'free' },
  { fate: 'late', words: 'blocked late' },
  { fate: 'blocked', words: 'one blocker' },
  { fate: 'doubled', words: 'doubled' },
];
