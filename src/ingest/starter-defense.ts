/**
 * The defense.yaml a new season begins with: an odd front with three deep safeties, and one or two sound calls of every
 * family in plain words. Invented; no real team plays it.
 */
export const STARTER_DEFENSE = `# Our roles and our calls: an odd front with three deep safeties. What stands here is invented, and every call is sound.
# Rename what you like, take out what you do not teach, and add your own. "pressure-plan calls" draws every call.
#
# A call is one line: a name, a path (who rushes), a coverage, and only what differs from the two.
#   - { name: Thunder, path: field five, coverage: man free }
#   - { name: Thunder Loop, like: Thunder, send: [nickel, mike near_B, will near_A loop] }
# near / far  the side a call is sent from, and the other. Write paths and coverages as if near were the field; the men
#             under trade change places when a path is sent from the boundary.
# send        who rushes besides our linemen (drop: linemen who do not). Lanes follow from where they line up: widest man
#             outside the tackle (C), the next inside him (B, A). Where yours differ, write the lane: mike near_B.
# cover       each job and who has it; of several men the first who does not rush. none takes a job away.
# given       what a call gives up on purpose. "pressure-plan check" holds everything else against the call.
# reps        repetitions to install it the first time, and each week to keep it.
# A call can also be written in full, without path and coverage: examples/defense-in-full.yaml explains every key.
# No player names are needed.
# Guidance only: contact limits and rules belong to your state association and licensed athletic trainers.

level: high_school

roles:
  - { id: nose, title: Nose, group: line, lateral: 0, depth: 1, cannot: [drop, man, deep, peel, spy] }
  - { id: end_field, title: Field end, group: line, lateral: 3, depth: 1, cannot: [drop, man, deep, spy] }
  - { id: end_boundary, title: Boundary end, group: line, lateral: -3, depth: 1, cannot: [man, deep, spy] }
  - { id: mike, title: Mike, group: linebacker, lateral: 1, depth: 4.5, cannot: [deep] }
  - { id: will, title: Will, group: linebacker, lateral: -3, depth: 4.5, cannot: [deep] }
  - { id: nickel, title: Nickel, group: secondary, lateral: 6, depth: 3, cannot: [deep] }
  - { id: corner_field, title: Field corner, group: secondary, lateral: 17, depth: 7, cannot: [rush, spy, peel] }
  - { id: corner_boundary, title: Boundary corner, group: secondary, lateral: -13, depth: 6, cannot: [rush, spy, peel] }
  - { id: safety_field, title: Field safety, group: secondary, lateral: 9, depth: 9 }
  - { id: safety_middle, title: Middle safety, group: secondary, lateral: 0, depth: 8 }
  - { id: safety_boundary, title: Boundary safety, group: secondary, lateral: -7, depth: 9 }

trade: [[corner_field, corner_boundary], [safety_field, safety_boundary], [end_field, end_boundary], [nickel, will]]

paths:
  four: { send: [will far_B] }
  field five: { sent_from: field, send: [nickel, mike] }
  boundary five: { sent_from: boundary, send: [will, mike] }
  middle five: { sent_from: field, send: [safety_middle near_B, mike near_A] }
  both edges: { sent_from: field, send: [nickel, will] }
  six: { sent_from: field, send: [nickel, mike, will] }

coverages:
  # Parts that several share.
  thirds: { cover: { deep_third_near: corner_field, deep_third_middle: safety_middle, deep_third_far: corner_boundary } }
  man on four:
    cover: { man_1_near: corner_field, man_1_far: corner_boundary, man_2_near: safety_field, man_2_far: safety_boundary }

  # Four rush.
  three deep four under:
    like: thirds
    family: base
    cover: { flat_near: nickel, hook_near: safety_field, hook_far: mike, flat_far: safety_boundary }
    adjust:
      trips: middle safety leans to the three receivers and has number three deep
      empty: mike takes the fifth receiver under
      two_backs: mike and the near hook each take a back as he releases
      fast_motion: the flat goes with the motion and the hook takes his place
      heavy: near safety comes down to the edge
    reps: { first: 20, weekly: 6 }

  # Five rush, three deep, three under. Turn toward the man who is sent.
  three deep three under:
    like: thirds
    family: three_under
    rotation: to_rush
    cover:
      hook_middle: safety_middle
      seam_near: [nickel, safety_field]
      seam_far: [will, safety_boundary]
      deep_third_middle: [safety_boundary, safety_field]
    given: [flat_near, flat_far]
    adjust:
      trips: turn the shell to the three receivers; the hook leans to number three
      empty: check to man free on the same path
      two_backs: hook and near seam each take a back as he releases
      fast_motion: the seam runs with it and the hook takes his place
      heavy: the near seam man sets the edge at the line
    reps: { first: 30, weekly: 8 }

  # Five rush, two deep, four under, corners squat on the flats. For balanced sets.
  two deep four under:
    family: four_under
    cover: { flat_near: corner_field, flat_far: corner_boundary, hook_near: nickel, hook_far: will, deep_half_near: safety_field, deep_half_far: safety_boundary }
    adjust:
      trips: check to three deep three under
      empty: the middle safety stays back and takes the fifth receiver
      two_backs: each hook takes a back as he releases
      fast_motion: the corner keeps the flat and the hook pushes under number two
      heavy: the corner on the tight end sets the edge
    reps: { first: 40, weekly: 12 }

  # Five rush, man to man, one man free deep.
  man free:
    like: man on four
    family: man_free
    cover: { man_2_near: [nickel, safety_field], man_back: [mike, will, safety_field], deep_middle: [safety_middle, safety_field] }
    given: [quarterback_run]
    adjust:
      trips: the far safety comes over to number three
      empty: the man on the back takes the fifth receiver
      two_backs: the man on number two away takes the second back
      fast_motion: the man on the motion runs with it
      heavy: the safety on the tight end comes down to seven yards
    reps: { first: 20, weekly: 6 }

  # Six rush, three deep, two under with their eyes on the passer.
  hot:
    like: thirds
    family: hot
    cover: { hot_near: safety_field, hot_far: safety_boundary }
    given: [flat_near, flat_far, back]
    adjust:
      trips: the hot man to the three opens to number three, the other drops to the middle
      empty: call it off and check to man free
      two_backs: each edge hugs the back on his side
      fast_motion: the near hot man widens with it, the other slides to the middle
      heavy: edges play the run first
    reps: { first: 30, weekly: 10 }

  # Six rush, man to man, nobody deep.
  zero:
    like: man on four
    family: zero
    cover: { man_back: safety_middle }
    given: [deep_middle, quarterback_run]
    adjust:
      trips: the far safety comes over to number three, inside of him
      empty: the man on the back takes the fifth receiver
      two_backs: the man on number two away takes the second back
      fast_motion: the man on the motion runs with it, inside
      heavy: the safety on the tight end plays him head up at five yards
    reps: { first: 20, weekly: 8 }

  # Six rush; an edge goes with the back who releases wide on his side, one man free deep.
  peel:
    like: man on four
    family: peel
    edges_peel: true
    cover: { deep_middle: safety_middle }
    given: [quarterback_run]
    adjust:
      trips: the far safety comes over to number three and the post leans to him
      empty: call it off and check to man free
      two_backs: each edge has the back on his side
      fast_motion: a back in motion belongs to the safety on that side
      heavy: the edge on the tight end plays the run first
    reps: { first: 50, weekly: 15 }

  # Five rush with the peel rule; the mike mirrors a quarterback who runs.
  peel with a spy:
    like: peel
    family: peel_spy
    cover: { spy: mike }
    given: []
    reps: { first: 50, weekly: 15 }

  # Six rush with the peel rule; when the back stays in, the middle safety comes as the seventh.
  peel with an add-on:
    like: peel
    family: add_on
    late: safety_middle
    cover: { deep_middle: none }
    given: [deep_middle, quarterback_run]
    reps: { first: 35, weekly: 12 }

calls:
  - { name: Base, path: four, coverage: three deep four under }
  - { name: Field Under, path: field five, coverage: three deep three under }
  - { name: Boundary Under, path: boundary five, coverage: three deep three under }
  - { name: Middle Trap, path: middle five, coverage: two deep four under }
  - { name: Field Man, path: field five, coverage: man free }
  - { name: Middle Man, path: middle five, coverage: man free }
  - { name: Six Hot, path: six, coverage: hot }
  - { name: Six Zero, path: six, coverage: zero }
  - { name: Six Peel, path: six, coverage: peel }
  - { name: Edges Spy, path: both edges, coverage: peel with a spy }
  - { name: Six Add, path: six, coverage: peel with an add-on, installed: false }
`;
