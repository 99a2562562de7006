import { ANSWERS, type Answer } from '../../src/game/answers.ts';
import type { CallLibrary } from '../../src/game/call-library.ts';
import {
  PROTECTIONS,
  type ProtectionChapter,
  type ProtectionPicture,
  type ReleaseCurve,
} from '../../src/pressure/protection/protection-result.ts';
import { share } from '../../src/stats/share.ts';
import { normalized, wobble } from './invented-numbers.ts';

const PICTURES: readonly ProtectionPicture[] = PROTECTIONS.slice(0, 6).flatMap((protection): ProtectionPicture[] =>
  protection === 'five_man_man' || protection === 'man_dual_read'
    ? [{ protection, slide: 'none', back: 'in' }]
    : [
        { protection, slide: 'near', back: protection === 'five_man_slide' ? 'wide_near' : 'in' },
        { protection, slide: 'far', back: protection === 'five_man_slide' ? 'out' : 'in' },
      ],
);

const MEDIANS: Partial<Record<Answer, number>> = {
  screen: 1.5,
  quick: 1.7,
  dropback: 2.7,
  deep_shot: 3.1,
  movement: 2.9,
};

const TIMED: Partial<Record<Answer, number>> = { deep_shot: 4, movement: 0 };

/** An invented protection chapter for the calls of a library. */
export function inventedProtection(library: CallLibrary): ProtectionChapter {
  const shares = normalized(PICTURES.map((picture) => 0.2 + wobble(picture.protection, picture.slide)));
  return {
    mix: {
      source: 'partly_charted',
      passes: 99,
      charted: { protectors: 61, slide: 58, back: 79 },
      assumed: [],
      protectors: [
        { count: 5, share: share(17, 61) },
        { count: 6, share: share(38, 61) },
        { count: 7, share: share(6, 61) },
      ],
      slideToBack: share(31, 58),
      slideToField: share(22, 58),
      slideToStrength: share(0, 0),
      backJobs: [
        { job: 'blocks', share: share(34, 79) },
        { job: 'check_releases', share: share(12, 79) },
        { job: 'releases_wide', share: share(24, 79) },
        { job: 'releases_inside', share: share(9, 79) },
      ],
      pictures: PICTURES.map((picture, i) => ({ picture, share: shares[i] ?? 0 })),
    },
    calls: library.calls.flatMap((call) =>
      PICTURES.map((picture, i) => {
        const rushers = call.rush.map((rusher, k) => {
          const free = k === 3 && wobble(call.name, picture.protection, picture.slide) > 0.4;
          const arrival = 2.4 + 1.2 * wobble(call.name, rusher.role) + (free ? 0 : 1.1);
          return {
            role: rusher.role,
            lane: rusher.lane,
            fate: free ? ('free' as const) : ('blocked' as const),
            arrival,
          };
        });
        const free = rushers.filter((rusher) => rusher.fate === 'free');
        return {
          call: call.name,
          picture,
          share: shares[i] ?? 0,
          free: free.length,
          soft: 0,
          peeled: [],
          added: [],
          rushers,
        };
      }),
    ),
    race: library.calls.flatMap((call) =>
      ANSWERS.filter((answer) => MEDIANS[answer]).map((answer) => {
        const home = Math.min(
          0.9,
          Math.max(0.02, 0.25 * ((MEDIANS[answer] ?? 2) - 1.2) + 0.2 * (wobble(call.name) - 0.5)),
        );
        return {
          call: call.name,
          answer,
          home,
          low: Math.max(0, home - 0.12),
          high: Math.min(1, home + 0.12),
          typical: Math.max(0, home - 0.05),
          timedThrows: TIMED[answer] ?? 21,
          firstArrival: 2.5 + wobble(call.name, 'first') * 0.7,
        };
      }),
    ),
    release: ANSWERS.filter((answer) => MEDIANS[answer]).map(releaseOf),
    soundness: [
      { call: 'Torch Zero', role: null, failure: { kind: 'deep_middle_open' }, declared: true },
      { call: 'Anvil', role: null, failure: { kind: 'no_answer', look: 'empty' }, declared: false },
    ],
  };
}

function releaseOf(answer: Answer): ReleaseCurve {
  const median = MEDIANS[answer] ?? 2;
  return {
    answer,
    timedThrows: TIMED[answer] ?? 21,
    sacks: answer === 'dropback' ? 3 : 0,
    median,
    low: 0.9 * median,
    high: 1.12 * median,
    mu: Math.log(median),
    sigma: 0.28,
    othersTimed: 12,
  };
}
