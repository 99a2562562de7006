import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { cpus, tmpdir, totalmem } from 'node:os';
import { join, resolve } from 'node:path';
import { buildSync } from 'esbuild';

/** One whole Node process to measure: its arguments, and what else its environment needs. */
export interface Contender {
  readonly name: string;
  readonly args: readonly string[];
  readonly cwd?: string;
  /** Exit codes that are fine; 0 alone when absent. */
  readonly exits?: readonly number[];
}

/** Medians over the runs of one contender. */
export interface Measured {
  readonly name: string;
  /** User and system time of the process, in milliseconds. */
  readonly cpu: number;
  /** Peak resident memory in MiB; absent where several contenders share one process. */
  readonly peak?: number;
}

/** Runs the contenders in turn (A B C A B C …) so that a drifting machine hits all alike; medians of `runs` runs. */
export function measureTogether(contenders: readonly Contender[], runs: number): Measured[] {
  const samples = contenders.map(() => [] as { cpu: number; peak: number }[]);
  for (let run = 0; run <= runs; run++) {
    contenders.forEach((contender, i) => {
      const sample = runOnce(contender);
      if (run > 0) samples[i]?.push(sample);
    });
  }
  return contenders.map(({ name }, i) => ({
    name,
    cpu: median((samples[i] ?? []).map(({ cpu }) => cpu)),
    peak: median((samples[i] ?? []).map(({ peak }) => peak)),
  }));
}

/** The most a contender may cost as ratios to the first: CPU, or CPU and peak memory. */
export type Limit = number | { readonly cpu: number; readonly memory: number };

/** Prints each contender's ratio to the first, side by side. */
export function printRatios(
  title: string,
  measured: readonly Measured[],
  limits: Readonly<Record<string, Limit>> = {},
): void {
  const [first] = measured;
  if (!first) return;
  console.log(`\n${title} (ratio to "${first.name}"; CPU median, peak memory median)`);
  for (const { name, cpu, peak } of measured) {
    const limit = limitsOf(limits[name]);
    const memory = peak && first.peak ? `  memory ${ratioText(peak / first.peak, limit.memory)}` : '';
    console.log(`  ${name.padEnd(44)} cpu ${ratioText(cpu / first.cpu, limit.cpu)}${memory}`);
  }
}

function limitsOf(limit: Limit | undefined): { readonly cpu?: number; readonly memory?: number } {
  if (limit === undefined) return {};
  return typeof limit === 'number' ? { cpu: limit } : limit;
}

function ratioText(ratio: number, limit: number | undefined): string {
  const verdict = limit === undefined ? '' : ` (limit ${limit}${ratio <= limit ? '' : ', OVER'})`;
  return `x${ratio.toFixed(2)}${verdict}`;
}

/** The machine the ratios were measured on, in one line. */
export function machineLine(): string {
  return `node ${process.version}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB`;
}

/** One of the programs of this folder as a single file, so that starting it costs what a built program costs. */
export function bundleForBench(entry: string, folder: string): string {
  const outfile = join(folder, `${entry}.mjs`);
  buildSync({
    entryPoints: [`bench/${entry}.ts`],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    logLevel: 'warning',
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
  return outfile;
}

function runOnce({ args, cwd, exits = [0] }: Contender): { cpu: number; peak: number } {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const usage = join(folder, 'usage');
  const run = spawnSync(process.execPath, ['--import', resolve('bench/usage-at-exit.mjs'), ...args], {
    ...(cwd ? { cwd } : {}),
    env: { ...process.env, BENCH_USAGE_FILE: usage },
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (!exits.includes(run.status ?? -1)) throw new Error(`${args.join(' ')} ended with ${run.status}: ${run.stderr}`);
  const sample = JSON.parse(readFileSync(usage, 'utf8').trim().split('\n').at(-1) ?? '{}');
  rmSync(folder, { recursive: true });
  return sample;
}

/** The middle one of the values, the upper one of two. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
