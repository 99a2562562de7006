import type { FitFeature } from '../../game/fit-features.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { BlankCells } from './feature-guess.ts';
import { NO_WORD } from './snap-features.ts';
import { chartedStanding, type Standing, standingAfter } from './standing.ts';
import type { ReadyRule, SnapWords } from './verdict.ts';

/** Words of a blank cell that do the same to the rules; an answer alone, for other cells depend on it. */
export interface Choice {
  readonly feature: FitFeature;
  readonly codes: readonly number[];
  readonly chance: number;
  readonly guessed: boolean;
  /** False for words no rule asks for. */
  readonly speaks: boolean;
}

/** The rules of one theory, with what blank cells may stand for. */
export interface TheoryRules {
  readonly rules: readonly ReadyRule[];
  /** In the order of the vocabulary: a blank answer is filled first, for the other blanks depend on it. */
  readonly features: readonly FitFeature[];
  /** What a cell may stand for on a snap with an answer (its index, or 255). */
  readonly choices: (feature: FitFeature, answer: number) => readonly Choice[];
}

/** All ways of filling a snap's blank cells after which the rules say the same. */
export interface Way {
  /** Index of the answer, 255 where it is not known. */
  readonly answer: number;
  /** What the rules say, and what they would say were the guesses not there. */
  readonly said: Standing;
  readonly surely: Standing;
  /** Whether a cell was filled by a guess. */
  readonly guessed: boolean;
  readonly chance: number;
}

/** A theory with its words grouped by the rules they speak to. */
export function theoryRules(
  rules: readonly ReadyRule[],
  features: readonly FitFeature[],
  blanks: BlankCells,
): TheoryRules {
  const found = new Map<string, readonly Choice[]>();
  const choices = (feature: FitFeature, answer: number) => {
    const key = `${feature} ${answer}`;
    const known = found.get(key) ?? groupedChoices(rules, feature, blanks(feature, answer));
    found.set(key, known);
    return known;
  };
  return { rules, features, choices };
}

function groupedChoices(rules: readonly ReadyRule[], feature: FitFeature, words: ReturnType<BlankCells>): Choice[] {
  const groups = new Map<string, { codes: number[]; chance: number; guessed: boolean; speaks: boolean }>();
  for (const { code, chance, guessed } of words) {
    const heard = spokenTo(rules, feature, code);
    const key = `${guessed} ${feature === 'answer' ? code : heard.join(' ')}`;
    const group = groups.get(key) ?? { codes: [], chance: 0, guessed, speaks: heard.length > 0 };
    group.codes.push(code);
    group.chance += chance;
    groups.set(key, group);
  }
  return [...groups.values()].map((group) => ({ feature, ...group }));
}

/** Which of the rules a word speaks to; empty where it speaks to none. */
function spokenTo(rules: readonly ReadyRule[], feature: FitFeature, code: number): number[] {
  return rules.flatMap(({ features, wanted }, r) => {
    const at = features.indexOf(feature);
    return at >= 0 && wanted[at]?.includes(code) ? [r] : [];
  });
}

/**
 * Fills the blank cells of a snap one after the other with all words they may stand for. Ways that have come to the same
 * are put together at every cell: a film with many blank cells has hundreds of thousands of ways, which say little.
 *
 * @param allowed - choices that may be taken; the chances of the ways sum to 1 when all may
 */
export function waysToFill(theory: TheoryRules, snap: SnapWords, allowed: (choice: Choice) => boolean): Way[] {
  const charted = chartedStanding(theory.rules, snap);
  const blank = theory.features.filter((feature) => snap[feature] === NOT_KNOWN);
  const start: Way = { answer: snap.answer, said: charted, surely: charted, guessed: false, chance: 1 };
  return blank.reduce(
    (ways, feature, at) => {
      const rest = blank.slice(at + 1);
      const next = ways.flatMap((way) =>
        theory
          .choices(feature, way.answer)
          .filter(allowed)
          .map((choice) => wayAfter(way, choice, rest)),
      );
      return together(next);
    },
    [start],
  );
}

function wayAfter(way: Way, choice: Choice, rest: readonly FitFeature[]): Way {
  const { feature, codes, guessed, speaks } = choice;
  const code = codes[0] ?? NO_WORD;
  const said = standingAfter(way.said, { feature, code, rest });
  const alike = way.surely === way.said && !(guessed && speaks);
  return {
    answer: feature === 'answer' ? code : way.answer,
    said,
    surely: alike ? said : standingAfter(way.surely, { feature, code: guessed ? NO_WORD : code, rest }),
    guessed: way.guessed || guessed,
    chance: way.chance * choice.chance,
  };
}

function together(ways: readonly Way[]): Way[] {
  const found = new Map<string, Way>();
  for (const way of ways) {
    const key = `${way.answer} ${way.guessed} ${standingKey(way.said)} ${standingKey(way.surely)}`;
    const known = found.get(key);
    found.set(key, known ? { ...known, chance: known.chance + way.chance } : way);
  }
  return [...found.values()];
}

function standingKey({ said, waiting }: Standing): string {
  return `${said} ${waiting.map(({ rule }) => rule.id).join()}`;
}
