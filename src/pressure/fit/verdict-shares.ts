import { ANSWERS } from '../../game/answers.ts';
import { FIT_FEATURES, type FitFeature } from '../../game/fit-features.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { BlankCells } from './feature-guess.ts';
import { type Choice, type TheoryRules, theoryRules, type Way, waysToFill } from './fill-blanks.ts';
import { chartedStanding, verdictOfStanding } from './standing.ts';
import { type ReadyRule, type SnapWords, VERDICTS, type Verdict } from './verdict.ts';

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
  /** Typical words that turn the verdict by themselves, worked out when it is asked for. */
  readonly open: () => readonly OpenWord[];
}

/**
 * Makes a reader of snaps for one theory. A snap on which everything the rules ask was charted has one verdict. A blank
 * cell is filled with the words of their other snaps with that answer; where it would take a typical word for a rule to
 * speak, and the verdict turns on it, the snap is as open as that word is likely. Snaps that look the same are read once.
 */
export function verdictReader(rules: readonly ReadyRule[], blanks: BlankCells): (snap: SnapWords) => SnapVerdict {
  const asked = new Set(rules.flatMap((ready) => ready.features));
  const features = (Object.keys(FIT_FEATURES) as FitFeature[]).filter((feature) => asked.has(feature));
  const theory = theoryRules(rules, features, blanks);
  const read = new Map<string, SnapVerdict>();
  return (snap) => {
    const key = String.fromCharCode(snap.answer, ...features.map((feature) => snap[feature]));
    const found = read.get(key) ?? readSnap(theory, snap);
    read.set(key, found);
    return found;
  };
}

function readSnap(theory: TheoryRules, snap: SnapWords): SnapVerdict {
  const shares = new Array<number>(VERDICTS.length).fill(0);
  let guessed = 0;
  for (const way of waysToFill(theory, snap, () => true)) {
    const at = VERDICTS.indexOf(verdictOfWay(way));
    shares[at] = (shares[at] as number) + way.chance;
    if (way.guessed) guessed += way.chance;
  }
  let words: readonly OpenWord[] | undefined;
  const open = () => {
    words ??= openWords(theory, snap);
    return words;
  };
  return { shares, guessed, open };
}

/** Where a typical word turns the verdict, the snap stays open between the two. */
function verdictOfWay({ said, surely }: Way): Verdict {
  const [one, other] = [verdictOfStanding(said), verdictOfStanding(surely)];
  if (one === other) return one;
  if (one !== 'neutral' && other !== 'neutral') return 'open';
  return one === 'right' || other === 'right' ? 'may_be_right' : 'may_be_wrong';
}

/** The typical words that turn the verdict where no other guess speaks. */
function openWords(theory: TheoryRules, snap: SnapWords): OpenWord[] {
  const words = new Map<string, OpenWord>();
  for (const word of guessedWords(theory, snap)) {
    const turned = waysToFill(theory, snap, (choice) =>
      choice.feature === word.feature ? choice === word : !isGuessThatSpeaks(choice),
    ).filter(({ said, surely }) => verdictOfStanding(said) !== verdictOfStanding(surely));
    if (turned.length > 0) addOpen(words, word, turned);
  }
  return [...words.values()];
}

/** What a guess may put into the blank cells a rule waits for, whatever answer a blank answer stands for. */
function guessedWords({ rules, features, choices }: TheoryRules, snap: SnapWords): Choice[] {
  const { waiting } = chartedStanding(rules, snap);
  const answers = snap.answer === NOT_KNOWN ? [...ANSWERS.keys(), NOT_KNOWN] : [snap.answer];
  return features
    .filter((name) => snap[name] === NOT_KNOWN && waiting.some((ready) => ready.features.includes(name)))
    .flatMap((feature) => answers.flatMap((answer) => choices(feature, answer)))
    .filter(isGuessThatSpeaks);
}

function isGuessThatSpeaks({ guessed, speaks }: Choice): boolean {
  return guessed && speaks;
}

const SCORE: Readonly<Record<ReturnType<typeof verdictOfStanding>, number>> = { right: 1, neutral: 0, wrong: -1 };

function addOpen(words: Map<string, OpenWord>, { feature, codes }: Choice, ways: readonly Way[]): void {
  const key = `${feature} ${codes.join(' ')}`;
  let { chance, change } = words.get(key) ?? { chance: 0, change: 0 };
  for (const way of ways) {
    chance += way.chance;
    change += way.chance * (SCORE[verdictOfStanding(way.said)] - SCORE[verdictOfStanding(way.surely)]);
  }
  words.set(key, { feature, codes, chance, change });
}
