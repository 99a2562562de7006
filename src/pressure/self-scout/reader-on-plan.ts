import type { MenuResult } from '../menu/result.ts';
import type { OwnFilmChapter, ReaderOnPlan } from './result.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/**
 * How often a reader who goes by our film is right on the week's plan: behind each path he names what our film shows
 * most, behind a path the film hardly shows what we play most of all.
 */
export function readerOnPlan(film: OwnFilmChapter, menu: Menu): ReaderOnPlan {
  const rare = new Set(film.remedy.tooRare?.map(({ path }) => path));
  const usual = mostOf(film);
  const paths = [...new Set(menu.pairings.map(({ path }) => path))].map((path) => {
    const seen = film.pairings.find((pairing) => pairing.path === path);
    const known = seen !== undefined && !rare.has(path);
    const guess = known ? (seen.coverages[0]?.coverage ?? usual) : usual;
    const behind = menu.pairings.filter((pairing) => pairing.path === path);
    const right = behind.find(({ coverage }) => coverage === guess)?.share ?? 0;
    return { path, known, guess, right, calls: behind[0]?.calls ?? 0 };
  });
  const calls = paths.reduce((sum, path) => sum + path.calls, 0);
  const right = paths.reduce((sum, path) => sum + path.calls * path.right, 0);
  return { paths, calls, rate: calls === 0 ? null : right / calls };
}

/** The coverage we play most behind pressures; empty when none was charted. */
function mostOf({ pairings }: OwnFilmChapter): string {
  const counts = new Map<string, number>();
  for (const { coverages } of pairings) {
    for (const { coverage, share } of coverages) counts.set(coverage, (counts.get(coverage) ?? 0) + share.count);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? '';
}
