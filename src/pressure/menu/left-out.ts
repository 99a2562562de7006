import type { ChosenMenu } from './chosen.ts';
import type { CompiledMenu } from './compile.ts';
import type { MenuCandidate } from './model.ts';
import type { OutReason } from './offer.ts';

/** Why a call is not carried. */
export type LeftOutReason =
  | OutReason
  | { readonly kind: 'costs_reps'; readonly reps: number; readonly fit: number }
  | { readonly kind: 'plainly_wrong'; readonly fit: number; readonly situation: string }
  | { readonly kind: 'nowhere_better'; readonly fit: number; readonly situation: string };

/** Every pressure that is not carried with its reason. */
export function whyLeftOut({ problem, offer }: CompiledMenu, menu: ChosenMenu) {
  const inside = problem.candidates.flatMap((candidate, c) => {
    if (menu.set.includes(c)) return [];
    const best = bestMix(candidate);
    const home = problem.mixes[best.m]?.situations[0] ?? '';
    const kind = candidate.closed.every(Boolean) ? 'plainly_wrong' : 'nowhere_better';
    const fallback: LeftOutReason = { kind, fit: best.fit, situation: home };
    return [
      { call: candidate.call.name, why: (kind === 'plainly_wrong' ? null : costly(candidate, best.fit)) ?? fallback },
    ];
  });
  return [...offer.out, ...inside];
}

function costly({ isNew, reps }: MenuCandidate, fit: number): LeftOutReason | null {
  return isNew ? { kind: 'costs_reps', reps, fit } : null;
}

function bestMix({ fit }: MenuCandidate): { readonly m: number; readonly fit: number } {
  const best = Math.max(...fit);
  return { m: fit.indexOf(best), fit: best };
}
