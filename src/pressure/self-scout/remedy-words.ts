import type { Remedy } from './result.ts';

/** What the sentences need to know beside the remedy. */
export interface RemedyFacts {
  /** Whether a call library was given. */
  readonly library: boolean;
  /** Snaps from which on a path can be read. */
  readonly readable: number;
}

/** The remedy as a coach would say it: how far the reader is, what to play, when it is enough, what it costs. */
export function remedyWords(remedy: Omit<Remedy, 'words'>, facts: RemedyFacts): string {
  return [lead(remedy, facts), ...stuckWords(remedy, facts), ...rareWords(remedy, facts)].join(' ');
}

function lead(remedy: Omit<Remedy, 'words'>, { library }: RemedyFacts): string {
  const { guessRate, cap, swaps } = remedy;
  if (guessRate <= cap) {
    return `Who guesses from the path is right on ${percent(guessRate)} of our pressures, within the cap of ${percent(cap)}: nothing has to be mended.`;
  }
  const over = `Who guesses from the path is right on ${percent(guessRate)} of our pressures, above the cap of ${percent(cap)}.`;
  if (!library) return `${over} With defense.yaml the tool names what else to play behind each path.`;
  if (swaps.length === 0)
    return `${over} The library has no other coverage to play behind the paths that give it away.`;
  return `${over} ${planWords(remedy)} ${costWords(remedy)}`;
}

function planWords({ swaps, games, coming, reaches, cap, earliest }: Omit<Remedy, 'words'>): string {
  const snaps = swaps.reduce((sum, swap) => sum + swap.snaps, 0);
  const over = games === 1 ? 'In the next game' : `Over the next ${games} games`;
  const play = `${over} play ${snaps} of about ${Math.round(coming)} pressures in the other coverage, as listed: an opponent who then has our last four games is right on ${percent(reaches)}`;
  if (reaches <= cap + 0.005) return `${play}.`;
  if (earliest === null) return `${play}, still above the cap, and eight games would not be enough.`;
  return `${play}, still above the cap; ${earliest} games are the fewest that are enough.`;
}

function costWords({ costPoints }: Omit<Remedy, 'words'>): string {
  const points = Math.abs(costPoints).toFixed(1);
  if (points === '0.0') return 'By the scores it costs nothing.';
  return costPoints > 0
    ? `By the scores it costs ${points} points in all.`
    : `By the scores it even gains ${points} points.`;
}

function stuckWords({ oneCoverage, guessRate, cap }: Omit<Remedy, 'words'>, { library }: RemedyFacts): string[] {
  if (oneCoverage.length === 0 || !library || guessRate <= cap) return [];
  const have = oneCoverage.length === 1 ? 'has' : 'have';
  return [`${oneCoverage.join(', ')} ${have} no second coverage in the library.`];
}

function rareWords({ tooRare }: Omit<Remedy, 'words'>, { readable }: RemedyFacts): string[] {
  if (tooRare.length === 0) return [];
  const named = tooRare.map(({ path, snaps }) => `${path} (${snaps})`).join(', ');
  return [`Too rare to matter, under ${readable} snaps on film: ${named}.`];
}

function percent(value: number): string {
  return `${Math.round(100 * value)}%`;
}
