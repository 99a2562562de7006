import type { MenuCall } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { percent } from '../words/percent.ts';
import { planSituations, situationLabel } from '../words/situation-label.ts';

/** Situations named; a second or third one only from this share on. Judgment. */
const [NAMED, WORTH_NAMING] = [3, 0.05];

/** The situations in which a call is used most over a game, with its share there. */
export function calledMostOn(plan: WeekPlan, call: MenuCall): string {
  const snapsOf = new Map(planSituations(plan).map((situation) => [situation.id, situation.expectedSnaps]));
  const uses = call.mix
    .map(({ situation, share }) => ({ situation, share, calls: share * (snapsOf.get(situation) ?? 0) }))
    .filter((use) => use.calls > 0)
    .sort((a, b) => b.calls - a.calls)
    .slice(0, NAMED);
  if (uses.length === 0) return 'carried, not in the mix';
  return uses
    .filter((use, place) => place === 0 || use.share >= WORTH_NAMING)
    .map((use) => `${situationLabel(use.situation)} ${percent(use.share)}`)
    .join(', ');
}
