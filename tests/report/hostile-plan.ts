import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { inventedPlan } from './invented-plan.ts';

/** Names nobody should give and somebody will: markup, a script end, right-to-left, pictures, 200 letters, a formula. */
export const HOSTILE_NAMES = {
  opponent: '</script><script>alert(1)</script>',
  us: '"><img src=x onerror=alert(1)>',
  game: 'w01 \u202eשלום\u202c & "Söhne" <b>',
  call: `${'Wolfsrudel'.repeat(20)}`,
  path: '🏈🔥 path {{x}} #{y}',
  tell: "=cmd()|'/c calc'!A1 </td><td>",
} as const;

/** An invented plan with names that are hostile wherever a user may write one. */
export function hostilePlan(): WeekPlan {
  const plan = inventedPlan({ opponent: HOSTILE_NAMES.opponent, us: HOSTILE_NAMES.us });
  const text = JSON.stringify(plan)
    .replaceAll('"Rake"', JSON.stringify(HOSTILE_NAMES.call))
    .replaceAll('"torch"', JSON.stringify(HOSTILE_NAMES.path))
    .replaceAll('"w02 Alder Gap"', JSON.stringify(HOSTILE_NAMES.game))
    .replaceAll('"Pistol with a tight end"', JSON.stringify(HOSTILE_NAMES.tell));
  return JSON.parse(text) as WeekPlan;
}
