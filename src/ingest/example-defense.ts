import type * as z from 'zod';
import type { callLibrarySchema } from '../game/call-library.ts';

/** What a coach writes; defaults may be left out. */
type LibraryText = z.input<typeof callLibrarySchema>;

const ROLES: LibraryText['roles'] = [
  { id: 'nose', title: 'Nose', group: 'line', lateral: 0, depth: 1, cannot: ['drop', 'man', 'deep', 'peel', 'spy'] },
  { id: 'end_field', title: 'Field end', group: 'line', lateral: 3, depth: 1, cannot: ['drop', 'man', 'deep', 'spy'] },
  { id: 'end_short', title: 'Short end', group: 'line', lateral: -3, depth: 1, cannot: ['man', 'deep', 'spy'] },
  { id: 'mike', title: 'Mike', group: 'linebacker', lateral: 1, depth: 4.5, cannot: ['deep'] },
  { id: 'will', title: 'Will', group: 'linebacker', lateral: -3, depth: 4.5, cannot: ['deep'] },
  { id: 'nickel', title: 'Nickel', group: 'secondary', lateral: 6, depth: 3, cannot: ['deep'] },
  { id: 'corner_field', title: 'Field corner', group: 'secondary', lateral: 17, depth: 7, cannot: ['rush', 'spy'] },
  { id: 'corner_short', title: 'Short corner', group: 'secondary', lateral: -13, depth: 6, cannot: ['rush', 'spy'] },
  { id: 'safety_field', title: 'Field safety', group: 'secondary', lateral: 9, depth: 9 },
  { id: 'safety_middle', title: 'Middle safety', group: 'secondary', lateral: 0, depth: 8 },
  { id: 'safety_short', title: 'Short safety', group: 'secondary', lateral: -7, depth: 9 },
];

const ADJUST = {
  trips: 'middle safety leans to the three receivers',
  empty: 'mike takes the fifth receiver under',
  two_backs: 'mike and the near hook take a back each',
  fast_motion: 'the flat goes with the motion, the hook bumps over',
  heavy: 'near safety comes down to the edge',
};

/** An invented library of two calls with which the template of defense.yaml begins; no real team plays it. */
export const EXAMPLE_DEFENSE: LibraryText = {
  level: 'high_school',
  roles: ROLES,
  calls: [
    {
      name: 'Still Roof',
      path: 'still',
      family: 'base',
      coverage: 'three deep four under',
      rush: [
        { role: 'end_field', lane: 'near_C' },
        { role: 'nose', lane: 'near_A' },
        { role: 'will', lane: 'far_B' },
        { role: 'end_short', lane: 'far_C' },
      ],
      cover: [
        { role: 'corner_field', job: 'deep_third_near' },
        { role: 'safety_middle', job: 'deep_third_middle' },
        { role: 'corner_short', job: 'deep_third_far' },
        { role: 'nickel', job: 'flat_near' },
        { role: 'safety_field', job: 'hook_near' },
        { role: 'mike', job: 'hook_far' },
        { role: 'safety_short', job: 'flat_far' },
      ],
      adjust: ADJUST,
      reps: { first: 20, weekly: 6 },
    },
    {
      name: 'Lever Roof',
      path: 'lever',
      family: 'three_under',
      coverage: 'three deep three under',
      rotation: 'to_rush',
      sent_from: 'field',
      rush: [
        { role: 'nickel', lane: 'near_C' },
        { role: 'end_field', lane: 'near_B' },
        { role: 'nose', lane: 'far_A' },
        { role: 'mike', lane: 'near_A', way: 'loop' },
        { role: 'end_short', lane: 'far_C' },
      ],
      cover: [
        { role: 'corner_field', job: 'deep_third_near' },
        { role: 'safety_middle', job: 'deep_third_middle' },
        { role: 'corner_short', job: 'deep_third_far' },
        { role: 'safety_field', job: 'seam_near' },
        { role: 'will', job: 'hook_middle' },
        { role: 'safety_short', job: 'seam_far' },
      ],
      given: ['flat_near', 'flat_far'],
      adjust: ADJUST,
      reps: { first: 24, weekly: 6 },
    },
  ],
  rules: {
    off: [],
    set: [
      {
        id: 'our_hot_fast_motion',
        families: ['hot'],
        when: { motion: ['fast'] },
        says: 'wrong',
        stands: false,
        source: 'our staff',
      },
    ],
  },
};
