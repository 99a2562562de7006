import { expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { classifiedAnswers } from '../../../src/pressure/snap/classified-answers.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

const [RUN, QUICK, DROPBACK] = ['run', 'quick', 'dropback'].map((word) => (ANSWERS as readonly string[]).indexOf(word));

it('answers are left out game by game, from the first game of which less than half of the passes are told', () => {
  const answers = Uint8Array.of(RUN!, QUICK!, NOT_KNOWN, RUN!, DROPBACK!, NOT_KNOWN, NOT_KNOWN, RUN!);
  const runOrPass = Uint8Array.of(0, 1, 1, 0, 1, 1, 1, 0);
  const games = [{ rows: [0, 1, 2] }, { rows: [3, 4, 5, 6] }, { rows: [7] }];
  expect([...classifiedAnswers(answers, runOrPass, games)]).toEqual([
    ...[RUN, QUICK, NOT_KNOWN],
    ...[NOT_KNOWN, NOT_KNOWN, NOT_KNOWN, NOT_KNOWN],
    RUN,
  ]);
});
