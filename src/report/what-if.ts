/** What the what-if panel starts from: every family's value against every answer, and how often the answers come. */
export interface WhatIfModel {
  readonly answers: readonly string[];
  readonly families: readonly WhatIfFamily[];
  readonly situations: readonly WhatIfSituation[];
}

/** A family and how often somebody comes free with the back in and with the back out; null where no call was matched. */
export interface WhatIfFamily {
  readonly id: string;
  readonly label: string;
  readonly free: { readonly backIn: number; readonly backOut: number } | null;
}

/** A situation: the forecast share of each answer, and points saved per ten snaps of each family against each answer. */
export interface WhatIfSituation {
  readonly id: string;
  readonly label: string;
  readonly shares: readonly number[];
  /** values[family][answer] */
  readonly values: readonly (readonly number[])[];
  /** What the back's release changes; null where his job was not charted. */
  readonly back: WhatIfBack | null;
}

/** The back's release: how often he gets out, and what to add to `values` were he always in or always out. */
export interface WhatIfBack {
  readonly out: number;
  /** whenIn[family][answer] */
  readonly whenIn: readonly (readonly number[])[];
  readonly whenOut: readonly (readonly number[])[];
}

/** What the reader supposes; shares 0 to 1. Trust 1 follows the forecast, 0 supposes their best answer every time. */
export interface Supposition {
  readonly screen: number;
  readonly quick: number;
  readonly backOut: number | null;
  readonly trust: number;
}

/** A family under a supposition. */
export interface SupposedScore {
  readonly family: string;
  readonly label: string;
  /** Points saved per ten snaps. */
  readonly points: number;
  /** Share of passes on which somebody comes free; null where it cannot be told. */
  readonly free: number | null;
}

/**
 * The families ranked anew under a supposition, best first. A family's points are the sum over answers of share times
 * value, so that with the forecast's own shares, the back as forecast and full trust the plan's ranking comes back.
 */
export function supposeScores(
  model: WhatIfModel,
  situation: WhatIfSituation,
  supposed: Supposition,
): readonly SupposedScore[] {
  const shares = supposedShares(model.answers, situation.shares, supposed);
  const scores = model.families.map(({ id, label, free }, i) => {
    const values = valuesWithBack(situation, i, supposed.backOut);
    const expected = shares.reduce((sum, share, k) => sum + share * (values[k] ?? 0), 0);
    const points = supposed.trust * expected + (1 - supposed.trust) * worstValue(values);
    return { family: id, label, points, free: freeShare(free, supposed.backOut) };
  });
  return scores.sort((a, b) => b.points - a.points);
}

/** The supposition that changes nothing. */
export function asForecast(model: WhatIfModel, situation: WhatIfSituation): Supposition {
  const shareOf = (answer: string) => situation.shares[model.answers.indexOf(answer)] ?? 0;
  return { screen: shareOf('screen'), quick: shareOf('quick'), backOut: situation.back?.out ?? null, trust: 1 };
}

/**
 * Answer shares with screens and quick game set; the others keep their proportions and fill what is left. Screens and
 * quick game that together exceed one are cut back in proportion.
 */
export function supposedShares(
  answers: readonly string[],
  shares: readonly number[],
  { screen, quick }: Pick<Supposition, 'screen' | 'quick'>,
): readonly number[] {
  const over = Math.max(1, screen + quick);
  const fixed = new Map([
    ['screen', screen / over],
    ['quick', quick / over],
  ]);
  const isOther = (i: number) => !fixed.has(answers[i] ?? '');
  const others = shares.reduce((sum, share, i) => sum + (isOther(i) ? share : 0), 0);
  const left = 1 - (screen + quick) / over;
  return shares.map((share, i) => fixed.get(answers[i] ?? '') ?? (others > 0 ? (share / others) * left : 0));
}

/**
 * A family's values with the back out as often as supposed: as forecast where he is out as often as forecast, and from
 * there in a straight line to the values with him always in and always out, which were worked out in full.
 */
function valuesWithBack({ values, back }: WhatIfSituation, family: number, backOut: number | null): readonly number[] {
  const own = values[family] ?? [];
  if (back === null || backOut === null || backOut === back.out) return own;
  const more = backOut > back.out;
  const far = more ? (backOut - back.out) / (1 - back.out) : (back.out - backOut) / back.out;
  const change = (more ? back.whenOut : back.whenIn)[family] ?? [];
  return own.map((value, answer) => value + far * (change[answer] ?? 0));
}

function worstValue(values: readonly number[]): number {
  return values.length === 0 ? 0 : Math.min(...values);
}

function freeShare(free: WhatIfFamily['free'], backOut: number | null): number | null {
  if (free === null || backOut === null) return null;
  return backOut * free.backOut + (1 - backOut) * free.backIn;
}
