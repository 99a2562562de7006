import { type Film, numberAt } from '../../game/film.ts';
import { PASS_ENDINGS } from '../../game/run-or-pass.ts';
import { BACK_ACTIONS } from '../../game/vocabulary.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { type SlideReference, slideCodes } from '../snap/field-side.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { exceptOnRuns } from '../snap/run-or-pass.ts';
import { wordClasses } from '../snap/word-classes.ts';

/** A throw out by then is quick for this question, in seconds; the cut at which it was measured on open play data. */
export const QUICK_RELEASE_SECONDS = 2.5;

/**
 * Screen (0) or not (1) on every pass; 255 on runs and where it is not known. A snap charted only as `pass` counts as
 * no screen when its file uses the word `screen` at all; in a file that never does, nobody separated screens. A sack
 * or a scramble is not a screen unless it was charted as one.
 */
export function screenCodes(chart: Film): Uint8Array {
  const tellsApart = new Set<number>();
  const classifiedAt = wordClasses(chart, 'play_kind', (kind) => screenCode(kind, true));
  const unclassifiedAt = wordClasses(chart, 'play_kind', (kind) => screenCode(kind, false));
  for (let i = 0; i < chart.size; i++) {
    if (classifiedAt(i) === 0) tellsApart.add(chart.sourceOf[i] as number);
  }
  const hadToPass = wordClasses(chart, 'result', (result) => PASS_ENDINGS.includes(result ?? ''));
  return codesBySnap(chart.size, (i) => {
    const code = tellsApart.has(chart.sourceOf[i] as number) ? classifiedAt(i) : unclassifiedAt(i);
    return code === NOT_KNOWN && hadToPass(i) ? 1 : code;
  });
}

/** Released within 2.5 seconds (0) or later (1); 255 on runs and where no time was charted, as on sacks and scrambles. */
export function quickReleaseCodes(chart: Film): Uint8Array {
  const codes = codesBySnap(chart.size, (i) => {
    const seconds = numberAt(chart, 'time_to_throw', i);
    if (seconds === undefined) return NOT_KNOWN;
    return seconds <= QUICK_RELEASE_SECONDS ? 0 : 1;
  });
  return exceptOnRuns(chart, codes);
}

/** Slide to (0) or away from (1) its reference; 255 on runs and where either was not charted. */
export function slideTargetCodes(chart: Film, reference: SlideReference): Uint8Array {
  return exceptOnRuns(chart, slideCodes(chart, reference));
}

/** Any movement before the snap (0) or none (1); 255 where motion was not charted. */
export function motionCodes(chart: Film): Uint8Array {
  const motionAt = wordClasses(chart, 'motion', (motion) => {
    if (motion === undefined) return NOT_KNOWN;
    return motion === 'none' ? 1 : 0;
  });
  return codesBySnap(chart.size, motionAt);
}

/** Up to five (0), six (1), seven or more protectors (2); 255 on runs and where they were not charted. */
export function protectorCodes(chart: Film): Uint8Array {
  const codes = codesBySnap(chart.size, (i) => {
    const protectors = numberAt(chart, 'protectors', i);
    return protectors === undefined ? NOT_KNOWN : Math.min(2, Math.max(0, protectors - 5));
  });
  return exceptOnRuns(chart, codes);
}

/** The back's job as an index into the vocabulary's back actions; 255 on runs and where it was not charted. */
export function backJobCodes(chart: Film): Uint8Array {
  const jobAt = wordClasses(chart, 'back_action', (action = '') => {
    const code = (BACK_ACTIONS as readonly string[]).indexOf(action);
    return code === -1 ? NOT_KNOWN : code;
  });
  return exceptOnRuns(chart, codesBySnap(chart.size, jobAt));
}

const PASSES_NEVER_A_SCREEN = ['quick', 'dropback', 'deep_shot', 'movement', 'scramble'];
const PASSES_THAT_MAY_HIDE_ONE = ['pass', 'play_action'];

function screenCode(kind: string | undefined, tellsApart: boolean): number {
  if (kind === 'screen') return 0;
  if (kind !== undefined && PASSES_NEVER_A_SCREEN.includes(kind)) return 1;
  return tellsApart && kind !== undefined && PASSES_THAT_MAY_HIDE_ONE.includes(kind) ? 1 : NOT_KNOWN;
}
