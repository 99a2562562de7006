import { ANSWERS, type Answer } from '../../game/answers.ts';
import type { CallLibrary } from '../../game/call-library.ts';
import { FAMILIES, type Family } from '../../game/families.ts';
import { type Film, numberAt, rowsOf, textAt } from '../../game/film.ts';
import type { FitFeature } from '../../game/fit-features.ts';
import type { FitRule } from '../../game/fit-rules.ts';
import { freeWordKey } from '../../game/free-word.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { givenRules } from '../fit/given-rules.ts';
import { snapFeatures } from '../fit/snap-features.ts';
import { meets, type ReadyRule, readyRules, rulesOf, type SnapWords, verdictOf } from '../fit/verdict.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { isHeld, outcomeAt } from '../snap/outcome.ts';

/** What the rules make of one of our calls, once it is known what came; `open` where a trigger was not charted. */
export type Mark = 'right' | 'neutral' | 'wrong' | 'open';

/** One of our snaps with its mark. */
export interface MarkedSnap {
  /** Line of our sheet. */
  readonly row: number;
  readonly snap: number | null;
  readonly call: string | null;
  readonly family: Family;
  readonly mark: Mark;
  /** Ids of the rules that spoke. */
  readonly rules: readonly string[];
  /** True for a loss, a stop or a takeaway; null where the outcome is not known. */
  readonly held: boolean | null;
}

/** Snaps with one answer on which a rule's trigger was met: those with its families, and those with any other. */
export interface RuleAnswer {
  readonly answer: Answer;
  readonly held: number;
  readonly snaps: number;
  readonly otherHeld: number;
  readonly otherSnaps: number;
}

/** One rule in one game. */
export interface RuleGame {
  readonly rule: string;
  readonly says: FitRule['says'];
  readonly answers: readonly RuleAnswer[];
}

/** The rules on what then came in one game. */
export interface GameFit {
  readonly snaps: readonly MarkedSnap[];
  /** How often calls so marked held, of those with a known outcome. */
  readonly right: Share;
  readonly neutral: Share;
  readonly wrong: Share;
  readonly open: number;
  readonly rules: readonly RuleGame[];
  /** Rules that ask for something charted on no snap of the game: they were left out of the marks. */
  readonly notAsked: readonly string[];
}

/** What the marks are made from. */
export interface RuleRecordInput {
  readonly rules: readonly FitRule[];
  readonly library: CallLibrary | null;
  readonly ours: Film;
  /** The opponent's snaps of the game; what our sheet leaves blank is taken from the same snap there. */
  readonly game: Film;
  readonly cuts: SituationCuts;
}

/** Marks each of our calls right, neutral or wrong by the rules on what then came. */
export function ruleRecord(input: RuleRecordInput): GameFit {
  const snaps = ourSnaps(input);
  const charted = (feature: FitFeature) => snaps.some(({ words }) => words[feature] !== NOT_KNOWN);
  const [ready, blank] = partition(readyRules(input.rules), ({ features }) => features.every(charted));
  const given = new Map(
    (input.library?.calls ?? []).map((call) => [freeWordKey(call.name), readyRules(givenRules(call))]),
  );
  const marked = snaps.map((snap) => {
    const own =
      snap.call === undefined
        ? []
        : (given.get(freeWordKey(snap.call)) ?? []).filter(({ features }) => features.every(charted));
    return markedSnap(snap, [...rulesOf(snap.family, ready), ...own]);
  });
  const heldOn = (mark: Mark) => {
    const judged = marked.filter((one) => one.mark === mark && one.held !== null);
    return share(judged.filter(({ held }) => held === true).length, judged.length);
  };
  return {
    snaps: marked,
    right: heldOn('right'),
    neutral: heldOn('neutral'),
    wrong: heldOn('wrong'),
    open: marked.filter(({ mark }) => mark === 'open').length,
    rules: ready.map((rule) => ruleGame(rule, snaps)).filter(({ answers }) => answers.length > 0),
    notAsked: blank.map(({ rule }) => rule.id),
  };
}

/** One of our snaps as the rules read it. */
interface OurSnap {
  readonly row: number;
  readonly snap: number | null;
  readonly call: string | undefined;
  readonly family: Family;
  readonly words: SnapWords;
  readonly held: boolean | null;
}

function ourSnaps({ ours, game, cuts }: RuleRecordInput): OurSnap[] {
  const [own, theirs] = [snapFeatures(ours, cuts), snapFeatures(game, cuts)];
  const places = new Map(Array.from({ length: game.size }, (_, i) => [snapKey(game, i), i]));
  const names = Object.keys(own) as FitFeature[];
  return rowsOf(ours).flatMap((i) => {
    const family = FAMILIES.find((name) => name === textAt(ours, 'family', i));
    if (!family) return [];
    const there = places.get(snapKey(ours, i));
    const codeOf = (name: FitFeature) => {
      const code = own[name][i] as number;
      return code === NOT_KNOWN && there !== undefined ? (theirs[name][there] as number) : code;
    };
    const words = Object.fromEntries(names.map((name) => [name, codeOf(name)])) as Record<FitFeature, number>;
    const [snap = null, call] = [numberAt(ours, 'snap', i), textAt(ours, 'call', i)];
    return [{ row: ours.rowOf[i] as number, snap, call, family, words, held: heldAt(ours, i) }];
  });
}

/** Game and number of a snap; a snap without a number is like no other. */
function snapKey(film: Film, index: number): string {
  const snap = numberAt(film, 'snap', index);
  return snap === undefined
    ? `no number, row ${index} of ${film.size}`
    : `${freeWordKey(textAt(film, 'game', index) ?? '')} ${snap}`;
}

function heldAt(ours: Film, index: number): boolean | null {
  const outcome = outcomeAt(ours, index);
  return outcome === undefined ? null : isHeld(outcome);
}

function markedSnap(
  { row, snap, call = undefined, family, words, held }: OurSnap,
  rules: readonly ReadyRule[],
): MarkedSnap {
  const verdict = verdictOf(rules, words);
  const mark = verdict === 'right' || verdict === 'neutral' || verdict === 'wrong' ? verdict : 'open';
  const spoke = rules.filter((ready) => meets(ready, words) === true).map(({ rule }) => rule.id);
  return { row, snap, call: call ?? null, family, mark, rules: spoke, held };
}

function ruleGame(ready: ReadyRule, snaps: readonly OurSnap[]): RuleGame {
  const met = snaps.filter(({ words, held }) => held !== null && meets(ready, words) === true);
  const answers = ANSWERS.map((answer, code) => {
    const here = met.filter(({ words }) => words.answer === code);
    const [own, other] = partition(here, ({ family }) => ready.rule.families.includes(family));
    return { answer, held: heldOf(own), snaps: own.length, otherHeld: heldOf(other), otherSnaps: other.length };
  });
  return {
    rule: ready.rule.id,
    says: ready.rule.says,
    answers: answers.filter((one) => one.snaps + one.otherSnaps > 0),
  };
}

function heldOf(snaps: readonly OurSnap[]): number {
  return snaps.filter(({ held }) => held === true).length;
}

function partition<Item>(items: readonly Item[], chosen: (item: Item) => boolean): [Item[], Item[]] {
  return [items.filter(chosen), items.filter((item) => !chosen(item))];
}
