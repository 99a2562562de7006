/** What the what-if panel starts from: every carried call's value against every answer, and how often the answers come. */
export interface WhatIfModel {
  readonly answers: readonly string[];
  readonly calls: readonly string[];
  /** The trust the menu was chosen with, 0 to 1. */
  readonly trust: number;
  readonly situations: readonly WhatIfSituation[];
}

/** A situation: the forecast share of each answer, and points saved per ten snaps of each call against each answer. */
export interface WhatIfSituation {
  readonly id: string;
  readonly label: string;
  readonly shares: readonly number[];
  /** values[call][answer] */
  readonly values: readonly (readonly number[])[];
}

/** What the reader supposes; shares 0 to 1. Trust 1 follows the forecast, 0 supposes their best answer every time. */
export interface Supposition {
  /** Runs of any kind; the quarterback's part of them stays as forecast. */
  readonly run: number;
  readonly screen: number;
  readonly quick: number;
  readonly trust: number;
}

/** A call under a supposition. */
export interface SupposedScore {
  readonly call: string;
  /** Points saved per ten snaps. */
  readonly points: number;
}

/**
 * The carried calls ranked under a supposition, best first. A call's points are the sum over answers of share times
 * value, so that with the forecast's own shares and full trust the plan's own figures come back.
 */
export function supposeScores(
  model: WhatIfModel,
  situation: WhatIfSituation,
  supposed: Supposition,
): readonly SupposedScore[] {
  const shares = supposedShares(model.answers, situation.shares, supposed);
  const scores = model.calls.map((call, i) => {
    const values = situation.values[i] ?? [];
    const expected = shares.reduce((sum, share, k) => sum + share * (values[k] ?? 0), 0);
    return { call, points: supposed.trust * expected + (1 - supposed.trust) * worstValue(values) };
  });
  return scores.sort((a, b) => b.points - a.points);
}

/** The supposition the plan itself was made with. */
export function asForecast(model: WhatIfModel, situation: WhatIfSituation): Supposition {
  const shareOf = (knob: Knob) =>
    KNOB_ANSWERS[knob].reduce((sum, answer) => sum + (situation.shares[model.answers.indexOf(answer)] ?? 0), 0);
  return { run: shareOf('run'), screen: shareOf('screen'), quick: shareOf('quick'), trust: model.trust };
}

type Knob = Exclude<keyof Supposition, 'trust'>;

/** The answers each slider moves together. */
const KNOB_ANSWERS: Readonly<Record<Knob, readonly string[]>> = {
  run: ['run', 'quarterback_run'],
  screen: ['screen'],
  quick: ['quick'],
};
const KNOBS = ['run', 'screen', 'quick'] as const satisfies readonly Knob[];

/**
 * Answer shares with runs, screens and quick game set; the others keep their proportions and fill what is left. Set
 * shares that together exceed one are cut back in proportion.
 */
export function supposedShares(
  answers: readonly string[],
  shares: readonly number[],
  supposed: Pick<Supposition, Knob>,
): readonly number[] {
  const knobOf = (i: number) => KNOBS.find((knob) => KNOB_ANSWERS[knob].includes(answers[i] ?? ''));
  const sumOf = (knob: Knob | undefined) => shares.reduce((sum, share, i) => sum + (knobOf(i) === knob ? share : 0), 0);
  const set = KNOBS.reduce((sum, knob) => sum + supposed[knob], 0);
  const over = sumOf(undefined) > 0 ? Math.max(1, set) : set || 1;
  const targetOf = (knob: Knob | undefined) => (knob === undefined ? 1 - set / over : supposed[knob] / over);
  return shares.map((share, i) => {
    const knob = knobOf(i);
    const sum = sumOf(knob);
    if (sum > 0) return (share / sum) * targetOf(knob);
    return knob !== undefined && KNOB_ANSWERS[knob][0] === answers[i] ? targetOf(knob) : 0;
  });
}

function worstValue(values: readonly number[]): number {
  return values.length === 0 ? 0 : Math.min(...values);
}
