import type { Target } from '../../pressure/forecast/forecast-result.ts';
import { className } from './label.ts';

/**
 * What is counted when a class of a forecast is counted: the question itself where there are two classes, with the back's
 * jobs named as his.
 *
 * @example habitName('slide_to_back', 'to') // "Slide to the back"
 * @example habitName('back_job', 'blocks') // "Back: blocks"
 */
export function habitName(target: Target, name: string): string {
  if (target === 'back_job') return `Back: ${name.replaceAll('_', ' ')}`;
  return QUESTIONS[target] ?? className(target, name);
}

/** A target of two classes is said by its first; the others by the class itself. */
const QUESTIONS: Readonly<Partial<Record<Target, string>>> = {
  run_or_pass: 'Any run',
  screen: 'Screen, when they pass',
  quick_release: 'Ball out within 2.5 seconds',
  motion: 'Motion or shift',
  slide_to_back: 'Slide to the back',
  slide_to_field: 'Slide to the wide side',
  slide_to_strength: 'Slide to the strength',
};
