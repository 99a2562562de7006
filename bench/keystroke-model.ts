import { DEPTHS, type Depth } from '../src/desk/chart/chart-fields.ts';
import { isPassAt, snapKeys } from '../tests/browser/typed-game.ts';

/**
 * Seconds of the keystroke-level model: K, a key of an average typist who is no secretary (40 words a minute), and M,
 * making up one's mind.
 *
 * @see Card, Moran and Newell, "The Keystroke-Level Model for User Performance Time with Interactive Systems",
 *   Communications of the ACM 23(7), 1980, pages 396-410
 */
const SECONDS = { key: 0.28, mind: 1.35 } as const;

/** What is seen at one look and typed in one go: the look, the play with its end and gain, the protection. */
const CHUNKS: Readonly<Record<Depth, { readonly run: number; readonly pass: number }>> = {
  quick: { run: 1, pass: 1 },
  plan: { run: 2, pass: 3 },
  full: { run: 2, pass: 3 },
};

/** Snaps of a game of which a third are passes, as the game that is typed in the tests. */
const GAME = { run: 40, pass: 20 } as const;

/**
 * What one snap takes a coach by the model: a learner makes up his mind at every answer, a practiced hand once a chunk. The
 * film is not in it: its running, its rewinding, and the space bar held down while the ball is out.
 */
export function predictedSeconds(): string[] {
  return DEPTHS.flatMap((depth) => {
    const [run, pass] = [oneSnap(depth, false), oneSnap(depth, true)];
    const game = (who: 'learner' | 'practiced') => (GAME.run * run[who] + GAME.pass * pass[who]) / 60;
    return [
      `${depth}: run ${said(run)}, pass ${said(pass)}; a game of 60 snaps ${game('practiced').toFixed(0)} to ${game('learner').toFixed(0)} min`,
    ];
  });
}

interface Prediction {
  readonly keys: number;
  readonly practiced: number;
  readonly learner: number;
}

/** The longest settled snap of its kind: its names are known and it begins no series. */
function oneSnap(depth: Depth, isPass: boolean): Prediction {
  const settled = Array.from({ length: 6 }, (_, i) => 12 + i).filter((i) => i % 6 !== 0 && isPassAt(i) === isPass);
  const [longest = []] = settled.map((i) => snapKeys(1, depth, i)).sort((one, other) => other.length - one.length);
  const keys = longest.length;
  // Every answer is one key but a number, which takes one digit here and the space bar.
  const answers = keys - longest.filter((key) => key === 'Space').length;
  const chunks = CHUNKS[depth][isPass ? 'pass' : 'run'];
  const seconds = (minds: number) => SECONDS.key * keys + SECONDS.mind * minds;
  return { keys, practiced: seconds(chunks), learner: seconds(answers) };
}

function said({ keys, practiced, learner }: Prediction): string {
  return `${keys} keys, ${practiced.toFixed(1)} to ${learner.toFixed(1)} s`;
}
