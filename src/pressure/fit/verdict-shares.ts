import { FIT_FEATURES, type FitFeature } from '../../game/fit-rules.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { BlankCells } from './feature-guess.ts';
import { NO_WORD } from './snap-features.ts';
import { meets, type ReadyRule, type SnapWords, VERDICTS, type Verdict, verdictOf } from './verdict.ts';

/** What one word would do to right less wrong, were it on a snap with a blank cell. */
export interface OpenWord {
  readonly feature: FitFeature;
  /** Words that do the same to the family's rules. */
  readonly codes: readonly number[];
  /** Chance of these words, and what they change right less wrong by, on average over the snap: chance times change. */
  readonly chance: number;
  readonly change: number;
}

/** What the rules of one theory say of one snap, blank cells filled as far as the film allows. */
export interface SnapVerdict {
  /** Share of each verdict, in the order of the verdicts; sums to 1. */
  readonly shares: readonly number[];
  /** Share of the snap that rests on a typical word, whether or not it matters, 0 to 1. */
  readonly guessed: number;
  readonly open: readonly OpenWord[];
}

/**
 * Makes a reader of snaps for one theory. A snap on which everything the rules ask was charted has one verdict. A blank
 * cell is filled with the words of their other snaps with that answer; where it would take a typical word for a rule to
 * speak, and the verdict turns on it, the snap is as open as that word is likely. Snaps that look the same are read once.
 */
export function verdictReader(rules: readonly ReadyRule[], blanks: BlankCells): (snap: SnapWords) => SnapVerdict {
  const asked = new Set(rules.flatMap((ready) => ready.features));
  const features = (Object.keys(FIT_FEATURES) as FitFeature[]).filter((feature) => asked.has(feature));
  const read = new Map<string, SnapVerdict>();
  const theory = { rules, features, blanks, choices: new Map() };
  return (snap) => {
    const key = String.fromCharCode(snap.answer, ...features.map((feature) => snap[feature]));
    const found = read.get(key) ?? readSnap(theory, snap);
    read.set(key, found);
    return found;
  };
}

interface TheoryRules {
  readonly rules: readonly ReadyRule[];
  /** In the order of the vocabulary: a blank answer is filled first, for the other blanks depend on it. */
  readonly features: readonly FitFeature[];
  readonly blanks: BlankCells;
  /** Filled as it is asked. */
  readonly choices: Map<string, readonly Choice[]>;
}

/** Which of the rules a word speaks to; empty where it speaks to none. */
function spokenTo(rules: readonly ReadyRule[], feature: FitFeature, code: number): number[] {
  return rules.flatMap(({ features, wanted }, r) => {
    const at = features.indexOf(feature);
    return at >= 0 && wanted[at]?.includes(code) ? [r] : [];
  });
}

/** Words of a blank cell that do the same to the rules. */
interface Choice {
  readonly feature: FitFeature;
  readonly codes: readonly number[];
  readonly chance: number;
  readonly guessed: boolean;
  /** False for words no rule asks for. */
  readonly speaks: boolean;
}

function readSnap(theory: TheoryRules, snap: SnapWords): SnapVerdict {
  const blank = theory.features.filter((feature) => snap[feature] === NOT_KNOWN);
  const sums = { shares: new Array<number>(VERDICTS.length).fill(0), guessed: 0, open: new Map<string, OpenWord>() };
  // What was charted decides against most rules, whatever the blanks hold.
  const rules = theory.rules.filter((ready) => meets(ready, snap) !== false);
  // Filled and emptied in place: a film with many blank cells has some hundred thousand ways of filling them.
  const filled: Record<FitFeature, number> = { ...snap };
  const path: Choice[] = [];
  const walk = (at: number): void => {
    const feature = blank[at];
    if (feature === undefined) addCase({ rules, filled, path }, sums);
    for (const choice of feature === undefined ? [] : choicesOf(theory, feature, filled.answer)) {
      filled[choice.feature] = wordOf(choice);
      path.push(choice);
      walk(at + 1);
      path.pop();
      filled[choice.feature] = NOT_KNOWN;
    }
  };
  walk(0);
  return { shares: sums.shares, guessed: sums.guessed, open: [...sums.open.values()] };
}

/** The first of words that are alike, or no word where no rule asks for them. */
function wordOf({ speaks, codes }: Choice): number {
  return speaks ? (codes[0] ?? NO_WORD) : NO_WORD;
}

function choicesOf(theory: TheoryRules, feature: FitFeature, answer: number): readonly Choice[] {
  const key = `${feature} ${answer}`;
  const choices = theory.choices.get(key) ?? groupedChoices(theory, feature, answer);
  theory.choices.set(key, choices);
  return choices;
}

function groupedChoices({ blanks, rules }: TheoryRules, feature: FitFeature, answer: number): Choice[] {
  const groups = new Map<string, { codes: number[]; chance: number; guessed: boolean; speaks: boolean }>();
  for (const { code, chance, guessed } of blanks(feature, answer)) {
    const mask = spokenTo(rules, feature, code).join(' ');
    const key = `${guessed} ${mask}`;
    const group = groups.get(key) ?? { codes: [], chance: 0, guessed, speaks: mask !== '' };
    group.codes.push(code);
    group.chance += chance;
    groups.set(key, group);
  }
  return [...groups.values()].map((group) => ({ feature, ...group }));
}

interface Case {
  /** The rules that the charted words leave open. */
  readonly rules: readonly ReadyRule[];
  readonly filled: Record<FitFeature, number>;
  readonly path: readonly Choice[];
}

interface Sums {
  readonly shares: number[];
  guessed: number;
  readonly open: Map<string, OpenWord>;
}

/** Adds one way of filling the blanks: where a typical word turns the verdict, the snap stays open between the two. */
function addCase({ rules, filled, path }: Case, sums: Sums): void {
  let chance = 1;
  for (const choice of path) chance *= choice.chance;
  const speaking = path.filter(({ guessed, speaks }) => guessed && speaks);
  const verdict = verdictOf(rules, filled);
  const without = speaking.length === 0 ? verdict : verdictWithout(rules, filled, speaking);
  add(sums.shares, between(verdict, without), chance);
  if (path.some(({ guessed }) => guessed)) sums.guessed += chance;
  if (verdict !== without && speaking.length === 1)
    addOpen(sums.open, speaking[0] as Choice, { chance, change: chance * (SCORE[verdict] - SCORE[without]) });
}

/** The verdict were the guessed words not there. */
function verdictWithout(rules: readonly ReadyRule[], filled: Case['filled'], guesses: readonly Choice[]): Verdict {
  for (const { feature } of guesses) filled[feature] = NO_WORD;
  const verdict = verdictOf(rules, filled);
  for (const choice of guesses) filled[choice.feature] = wordOf(choice);
  return verdict;
}

const SCORE: Readonly<Record<Verdict, number>> = {
  right: 1,
  neutral: 0,
  wrong: -1,
  may_be_right: 0,
  may_be_wrong: 0,
  open: 0,
};

function between(one: Verdict, other: Verdict): Verdict {
  if (one === other) return one;
  if (![one, other].includes('neutral')) return 'open';
  return [one, other].includes('right') ? 'may_be_right' : 'may_be_wrong';
}

function add(shares: number[], verdict: Verdict, chance: number): void {
  const at = VERDICTS.indexOf(verdict);
  shares[at] = (shares[at] ?? 0) + chance;
}

function addOpen(open: Sums['open'], { feature, codes }: Choice, more: { chance: number; change: number }): void {
  const key = `${feature} ${codes.join(' ')}`;
  const { chance, change } = open.get(key) ?? { chance: 0, change: 0 };
  open.set(key, { feature, codes, chance: chance + more.chance, change: change + more.change });
}
