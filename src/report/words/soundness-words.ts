import type { Demand } from '../../game/call-library.ts';
import { familyFacts, type MenKind } from '../../game/families.ts';
import type { Failure, SoundnessFault } from '../../pressure/soundness/fault.ts';

type Kind = Failure['kind'];

const RULES: Readonly<Record<Kind, string>> = {
  no_job: 'eleven men',
  several_jobs: 'eleven men',
  stranger: 'eleven men',
  cannot: 'cannot',
  receiver_open: 'owner',
  back_open: 'owner',
  back_open_to: 'owner',
  no_second_owner: 'second owner',
  crowded_lane: 'lane',
  edge_open: 'contain',
  edge_left_by_peel: 'contain',
  inside_open: 'inside',
  late_lineman: 'add-on',
  peel_from_inside: 'peel',
  two_peel: 'peel',
  deep_half_open: 'deep middle',
  deep_middle_open: 'deep middle',
  deep_middle_left: 'deep middle',
  same_place: 'one place each',
  flat_open: 'flat',
  quarterback_open: 'quarterback run',
  no_answer: 'answer',
  not_the_family: 'family',
};

/** The rule of soundness a call failed, in a word or two. */
export function ruleOfFailure(failure: Failure): string {
  return failure.kind === 'no_answer' ? spaced(failure.look) : RULES[failure.kind];
}

type Words = { readonly [K in Kind]: (failure: Failure & { readonly kind: K }) => string };

const WORDS: Words = {
  no_job: ({ man }) => `${man} has no job: eleven men, one job each`,
  several_jobs: ({ man, jobs }) => `${man} has ${jobs} jobs`,
  stranger: ({ man }) => `${man} is not one of our eleven`,
  cannot: ({ man, demand }) => `${man} is not asked to ${DEMAND_WORDS[demand]}, and this call asks it`,
  receiver_open: ({ receiver }) => `nobody has number ${RECEIVER_WORDS[receiver]} side`,
  back_open: () => 'nobody has the back',
  back_open_to: ({ side }) => `nobody has the back when he goes to the ${side} side`,
  no_second_owner: ({ man, job }) => `${man} adds and nobody has ${spaced(job)} after him`,
  crowded_lane: ({ men, lane, loops }) =>
    `${together(men)} share the ${spaced(lane)} lane and ${crowdWords(men.length, loops)}`,
  edge_open: ({ side }) => `nobody contains the ${side} edge`,
  edge_left_by_peel: ({ man, side }) => `${man} peels and no inside rusher replaces him on the ${side} edge`,
  inside_open: ({ side }) => `nobody rushes the A or B gap on the ${side} side`,
  late_lineman: ({ man }) =>
    `${man} is on the line and cannot read the back first; a linebacker or defensive back adds himself`,
  peel_from_inside: ({ man, lane }) =>
    `${man} peels from the ${spaced(lane)} lane; the widest man, outside the tackle, has the back`,
  two_peel: ({ men, side }) => `${together(men)} peel on the ${side} side; one man goes with the back`,
  deep_half_open: ({ side }) => `nobody has the ${side} deep half or the deep middle`,
  deep_middle_open: () => 'nobody has the deep middle',
  deep_middle_left: ({ man }) => `${man} leaves the deep middle to nobody when he joins the rush`,
  same_place: ({ men, job }) => `${together(men)} both have ${spaced(job)}`,
  flat_open: ({ side }) => `nobody has the ${side} flat`,
  quarterback_open: () => 'nobody has the quarterback when he runs',
  no_answer: ({ look }) => `no answer to ${spaced(look)} is written`,
  not_the_family: ({ family, men, found, wanted }) =>
    `${MEN_WORDS[men](found)}; ${familyFacts(family).words} has ${wanted}`,
};

/**
 * What a call leaves open, as a clause without a capital or a full stop.
 *
 * @example failureWords({ kind: 'flat_open', side: 'near' }) // "nobody has the near flat"
 */
export function failureWords(failure: Failure): string {
  return (WORDS[failure.kind] as (failure: Failure) => string)(failure);
}

/** A fault with its rule and its words, for what is read outside the pages. */
export function faultInWords(
  fault: SoundnessFault,
): SoundnessFault & { readonly rule: string; readonly words: string } {
  return { ...fault, rule: ruleOfFailure(fault.failure), words: failureWords(fault.failure) };
}

const DEMAND_WORDS: Readonly<Record<Demand, string>> = {
  rush: 'rush',
  drop: 'drop into a zone',
  man: 'play man to man',
  deep: 'play deep',
  peel: 'peel with a back',
  spy: 'spy the quarterback',
};

const RECEIVER_WORDS: Readonly<Record<(Failure & { kind: 'receiver_open' })['receiver'], string>> = {
  near_1: 'one on the near',
  near_2: 'two on the near',
  near_3: 'three on the near',
  far_1: 'one on the far',
  far_2: 'two on the far',
  far_3: 'three on the far',
};

const MEN_WORDS: Readonly<Record<MenKind, (count: number) => string>> = {
  rush: (count) => `${count} rush at the snap`,
  late: (count) => `${count} join late`,
  deep: (count) => `${count} play deep`,
  man: (count) => `${count} play man to man`,
  under: (count) => `${count} drop under`,
  hot: (count) => `${count} play hot`,
  spy: (count) => `${count} spy`,
  peels: (count) => `edges peel on ${count} of 2 sides`,
};

function crowdWords(men: number, loops: number): string {
  if (men > 2) return 'two is the most, one of them looping';
  return loops === 0 ? 'neither loops' : 'both loop';
}

function together(men: readonly string[]): string {
  return men.join(' and ');
}

function spaced(id: string): string {
  return id.replaceAll('_', ' ');
}
