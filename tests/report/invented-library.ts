import { type CallLibrary, callLibrarySchema } from '../../src/game/call-library.ts';

/** An invented call library for tests: eleven roles and ten calls of a defense that does not exist. */
export function inventedLibrary(): CallLibrary {
  return callLibrarySchema.parse({ level: 'high_school', roles: ROLES, calls: CALLS });
}

const ROLES = [
  { id: 'nose', title: 'Nose', group: 'line', lateral: 0, depth: 1 },
  { id: 'left_end', title: 'Left end', group: 'line', lateral: -4, depth: 1 },
  { id: 'right_end', title: 'Right end', group: 'line', lateral: 4, depth: 1 },
  { id: 'mike', title: 'Mike', group: 'linebacker', lateral: 1, depth: 4.5 },
  { id: 'will', title: 'Will', group: 'linebacker', lateral: -5, depth: 4 },
  { id: 'nickel', title: 'Nickel', group: 'secondary', lateral: 8, depth: 4 },
  { id: 'boundary_corner', title: 'Boundary corner', group: 'secondary', lateral: -13, depth: 7 },
  { id: 'field_corner', title: 'Field corner', group: 'secondary', lateral: 24, depth: 7 },
  { id: 'boundary_safety', title: 'Boundary safety', group: 'secondary', lateral: -9, depth: 10 },
  { id: 'middle_safety', title: 'Middle safety', group: 'secondary', lateral: 1, depth: 9 },
  { id: 'field_safety', title: 'Field safety', group: 'secondary', lateral: 13, depth: 10 },
];

const FRONT = [
  { role: 'left_end', lane: 'far_C' },
  { role: 'nose', lane: 'far_A' },
  { role: 'right_end', lane: 'near_B' },
];

const THREE_DEEP = [
  { role: 'boundary_corner', job: 'deep_third_far' },
  { role: 'field_corner', job: 'deep_third_near' },
  { role: 'field_safety', job: 'seam_near' },
  { role: 'middle_safety', job: 'hook_middle' },
  { role: 'boundary_safety', job: 'deep_third_middle' },
];

const MAN = [
  { role: 'boundary_corner', job: 'man_1_far' },
  { role: 'field_corner', job: 'man_1_near' },
  { role: 'field_safety', job: 'man_2_near' },
  { role: 'boundary_safety', job: 'man_2_far' },
];

const MAN_FROM_BOUNDARY = MAN.map(({ role, job }) => ({
  role,
  job: job.endsWith('near') ? job.replace('near', 'far') : job.replace('far', 'near'),
}));

const ADJUST = { trips: 'Field safety to the third receiver', fast_motion: 'Bump, no chase' };

const call = (name: string, path: string, rest: object) => ({
  name,
  path,
  sent_from: 'field',
  adjust: ADJUST,
  reps: { first: 30, weekly: 10 },
  ...rest,
});

const CALLS = [
  call('Rake', 'rake', {
    family: 'three_under',
    coverage: 'three deep',
    rotation: 'to_rush',
    rush: [...FRONT, { role: 'nickel', lane: 'near_D' }, { role: 'mike', lane: 'near_A', way: 'loop' }],
    cover: [...THREE_DEEP, { role: 'will', job: 'seam_far' }],
    rules: ['Nickel stays square until the snap', 'Mike is late on purpose'],
  }),
  call('Rake Man', 'rake', {
    family: 'man_free',
    coverage: 'man free',
    rush: [...FRONT, { role: 'nickel', lane: 'near_D' }, { role: 'mike', lane: 'near_A' }],
    cover: [...MAN, { role: 'middle_safety', job: 'deep_middle' }, { role: 'will', job: 'man_back' }],
  }),
  call('Anvil', 'anvil', {
    family: 'four_under',
    coverage: 'two deep',
    rush: [...FRONT, { role: 'mike', lane: 'far_B' }, { role: 'middle_safety', lane: 'near_A' }],
    cover: [
      { role: 'boundary_corner', job: 'flat_far' },
      { role: 'field_corner', job: 'flat_near' },
      { role: 'nickel', job: 'hook_near' },
      { role: 'will', job: 'hook_far' },
      { role: 'field_safety', job: 'deep_half_near' },
      { role: 'boundary_safety', job: 'deep_half_far' },
    ],
  }),
  call('Torch', 'torch', {
    family: 'hot',
    coverage: 'hot three deep',
    rush: [
      ...FRONT,
      { role: 'nickel', lane: 'near_D' },
      { role: 'mike', lane: 'near_A' },
      { role: 'will', lane: 'far_D' },
    ],
    cover: [
      { role: 'boundary_corner', job: 'deep_third_far' },
      { role: 'field_corner', job: 'deep_third_near' },
      { role: 'middle_safety', job: 'deep_third_middle' },
      { role: 'field_safety', job: 'hot_near' },
      { role: 'boundary_safety', job: 'hot_far' },
    ],
    given: ['flat_near', 'flat_far'],
  }),
  call('Torch Zero', 'torch', {
    family: 'zero',
    coverage: 'zero',
    rush: [
      ...FRONT,
      { role: 'nickel', lane: 'near_D' },
      { role: 'mike', lane: 'near_A' },
      { role: 'will', lane: 'far_D' },
    ],
    cover: [...MAN, { role: 'middle_safety', job: 'man_back' }],
    given: ['deep_middle', 'quarterback_run'],
  }),
  call('Latch', 'latch', {
    family: 'peel',
    coverage: 'man free peel',
    sent_from: 'boundary',
    rush: [
      { role: 'right_end', lane: 'far_D', peels: true },
      { role: 'nose', lane: 'far_A' },
      { role: 'left_end', lane: 'near_C' },
      { role: 'nickel', lane: 'far_B' },
      { role: 'mike', lane: 'near_A' },
      { role: 'will', lane: 'near_D', peels: true },
    ],
    cover: [...MAN_FROM_BOUNDARY, { role: 'middle_safety', job: 'deep_middle' }],
  }),
  call('Latch Spy', 'latch', {
    family: 'peel_spy',
    coverage: 'man free peel',
    sent_from: 'boundary',
    rush: [
      { role: 'right_end', lane: 'far_D', peels: true },
      { role: 'nose', lane: 'far_A' },
      { role: 'left_end', lane: 'near_C' },
      { role: 'nickel', lane: 'far_B' },
      { role: 'will', lane: 'near_D', peels: true },
    ],
    cover: [...MAN_FROM_BOUNDARY, { role: 'middle_safety', job: 'deep_middle' }, { role: 'mike', job: 'spy' }],
  }),
  call('Afterburn', 'torch', {
    family: 'add_on',
    coverage: 'man free peel',
    rush: [
      ...FRONT,
      { role: 'nickel', lane: 'near_D', peels: true },
      { role: 'mike', lane: 'near_A' },
      { role: 'will', lane: 'far_D', peels: true },
      { role: 'middle_safety', lane: 'far_B', way: 'late_if_back_blocks' },
    ],
    cover: [...MAN],
    given: ['deep_middle'],
    installed: false,
  }),
  call('Anvil Hold', 'anvil', {
    family: 'three_under',
    coverage: 'three deep',
    rush: [...FRONT, { role: 'mike', lane: 'far_B' }, { role: 'middle_safety', lane: 'near_A' }],
    cover: [
      { role: 'boundary_corner', job: 'deep_third_far' },
      { role: 'field_corner', job: 'deep_third_near' },
      { role: 'field_safety', job: 'deep_third_middle' },
      { role: 'nickel', job: 'seam_near' },
      { role: 'will', job: 'hook_middle' },
      { role: 'boundary_safety', job: 'seam_far' },
    ],
  }),
  call('Steady', 'steady', {
    family: 'base',
    coverage: 'three deep',
    rush: [...FRONT, { role: 'will', lane: 'far_D' }],
    cover: [...THREE_DEEP, { role: 'mike', job: 'hook_far' }, { role: 'nickel', job: 'flat_near' }],
  }),
];
