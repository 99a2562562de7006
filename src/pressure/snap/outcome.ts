import { type Film, numberAt, textAt } from '../../game/film.ts';

/** How a snap ends for the offense, from the defense's best ordinary outcome on: the order of every outcome array. */
export const OUTCOME_KINDS = ['loss', 'stop', 'gain', 'explosive', 'takeaway'] as const;
/** One word of {@link OUTCOME_KINDS}. */
export type OutcomeKind = (typeof OUTCOME_KINDS)[number];

/** Whether the call held: they lost yards, were stopped, or lost the ball. */
export function isHeld(kind: OutcomeKind): boolean {
  return kind === 'loss' || kind === 'stop' || kind === 'takeaway';
}

/** What was charted of a snap that decides its outcome kind. */
export interface SnapOutcome {
  readonly down?: number | undefined;
  /** Yards to the first down or the goal line. */
  readonly toGo?: number | undefined;
  /** Yards gained, minus for lost. */
  readonly gain?: number | undefined;
  readonly result?: string | undefined;
  readonly playKind?: string | undefined;
}

/**
 * Share of the distance a play must gain to be a success on first, second, third and fourth down.
 *
 * @see Carroll, Palmer and Thorn 1988, The Hidden Game of Football
 */
export const SUCCESS_SHARES = [0.4, 0.6, 1, 1] as const;

/** Yards that make a pass, and a run, explosive; the cut of the open-data table. */
export const EXPLOSIVE_YARDS = { pass: 20, run: 12 } as const;

/**
 * The outcome kind of a snap, or undefined where it is not known. First match decides: interception or lost fumble is
 * a takeaway; a sack or lost yards a loss; a pass of 20 or a run of 12 an explosive; a gain that meets the success rule
 * a gain; anything else a stop. An incomplete pass without a charted gain gained nothing. A penalty is not an outcome.
 */
export function outcomeOf(snap: SnapOutcome): OutcomeKind | undefined {
  const decided = BY_RESULT[snap.result ?? ''];
  if (decided === 'none') return undefined;
  return decided ?? byGain(snap);
}

/** The outcome kind of one snap of a chart, or undefined where it is not known. */
export function outcomeAt(chart: Film, index: number): OutcomeKind | undefined {
  return outcomeOf({
    down: numberAt(chart, 'down', index),
    toGo: numberAt(chart, 'to_go', index),
    gain: numberAt(chart, 'gain', index),
    result: textAt(chart, 'result', index),
    playKind: textAt(chart, 'play_kind', index),
  });
}

const BY_RESULT: Readonly<Record<string, OutcomeKind | 'none'>> = {
  penalty: 'none',
  interception: 'takeaway',
  fumble_lost: 'takeaway',
  sack: 'loss',
};

function byGain(snap: SnapOutcome): OutcomeKind | undefined {
  const empty = snap.result === 'incomplete' || snap.result === 'throwaway';
  const gain = snap.gain ?? (empty ? 0 : undefined);
  if (gain === undefined) return undefined;
  if (gain < 0) return 'loss';
  if (gain >= (isRun(snap) ? EXPLOSIVE_YARDS.run : EXPLOSIVE_YARDS.pass)) return 'explosive';
  return successOf(gain, snap);
}

function isRun({ playKind, result }: SnapOutcome): boolean {
  if (playKind === undefined) return result === 'rush';
  return (playKind === 'run' || playKind === 'quarterback_run') && result !== 'scramble';
}

function successOf(gain: number, { down, toGo }: SnapOutcome): OutcomeKind | undefined {
  const needed = down === undefined ? undefined : SUCCESS_SHARES[down - 1];
  if (needed === undefined || toGo === undefined) return undefined;
  // Hundredths of a yard: 0.6 of 5 must be exactly 3.
  return Math.round(gain * 100) >= Math.round(needed * toGo * 100) ? 'gain' : 'stop';
}
