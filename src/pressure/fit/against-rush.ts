import type { Call } from '../../game/call-library.ts';
import type { Forecast } from '../forecast/forecast-result.ts';
import { answersToPressure } from '../pressured/answers-to-pressure.ts';
import type { PressuredChapter } from '../pressured/pressured-result.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';

/** Rushers a call sends at the snap. */
export function callRushers({ rush }: Call): number {
  return rush.filter(({ way }) => way !== 'late_if_back_blocks').length;
}

/** What the answers to a rush are made from. */
export interface RushInput {
  readonly situations: readonly ExpectedSnaps[];
  readonly forecasts: readonly Forecast[];
  readonly pressured: Pick<PressuredChapter, 'factors'>;
}

/**
 * The snaps expected in every situation when so many rush: the answers' shares are those they give to such a rush as far
 * as that held up in backtests, with the certainty of the forecast; what else is true of such a snap stays.
 */
export function expectedAgainst(input: RushInput): (rushers: number) => readonly ExpectedSnaps[] {
  const found = new Map<number, readonly ExpectedSnaps[]>();
  return (rushers) => {
    const known = found.get(rushers) ?? input.situations.map((one) => moved(one, input, rushers));
    found.set(rushers, known);
    return known;
  };
}

function moved(expected: ExpectedSnaps, { forecasts, pressured }: RushInput, rushers: number): ExpectedSnaps {
  const answers = answersToPressure(forecasts, pressured, { situation: expected.situation, rushers });
  if (!answers) return expected;
  const total = expected.parts.reduce((sum, { alpha }) => sum + alpha, 0);
  const parts = expected.parts.map((part) => {
    const found = answers.find(({ answer }) => answer === part.answer);
    return found ? { ...part, alpha: total * found.share } : part;
  });
  return { ...expected, parts };
}
