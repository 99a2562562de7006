import { type Answer, isAnswer } from '../../game/answers.ts';
import type { Call } from '../../game/call-library.ts';
import { familyFacts, isFamily } from '../../game/families.ts';
import type { Target } from '../../pressure/forecast/forecast-result.ts';
import type { ProtectionPicture } from '../../pressure/protection/protection-result.ts';
import { cleanText } from './clean-text.ts';

/** The staff's word for each answer. */
export const ANSWER_LABELS: Readonly<Record<Answer, string>> = {
  run: 'Run',
  quarterback_run: 'QB run',
  screen: 'Screen',
  quick: 'Quick',
  dropback: 'Dropback',
  deep_shot: 'Deep shot',
  movement: 'Movement',
};

/** What each forecast asks, in words. */
export const TARGET_LABELS: Readonly<Record<Target, string>> = {
  answer: 'What they do with the ball',
  run_or_pass: 'Pass',
  screen: 'Screen, when they pass',
  quick_release: 'Ball out within 2.5 s, when timed',
  motion: 'Motion or shift',
  protectors: 'How many protect',
  slide_to_back: 'Line slides to the back',
  slide_to_field: 'Line slides to the field',
  slide_to_strength: 'Line slides to the strength',
  back_job: "The back's job on a pass",
};

/** The word for a family, or the id made readable when it is not a family we know. */
export function familyLabel(family: string): string {
  return isFamily(family) ? capital(familyFacts(family).words) : plainWords(family);
}

/**
 * A call's family with the name of its coverage, where that says more.
 *
 * @example familyAndCoverage({ family: 'hot', coverage: 'hot three' }) // "Hot, hot three"
 * @example familyAndCoverage({ family: 'man_free', coverage: 'man free' }) // "Man-free"
 */
export function familyAndCoverage({ family, coverage }: Pick<Call, 'family' | 'coverage'>): string {
  const label = familyLabel(family);
  const same = lettersOf(label) === lettersOf(coverage);
  return same ? label : `${label}, ${coverage}`;
}

function lettersOf(words: string): string {
  return words.toLowerCase().replaceAll(/[\s_-]/g, '');
}

/** The word for an answer, or the id made readable. */
export function answerLabel(answer: string): string {
  return isAnswer(answer) ? ANSWER_LABELS[answer] : capital(plainWords(answer));
}

/**
 * The word for an answer inside a sentence: small letters, but for what is an abbreviation.
 *
 * @example answerInSentence('quarterback_run') // "QB run"
 */
export function answerInSentence(answer: string): string {
  const label = answerLabel(answer);
  return /^[A-Z]{2}/.test(label) ? label : label.toLowerCase();
}

/** The word for a class of a forecast. */
export function className(target: Target, name: string): string {
  if (target === 'answer') return answerLabel(name);
  if (target === 'protectors') return `${plainWords(name)} protect`;
  return plainWords(name);
}

/** A protection with its slide, in words. */
export function pictureLabel(picture: ProtectionPicture): string {
  const name = plainWords(picture.protection);
  return [name, SLIDE_WORDS[picture.slide], BACK_WORDS[picture.back]].filter((word) => word !== '').join(', ');
}

const SLIDE_WORDS: Readonly<Record<ProtectionPicture['slide'], string>> = {
  near: 'slide toward us',
  far: 'slide away from us',
  none: '',
};

const BACK_WORDS: Readonly<Record<ProtectionPicture['back'], string>> = {
  in: 'back stays',
  out: 'back out inside',
  wide_near: 'back wide toward us',
  wide_far: 'back wide away',
};

/**
 * An id as words with a capital first.
 *
 * @example plainWords('releases_wide') // "Releases wide"
 */
export function plainWords(id: string): string {
  const words = cleanText(id).replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The text with its first letter large, as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
