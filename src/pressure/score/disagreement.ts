import type { Answer } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import type { ByAnswer } from '../evidence/by-answer.ts';

/** Where open play data and common practice part ways; the report has the sentences. */
export const DISAGREEMENTS = [
  'man_against_screens',
  'hot_against_screens',
  'zero_feared',
  'four_under_quick',
  'add_on_quick',
  'add_on_held_ball',
  'play_action',
  'takeaways',
] as const;
/** One word of {@link DISAGREEMENTS}. */
export type Disagreement = (typeof DISAGREEMENTS)[number];

/** Share of their snaps below which a disagreement about an answer is left out. Judgment. */
const LEAST_SHARE = 0.03;

/** The disagreements that matter this week: about a family that is scored and an answer they give. */
export function disagreementsOf(families: readonly Family[], shares: ByAnswer): Disagreement[] {
  return DISAGREEMENTS.filter((id) => {
    const about = ABOUT[id];
    const shown = about.answers.reduce((sum, answer) => sum + shares[answer], 0);
    return about.families.some((family) => families.includes(family)) && shown >= LEAST_SHARE;
  });
}

interface Subject {
  readonly families: readonly Family[];
  readonly answers: readonly Answer[];
}

const ABOUT: Readonly<Record<Disagreement, Subject>> = {
  man_against_screens: { families: ['man_free', 'peel', 'peel_spy'], answers: ['screen'] },
  hot_against_screens: { families: ['hot'], answers: ['screen'] },
  zero_feared: { families: ['zero'], answers: ['screen', 'quick', 'dropback', 'deep_shot', 'movement'] },
  four_under_quick: { families: ['four_under'], answers: ['quick', 'screen'] },
  add_on_quick: { families: ['three_under', 'add_on'], answers: ['quick'] },
  add_on_held_ball: { families: ['add_on'], answers: ['dropback', 'deep_shot'] },
  play_action: { families: ['man_free', 'three_under'], answers: ['movement'] },
  takeaways: { families: ['hot', 'zero', 'peel', 'peel_spy', 'add_on'], answers: ['quick', 'dropback'] },
};
