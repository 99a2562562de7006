import type { Answer, Family } from '../../game/vocabulary.ts';
import type { OpenAnswer, OpenFamily } from './open-data-table.ts';

interface FamilyProxy {
  readonly family: OpenFamily;
  /** 0 to 1: how far the proxy's figures may be taken for the family's own; judgement, from the table's notes. */
  readonly quality: number;
  readonly words: string;
}

interface AnswerProxy {
  readonly answer: OpenAnswer;
  /** 0 to 1; judgement. */
  readonly quality: number;
}

/**
 * What stands in for each family in open play data, where only the count of rushers and the coverage are charted. Two
 * charts of the same games agree on the rusher count in 81% and on the coverage number in 88.5% of snaps: 0.7 for a
 * family told by both; 0.5 where what makes the family (hot eyes, the peel, the lateness) was not charted.
 */
const FAMILY_PROXIES: Readonly<Record<Exclude<Family, 'peel_spy'>, FamilyProxy>> = {
  base: { family: 'base', quality: 1, words: 'four rushers, any coverage' },
  three_under: { family: 'three_under', quality: 0.7, words: 'five rushers, three deep' },
  four_under: { family: 'four_under', quality: 0.7, words: 'five rushers, two deep' },
  man_free: { family: 'man_free_five', quality: 0.7, words: 'five rushers, man with one deep' },
  hot: { family: 'hot', quality: 0.5, words: 'six rushers, three deep' },
  zero: { family: 'zero', quality: 0.7, words: 'six or more rushers, man with nobody deep' },
  peel: { family: 'six_post', quality: 0.5, words: 'six rushers, man with one deep; the peel itself is not charted' },
  add_on: {
    family: 'seven_plus',
    quality: 0.5,
    words: 'seven or more rushers; that the seventh comes late is not charted',
  },
};

/**
 * What stands in for each answer. A deep shot is counted among the dropbacks and movement among play action there, so
 * both are taken at half. An option pass is a quick throw here; its own cells (5 to 77 snaps) are left out.
 */
const ANSWER_PROXIES: Readonly<Record<Exclude<Answer, 'run' | 'quarterback_run'>, AnswerProxy>> = {
  screen: { answer: 'screen', quality: 1 },
  quick: { answer: 'quick', quality: 1 },
  dropback: { answer: 'dropback', quality: 1 },
  deep_shot: { answer: 'dropback', quality: 0.5 },
  movement: { answer: 'play_action', quality: 0.5 },
};

/** The open-data family that stands in for ours, or null: nobody charts a spy. */
export function openFamilyOf(family: Family): OpenFamily | null {
  return family === 'peel_spy' ? null : FAMILY_PROXIES[family].family;
}

/** The open-data answer that stands in for ours, or null: rushers and coverage are blank on every run. */
export function openAnswerOf(answer: Answer): OpenAnswer | null {
  return answer === 'run' || answer === 'quarterback_run' ? null : ANSWER_PROXIES[answer].answer;
}

/** How far open data may be taken for a family against an answer, 0 (not at all) to 1. */
export function proxyQuality(family: Family, answer: Answer): number {
  if (family === 'peel_spy' || answer === 'run' || answer === 'quarterback_run') return 0;
  return FAMILY_PROXIES[family].quality * ANSWER_PROXIES[answer].quality;
}

/** In words, what stands in for a family in open play data. */
export function proxyWords(family: Family): string {
  return family === 'peel_spy' ? 'nothing: a spy is not charted' : FAMILY_PROXIES[family].words;
}
