import { ANSWERS, type Answer, isPass } from '../../game/answers.ts';
import type { ColumnName } from '../../game/columns.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { FIT_FEATURES, type FitFeature } from '../../game/fit-features.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { protectorCodes } from '../forecast/target-codes.ts';
import { answerCodes } from '../snap/answer.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { receiverCodes } from '../snap/look.ts';
import { namedWords } from '../snap/named-words.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { PASS, runOrPassCodes } from '../snap/run-or-pass.ts';

/** The code of a snap on which a feature has no word at all, such as the back's job on a run: no rule is met by it. */
export const NO_WORD = 254;

/**
 * When a safety who waits for the back to block is home, in seconds from the snap: from seven or eight yards through the
 * A or B gap in about 2.3 to 2.5 seconds at college speed, and 0.4 to 0.8 of reading the back; judgment.
 */
export const LATE_RUSH_SECONDS = 2.8;

/** The word of every snap for every feature, as an index into its words; 254 has no word, 255 was not charted. */
export type SnapFeatures = Readonly<Record<FitFeature, Uint8Array>>;

/** The column to chart for each feature. */
export const FEATURE_COLUMN: Readonly<Record<FitFeature, ColumnName>> = {
  answer: 'play_kind',
  back: 'back_action',
  ball: 'time_to_throw',
  protectors: 'protectors',
  thrown_to: 'target_zone',
  scramble: 'result',
  routes: 'concept',
  receivers: 'receivers',
  bunch: 'formation',
  backs: 'personnel',
  tight_ends: 'personnel',
  motion: 'motion',
  tempo: 'tempo',
  checked: 'checked',
  option_tag: 'option_tag',
};

/** What the rules may ask of every snap of a film. */
export function snapFeatures(film: Film, cuts: SituationCuts): SnapFeatures {
  const isRun = runs(film);
  const onPasses = (codes: Uint8Array) => codes.map((code, i) => (isRun(i) ? NO_WORD : code));
  const wordsOf = (column: ColumnName, feature: FitFeature) =>
    codesBySnap(film.size, (i) => codeOf(feature, textAt(film, column, i)));
  const answers = answerCodes(film, cuts);
  return {
    answer: answers,
    back: onPasses(wordsOf('back_action', 'back')),
    ball: onPasses(codesBySnap(film.size, (i) => ballCode(film, i, answers))),
    protectors: onPasses(protectorCodes(film)),
    thrown_to: onPasses(codesBySnap(film.size, (i) => throwCode(film, i))),
    scramble: codesBySnap(film.size, (i) => (isRun(i) ? SCRAMBLE_NO : scrambleCode(film, i))),
    routes: onPasses(routeCodes(film)),
    receivers: receiverCodes(film),
    bunch: bunchCodes(film),
    backs: codesBySnap(film.size, (i) => personnelCode(film, i, 0)),
    tight_ends: codesBySnap(film.size, (i) => personnelCode(film, i, 1)),
    motion: wordsOf('motion', 'motion'),
    tempo: wordsOf('tempo', 'tempo'),
    checked: wordsOf('checked', 'checked'),
    option_tag: wordsOf('option_tag', 'option_tag'),
  };
}

/** A snap of which nothing is known, where their film tells no answers apart. */
export const PASS_OF_ANY_KIND = Object.fromEntries(
  Object.keys(FIT_FEATURES).map((name) => [name, NOT_KNOWN]),
) as Readonly<Record<FitFeature, number>>;

/** A snap of which the answer is known and nothing else: what stands for an answer that film has not shown yet. */
export function answerAlone(answer: Answer): Readonly<Record<FitFeature, number>> {
  const names = Object.keys(FIT_FEATURES) as FitFeature[];
  const codes = names.map(
    (name) => [name, !isPass(answer) && PASS_FEATURES.includes(name) ? NO_WORD : NOT_KNOWN] as const,
  );
  return { ...(Object.fromEntries(codes) as Record<FitFeature, number>), answer: ANSWERS.indexOf(answer) };
}

const PASS_FEATURES: readonly FitFeature[] = ['back', 'ball', 'protectors', 'thrown_to', 'scramble', 'routes'];
const NOT_THROWN: readonly string[] = ['sack', 'scramble', 'throwaway'];
const HELD_BY_RESULT: readonly string[] = ['sack', 'scramble'];
const OUT_AT_ONCE: readonly number[] = [ANSWERS.indexOf('screen'), ANSWERS.indexOf('quick')];
const [HELD, OUT] = [0, 1];
const [SCRAMBLE_YES, SCRAMBLE_NO] = [0, 1];
const CROSSER = /mesh|cross|drag|shallow|drive|under/i;
const PICK = /pick|rub|switch/i;
const BUNCH = /bunch|stack/i;

function runs(film: Film): (index: number) => boolean {
  const codes = runOrPassCodes(film);
  return (index) => codes[index] !== PASS && codes[index] !== NOT_KNOWN;
}

function codeOf(feature: FitFeature, word: string | undefined): number {
  const code = word === undefined ? -1 : (FIT_FEATURES[feature] as readonly string[]).indexOf(word);
  return code === -1 ? NOT_KNOWN : code;
}

/** A sack and a scramble carry no time and are balls held; a screen and a quick throw never are. */
function ballCode(film: Film, index: number, answers: Uint8Array): number {
  if (HELD_BY_RESULT.includes(textAt(film, 'result', index) ?? '')) return HELD;
  if (OUT_AT_ONCE.includes(answers[index] ?? NOT_KNOWN)) return OUT;
  const seconds = numberAt(film, 'time_to_throw', index);
  if (seconds === undefined) return NOT_KNOWN;
  return seconds >= LATE_RUSH_SECONDS ? HELD : OUT;
}

function throwCode(film: Film, index: number): number {
  if (NOT_THROWN.includes(textAt(film, 'result', index) ?? '')) return NO_WORD;
  return codeOf('thrown_to', textAt(film, 'target_zone', index));
}

function scrambleCode(film: Film, index: number): number {
  const [kind, result] = [textAt(film, 'play_kind', index), textAt(film, 'result', index)];
  if (kind === 'scramble' || result === 'scramble') return SCRAMBLE_YES;
  return result === undefined ? NOT_KNOWN : SCRAMBLE_NO;
}

/** Crossers and picks where the staff's names for plays tell them; where both are named the pick decides. */
function routeCodes(film: Film): Uint8Array {
  const [crosser, pick] = [namedWords(film, 'concept', CROSSER), namedWords(film, 'concept', PICK)];
  return codesBySnap(film.size, (i) => {
    if (pick(i)) return codeOf('routes', 'picks');
    if (crosser(i)) return codeOf('routes', 'crossers');
    return crosser(i) === undefined && pick(i) === undefined ? NOT_KNOWN : codeOf('routes', 'other');
  });
}

function bunchCodes(film: Film): Uint8Array {
  const named = namedWords(film, 'formation', BUNCH);
  return codesBySnap(film.size, (i) => {
    const bunched = named(i);
    if (bunched === undefined) return NOT_KNOWN;
    return codeOf('bunch', bunched ? 'yes' : 'no');
  });
}

function personnelCode(film: Film, index: number, digit: 0 | 1): number {
  const count = Number(textAt(film, 'personnel', index)?.[digit]);
  if (Number.isNaN(count)) return NOT_KNOWN;
  return count >= 2 ? 0 : 1;
}
