import { share } from '../../stats/share.ts';
import { type Grade, standingOf } from './grade.ts';
import type { Review } from './review.ts';

/** A family graded over the season, in points saved per ten snaps against what four rushers usually give up. */
export interface SeasonFamily extends Grade {
  readonly games: number;
}

/** Under these, a family's season carries no standing; 20 snaps is the page's mark for thin, 3 games judgment. */
const LEAST = { snaps: 20, games: 3 } as const;

/** The families of the season's graded games, most snaps first. */
export function seasonFamilies(reviews: readonly Review[]): readonly SeasonFamily[] {
  const grades = reviews.flatMap((review) => review.grades?.families ?? []);
  const names = [...new Set(grades.map(({ name }) => name))];
  return names
    .map((name) =>
      familyOf(
        name,
        grades.filter((grade) => grade.name === name),
      ),
    )
    .sort((a, b) => b.snaps - a.snaps || (a.name < b.name ? -1 : 1));
}

function familyOf(name: string, games: readonly Grade[]): SeasonFamily {
  const snaps = games.reduce((sum, grade) => sum + grade.snaps, 0);
  const perSnap = (of: (grade: Grade) => number) =>
    games.reduce((sum, grade) => sum + of(grade) * grade.snaps, 0) / snaps;
  const [saved, expected] = [perSnap((grade) => grade.saved), perSnap((grade) => grade.expected)];
  const squares = games.reduce((sum, { saved: mid, high, snaps: n }) => sum + ((high - mid) * n) ** 2, 0);
  const half = Math.sqrt(squares) / snaps;
  const range = { low: saved - half, high: saved + half };
  const held = games.reduce((sum, grade) => sum + grade.held.count, 0);
  const overExpectation = games.reduce((sum, grade) => sum + grade.overExpectation, 0);
  const enough = snaps >= LEAST.snaps && games.length >= LEAST.games;
  const standing = enough ? standingOf(expected, range) : 'too_few';
  return {
    name,
    games: games.length,
    snaps,
    held: share(held, snaps),
    expected,
    saved,
    overExpectation,
    ...range,
    standing,
  };
}
