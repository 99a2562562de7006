import type { CallLibrary } from '../../game/call-library.ts';
import { share } from '../../stats/share.ts';
import { type AskedRule, askRule, shareOf } from './asked-rule.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import type { HoleMet } from './fit-result.ts';
import { holeRules } from './given-rules.ts';
import type { ReadFilm } from './theory.ts';
import { readyRules } from './verdict.ts';

/**
 * How often this opponent meets what the library's calls give up on purpose, on film and among the expected snaps of
 * every situation; a hole that no chart tells is left out.
 */
export function holesMet(
  library: CallLibrary,
  film: ReadFilm,
  [all, ...situations]: readonly ExpectedSnaps[],
): readonly HoleMet[] {
  const holes = [...new Set(library.calls.flatMap(({ given }) => given))].sort();
  return holes.flatMap((hole): HoleMet[] => {
    const asked = readyRules(holeRules(hole, '', [])).map((ready) => askRule(ready, film));
    if (asked.length === 0 || all === undefined) return [];
    return [
      {
        hole,
        met: filmShare(asked, film.snaps.length),
        share: shareOf(asked, all),
        situations: situations.map((one) => ({ situation: one.situation, share: shareOf(asked, one) })),
      },
    ];
  });
}

/** A snap meets a hole when it meets any of its rules, and does not when it is known to meet none. */
function filmShare(asked: readonly AskedRule[], snaps: number) {
  let [count, trials] = [0, 0];
  for (let row = 0; row < snaps; row++) {
    const met = asked.some((rule) => rule.met[row] === true);
    if (met) count += 1;
    if (met || asked.every((rule) => rule.met[row] === false)) trials += 1;
  }
  return share(count, trials);
}
