import { ANSWERS, FAMILIES } from '../../game/vocabulary.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { CallProtection } from '../../pressure/protection/protection-result.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import type { WhatIfBack, WhatIfFamily, WhatIfModel, WhatIfSituation } from '../what-if.ts';
import { familyLabel } from '../words/label.ts';
import { ALL_SITUATIONS, planSituations } from '../words/situation-label.ts';

/** What the what-if panel needs of the plan, rounded to what can be read; null when no family was scored. */
export function whatIfModel(plan: WeekPlan): WhatIfModel | null {
  const scored = FAMILIES.filter((family) => plan.scores.families.some((score) => score.family === family));
  if (scored.length === 0) return null;
  const cells = [{ id: ALL_SITUATIONS, label: 'All situations' }, ...planSituations(plan)];
  return {
    answers: ANSWERS,
    families: scored.map(
      (family): WhatIfFamily => ({ id: family, label: familyLabel(family), free: freeBy(plan, family) }),
    ),
    situations: cells.flatMap(({ id, label }) => situationOf(plan, scored, { id, label })),
  };
}

function situationOf(
  plan: WeekPlan,
  families: readonly string[],
  { id, label }: { id: string; label: string },
): readonly WhatIfSituation[] {
  const here = plan.scores.families.filter((score) => score.situation === id);
  const first = here.find((score) => score.answers.length > 0);
  if (first === undefined) return [];
  const shares = ANSWERS.map((answer) => rounded(shareOf(first, answer)));
  const values = families.map((family) => {
    const score = here.find((entry) => entry.family === family);
    return ANSWERS.map((answer) => rounded(score === undefined ? 0 : valueAgainst(score, answer)));
  });
  return [{ id, label, shares, values, back: backOf(plan, families, id) }];
}

function shareOf(score: FamilyScore, answer: string): number {
  return score.answers.find((part) => part.answer === answer)?.share ?? 0;
}

/** An answer's part is its share times its value. */
function valueAgainst(score: FamilyScore, answer: string): number {
  const part = score.answers.find((entry) => entry.answer === answer);
  return part === undefined || part.share === 0 ? 0 : part.points / part.share;
}

function backOf({ scores }: WeekPlan, families: readonly string[], situation: string): WhatIfBack | null {
  const found = scores.backRelease.find((entry) => entry.situation === situation);
  if (found === undefined || found.out <= 0 || found.out >= 1) return null;
  const own = (changes: readonly (readonly number[])[]) =>
    families.map((family) => (changes[(FAMILIES as readonly string[]).indexOf(family)] ?? []).map(rounded));
  return { out: rounded(found.out), whenIn: own(found.whenIn), whenOut: own(found.whenOut) };
}

/** How often somebody is free in the calls of a family, with the back in and with the back out. */
function freeBy(plan: WeekPlan, family: string): WhatIfFamily['free'] {
  const names = new Set(plan.library?.calls.filter((call) => call.family === family).map((call) => call.name));
  const own = plan.protection.calls.filter((entry) => names.has(entry.call));
  const backIn = freeShare(own.filter((entry) => entry.picture.back === 'in'));
  const backOut = freeShare(own.filter((entry) => entry.picture.back !== 'in'));
  return backIn === null || backOut === null ? null : { backIn, backOut };
}

function freeShare(entries: readonly CallProtection[]): number | null {
  const total = entries.reduce((sum, entry) => sum + entry.share, 0);
  if (total === 0) return null;
  return rounded(entries.reduce((sum, entry) => sum + (entry.free > 0 ? entry.share : 0), 0) / total);
}

function rounded(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
