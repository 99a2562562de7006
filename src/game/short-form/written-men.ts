import type { LibraryProblem } from '../call-library-checks.ts';
import { NOBODY } from './lay-cover.ts';
import { AFTER_ROLE, readCoverWords, readRushWords } from './man-words.ts';
import type { NamedMen } from './trade-sides.ts';
import type { WrittenDefense } from './written-defense.ts';

/** Words that name a man, with where they stand. */
interface ManWords {
  readonly place: LibraryProblem['path'];
  readonly text: string;
  readonly says: 'rush' | 'cover';
}

/** Men named in words who are not ours, and words after a role that mean nothing. */
export function wordProblems(written: WrittenDefense): LibraryProblem[] {
  const roles = written.roles.map(({ id }) => id);
  const parts = [
    ...Object.entries(written.paths).map(([name, path]) => ({ place: ['paths', name], men: path as NamedMen })),
    ...Object.entries(written.coverages).map(([name, cover]) => ({
      place: ['coverages', name],
      men: cover as NamedMen,
    })),
    ...written.calls.map((call, i) => ({ place: ['calls', i], men: call as NamedMen })),
  ];
  const words = parts.flatMap(({ place, men }) => [...rushersIn(place, men), ...coverIn(place, men)]);
  return [...words.flatMap((man) => problemOf(man, roles)), ...tradeProblems(written, roles)];
}

function rushersIn(place: LibraryProblem['path'], { send = [], drop = [], rush = [], late }: NamedMen): ManWords[] {
  const listed = (key: string, men: readonly unknown[]): ManWords[] =>
    men.flatMap((text, k) => (typeof text === 'string' ? [{ place: [...place, key, k], text, says: 'rush' }] : []));
  const joins: ManWords[] = late === undefined ? [] : [{ place: [...place, 'late'], text: late, says: 'rush' }];
  return [...listed('send', send), ...listed('drop', drop), ...listed('rush', rush), ...joins];
}

function coverIn(place: LibraryProblem['path'], { cover }: NamedMen): ManWords[] {
  if (cover === undefined || Array.isArray(cover)) return [];
  const jobs = Object.entries(cover).filter(([, men]) => men !== NOBODY);
  return jobs.flatMap(([job, men]): ManWords[] =>
    Array.isArray(men)
      ? men.map((text, k) => ({ place: [...place, 'cover', job, k], text, says: 'cover' as const }))
      : [{ place: [...place, 'cover', job], text: men as string, says: 'cover' }],
  );
}

function problemOf({ place, text, says }: ManWords, roles: readonly string[]): LibraryProblem[] {
  const read = says === 'rush' ? readRushWords(text) : { kind: 'man' as const, man: readCoverWords(text) };
  if (read.kind === 'unknown') {
    return [{ path: place, message: `has ${read.words.join(', ')} after the role; write ${AFTER_ROLE}` }];
  }
  return roles.includes(read.man.role) ? [] : [{ path: place, message: notOurs(roles) }];
}

function notOurs(roles: readonly string[]): string {
  return `does not begin with one of our roles (${roles.join(', ')})`;
}

function tradeProblems({ trade }: WrittenDefense, roles: readonly string[]): LibraryProblem[] {
  const seen: string[] = [];
  return trade.flatMap((pair, i) =>
    pair.flatMap((role, k): LibraryProblem[] => {
      const path = ['trade', i, k];
      if (!roles.includes(role)) return [{ path, message: notOurs(roles) }];
      const twice = seen.includes(role);
      seen.push(role);
      return twice ? [{ path, message: 'trades places twice; a man has one partner' }] : [];
    }),
  );
}
