import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type ExactSolver, loadExactSolver } from '../stats/exact-solver.ts';

/** The solver from its own file beside the built program; when run from source the package finds it. */
export function diskSolver(): Promise<ExactSolver> {
  const places = ['./highs.wasm', '../highs.wasm'].map((place) => fileURLToPath(new URL(place, import.meta.url)));
  return loadExactSolver(places.find((place) => existsSync(place)));
}
