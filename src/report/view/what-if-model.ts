import { ANSWERS } from '../../game/answers.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { situationLabel } from '../words/situation-label.ts';
import type { WhatIfModel } from './what-if.ts';

/**
 * The what-if model of a plan: the calls on the menu against each answer, situation by situation.
 *
 * @returns null without a menu, or where their answers are not charted
 */
export function whatIfModel(plan: WeekPlan): WhatIfModel | null {
  const { menu, scores, settings } = plan;
  if (menu?.kind !== 'menu') return null;
  const calls = menu.calls.map(({ call }) => call);
  const situations = plan.forecast.forecasts
    .filter(({ target, ownSnaps }) => target === 'answer' && ownSnaps > 0)
    .map(({ situation, classes }) => ({
      id: situation,
      label: situationLabel(situation),
      shares: ANSWERS.map((answer) => rounded(classes.find(({ name }) => name === answer)?.share ?? 0)),
      values: calls.map((call) => {
        const score = scores.calls.find((entry) => entry.call === call && entry.situation === situation);
        return ANSWERS.map((answer) => rounded(score?.byAnswer.find((part) => part.answer === answer)?.points ?? 0));
      }),
    }));
  return situations.length === 0 ? null : { answers: ANSWERS, calls, trust: settings.menu.trust, situations };
}

function rounded(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
