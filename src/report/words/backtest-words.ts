import type { BacktestTarget, Target } from '../../pressure/forecast/forecast-result.ts';

/** The verdict in one sentence a coach would say, good or bad, on the question that matters most of those judged. */
export function backtestWords(targets: readonly BacktestTarget[]): string {
  const asked = FIRST_ASKED.flatMap((name) => targets.find(({ target }) => target === name) ?? [])[0] ?? targets[0];
  if (asked === undefined) return '';
  const { games, gamesWon, target } = asked;
  const question = QUESTIONS[target] ?? 'the one question charted';
  const start = `On their own film, each game forecast from the others, the forecast of ${question}`;
  return `${start} beat the plain rate in ${gamesWon} of ${games} ${games === 1 ? 'game' : 'games'}${advice(asked)}; ${proofWords(games)}.`;
}

/** Asked in this order: the first that could be judged is said. */
const FIRST_ASKED: readonly Target[] = ['answer', 'run_or_pass'];

const QUESTIONS: Readonly<Partial<Record<Target, string>>> = {
  answer: 'what they do with the ball',
  run_or_pass: 'run or pass',
};

type Outcome = 'better' | 'worse' | 'even';

function outcomeOf({ games, gamesWon, difference }: BacktestTarget): Outcome {
  if (difference < 0 && 2 * gamesWon > games) return 'better';
  return difference > 0 && 2 * gamesWon < games ? 'worse' : 'even';
}

/** The chain pools the situations by itself where they tell little, so nobody has to set the forecast aside. */
function advice(target: BacktestTarget): string {
  const outcome = outcomeOf(target);
  if (outcome === 'better') return '';
  const leans = 'down and distance tell little about them, so the forecast already leans on their rate over all snaps';
  return outcome === 'even' ? ` and was no better overall: ${leans}` : ` and lost overall: ${leans}`;
}

/** With fewer games than this nothing is proved; judgment: in 8 fair tosses 7 alike come up by chance 1 time in 14. */
const GAMES_THAT_SHOW = 8;

const NUMBER_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven'];

function proofWords(games: number): string {
  if (games >= GAMES_THAT_SHOW) return `${games} games are a fair trial, not proof`;
  return games === 1 ? 'one game proves little' : `${NUMBER_WORDS[games] ?? games} games prove little`;
}
