// Counting snaps by situation and answer: our own tally against GROUP BY in DuckDB, in one process and in turn, the
// snaps loaded beforehand on both sides. DuckDB is a development dependency of this benchmark and may be left out.
import { ANSWERS } from '../src/game/answers.ts';
import { SITUATIONS } from '../src/game/situations.ts';
import { tallyGame } from '../src/pressure/forecast/chain-tally.ts';
import { chainTree } from '../src/pressure/forecast/chain-tree.ts';
import { createRandom } from '../src/stats/random.ts';
import { machineLine, median, printRatios } from './measure.ts';

const engine = await import('@duckdb/node-api').catch(() => null);
const sizes = process.argv
  .slice(2)
  .map(Number)
  .filter((size) => size > 0);
const RUNS = 9;

console.log(machineLine());
if (engine === null)
  console.log('NOT MEASURED: DuckDB is not installed ("npm install" brings it), so no grouping is compared.');
else for (const size of sizes.length > 0 ? sizes : [10_000, 100_000, 1_000_000]) await compare(size, engine);

async function compare(size: number, { DuckDBInstance }: NonNullable<typeof engine>) {
  const random = createRandom(`grouping ${size}`);
  const situation = Uint8Array.from({ length: size }, () => random.integer(SITUATIONS.length));
  const answer = Uint8Array.from({ length: size }, () => random.integer(ANSWERS.length));
  const database = await (await DuckDBInstance.create(':memory:')).connect();
  await database.run('CREATE TABLE snaps (situation VARCHAR, answer VARCHAR)');
  const appender = await database.createAppender('snaps');
  for (let i = 0; i < size; i++) {
    appender.appendVarchar(SITUATIONS[situation[i]!]!.id);
    appender.appendVarchar(ANSWERS[answer[i]!]!);
    appender.endRow();
  }
  appender.closeSync();
  const rows = Int32Array.from({ length: size }, (_, i) => i);
  const ours = () => {
    const tree = chainTree([situation], size);
    return { tree, tally: tallyGame(tree, { codes: answer, classes: ANSWERS.length }, rows) };
  };
  const theirs = async () =>
    (
      await database.runAndReadAll('SELECT situation, answer, COUNT(*) FROM snaps GROUP BY situation, answer')
    ).getRowsJS();
  requireSame(ours(), await theirs());
  const contenders = [
    { name: 'DuckDB GROUP BY', run: theirs, samples: [] as number[] },
    { name: 'our tally', run: async () => ours(), samples: [] as number[] },
  ];
  for (let run = 0; run <= RUNS; run++) {
    for (const { run: count, samples } of contenders) samples.push(await cpuOf(count));
  }
  database.closeSync();
  const measured = contenders.map(({ name, samples }) => ({ name, cpu: median(samples.slice(1)) }));
  printRatios(`Situation by answer, ${size} snaps, one process`, measured, { 'our tally': 1 });

  function requireSame({ tree, tally }: ReturnType<typeof ours>, found: Awaited<ReturnType<typeof theirs>>) {
    for (const [word, name, count] of found) {
      const node = tree.child.get(SITUATIONS.findIndex(({ id }) => id === word)) ?? 0;
      const own = tally.counts[node * ANSWERS.length + ANSWERS.indexOf(name as (typeof ANSWERS)[number])];
      if (own !== Number(count)) throw new Error(`${word}, ${name}: we count ${own}, DuckDB ${count}`);
    }
  }
}

/** User and system time of all threads, in milliseconds. */
async function cpuOf(work: () => Promise<unknown>): Promise<number> {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
